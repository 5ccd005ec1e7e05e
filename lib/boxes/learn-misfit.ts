import type { Range } from './box.ts'
import type { LeakPrior } from './leak-prior.ts'
import type { Gathered } from './learn-sightings.ts'
import { logSpreadOf } from './learn-spread.ts'
import type { Way } from './learn-ways.ts'

/** Signs that the box does not follow the leak model, so that bands are to be read with care. */
export type Misfit =
  /** Its readings are far better told by a gel that bends or a pace that follows the seasons. */
  | 'strays'
  /** Its readings lie off every course of the model by more than sensor and weather explain. */
  | 'unexplained'
  /** It needs a leak that lies far outside what was thought possible. */
  | 'leak-out-of-range'

/** So sure it must be that a box strays. */
const sureOf = 0.9
/** So far beyond what was thought possible, in standard deviations, before it is said. */
const farOut = 2.5
/** One box in a thousand lies further off by chance. */
const oneInThousand = 3.09

export function misfitOf(told: {
  readonly ways: readonly Way[]
  readonly strayed: number
  readonly gathered: Gathered
  readonly airChangesPerDay: Range
  readonly prior: LeakPrior
}): Misfit | null {
  const readings = told.gathered.seen.filter(({ kind }) => kind === 'read').length
  if (readings > 0 && told.strayed > mostByChance(readings)) return 'unexplained'
  const { nominal, below, above } = logSpreadOf(told.prior.airChangesPerDay)
  const off = Math.log(told.airChangesPerDay.nominal) - nominal
  if (Math.abs(off) > farOut * (off < 0 ? below : above)) return 'leak-out-of-range'
  return told.ways.some(({ share, chance }, at) => at > 0 && chance > sureOf && chance > share)
    ? 'strays'
    : null
}

/** Squares of so many standard normal numbers add up to more than this once in a thousand times (Wilson and Hilferty 1931). */
function mostByChance(count: number): number {
  const spread = 2 / (9 * count)
  return count * (1 - spread + oneInThousand * Math.sqrt(spread)) ** 3
}
