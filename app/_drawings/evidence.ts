import { skins } from './evidence-skins.tsx'
import { fills } from './fills.tsx'
import type { Drawings } from './kit/drawn.ts'
import { making } from './making.tsx'
import { organics } from './organics.tsx'

/** Traces of making and use. */
export const evidence: Drawings = { ...skins, ...fills, ...organics, ...making }
