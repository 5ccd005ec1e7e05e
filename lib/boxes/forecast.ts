import type { ClosedBox, Day, Fan, Surroundings } from './box.ts'
import type { LeakEstimate } from './learn.ts'

export interface Ahead {
  /** First day of the fan; no earlier than the estimate's last sighting, else it begins there. */
  readonly from: Day
  readonly days: number
}

/** Relative humidity ahead, a value a day, from everything the estimate knows and does not know. */
export function forecast(
  _box: ClosedBox,
  _surroundings: Surroundings,
  _estimate: LeakEstimate,
  _ahead: Ahead,
): Fan {
  throw new Error('to follow')
}
