import { changes } from './changes.tsx'
import { copper } from './copper.tsx'
import { glass } from './glass.tsx'
import { iron } from './iron.tsx'
import type { Drawings } from './kit/drawn.ts'
import { leadAndTin } from './lead-and-tin.tsx'
import { silver } from './silver.tsx'

/** What is seen on any material: one question shows several of them, so they come together. */
export const seen: Drawings = { ...iron, ...copper, ...leadAndTin, ...silver, ...glass, ...changes }
