import { clocks } from './clocks.ts'
import { files } from './files.ts'
import type { Hostile } from './hostile.ts'
import { stamps } from './stamps.ts'
import { tables } from './tables.ts'
import { values } from './values.ts'

export const everything: readonly Hostile[] = [...files, ...tables, ...stamps, ...clocks, ...values]
