import { evidence } from './evidence.ts'
import { handling } from './handling.tsx'
import type { Drawings } from './kit/drawn.ts'
import { answers } from './questions/answers.ts'
import { record } from './record.tsx'
import { putHere } from './register.ts'
import { seen } from './seen.ts'

const all: Drawings = { ...seen, ...evidence, ...record, ...handling, ...answers }

putHere(all)

/** Every key there is a drawing of. To import this is to have all drawings here: for the server, never for the browser. */
export const drawn: readonly string[] = Object.keys(all)
