import type { Kind } from './kind.ts'
import { everyday } from './kinds-everyday.ts'
import { fittings } from './kinds-fittings.ts'
import { later } from './kinds-later.ts'
import { trade } from './kinds-trade.ts'
import { wetAndMarine } from './kinds-wet.ts'

export const kinds: readonly Kind[] = [...everyday, ...fittings, ...trade, ...wetAndMarine, ...later]
