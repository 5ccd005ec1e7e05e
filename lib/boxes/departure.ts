import type { ClosedBox, Day, Range, Sighting, Surroundings } from './box.ts'
import type { LeakPrior } from './leak-prior.ts'

/** A box whose readings leave what it did before: its lid is probably not seated. */
export interface Departure {
  /** Chance that it leaks more than before [0…1]. */
  readonly probability: number
  /** Likely since this day; and between which days it began in eight cases of ten. */
  readonly since: Day
  readonly sinceRange: Range
  /** How many times leakier it is since then. */
  readonly factor: Range
}

/** Whether a box departs from its forecast; null while it keeps to it. */
export function departureOf(
  _box: ClosedBox,
  _surroundings: Surroundings,
  _sightings: readonly Sighting[],
  _prior: LeakPrior,
): Departure | null {
  throw new Error('to follow')
}
