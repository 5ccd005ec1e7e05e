import type { Range } from '../../lib/base/range.ts'
import { chance, type Chance } from '../demo/chance.ts'

/** Seeded chance that also draws from laws. */
export interface Drawn extends Chance {
  readonly normal: () => number
  /** From a range: a half of a normal law on each side of its nominal value, one in ten beyond each end. */
  readonly within: (range: Range) => number
  /** The same by factors. */
  readonly byFactor: (range: Range) => number
  readonly between: (low: number, high: number) => number
}

/** Tabulated, not taken from the code under test: nine in ten lie below so many standard deviations. */
const ninthTenth = 1.28155

export function drawn(seed: number): Drawn {
  const simple = chance(seed)
  const normal = () => Math.sqrt(-2 * Math.log(1 - simple.next())) * Math.cos(2 * Math.PI * simple.next())
  const within = ({ low, nominal, high }: Range) => {
    const z = normal() / ninthTenth
    return nominal + z * (z < 0 ? nominal - low : high - nominal)
  }
  return {
    ...simple,
    normal,
    within,
    byFactor: ({ low, nominal, high }) =>
      Math.exp(within({ low: Math.log(low), nominal: Math.log(nominal), high: Math.log(high) })),
    between: (low, high) => low + (high - low) * simple.next(),
  }
}
