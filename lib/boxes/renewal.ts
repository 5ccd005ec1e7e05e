import type { ClosedBox, Day, Quantiles, Surroundings } from './box.ts'
import type { TimeToLimit } from './forecast-limit.ts'
import type { LeakEstimate } from './learn.ts'

export interface Renewal {
  readonly crossing: TimeToLimit
  /** Renew by this day; null: not within what was looked ahead. */
  readonly renewBy: Day | null
  /**
   * What set the day: the chance of being over reaches one in ten; the likely course comes within the sensor's error of
   * the limit; the box is as likely as not over already.
   */
  readonly because: 'one-in-ten' | 'sensor-guard' | 'over-already' | null
  /** ± of the sensor [%] that the guard used; null where no sensor stood in the box. */
  readonly guardRhPercent: number | null
}

/** When the gel must be renewed; null where nothing limits the box. */
export function renewalOf(
  _box: ClosedBox,
  _surroundings: Surroundings,
  _estimate: LeakEstimate,
  _ask: { readonly from: Day; readonly days?: number },
): Renewal | null {
  throw new Error('to follow')
}

/** How long fresh gel lasts until the limit [d], with this much of it, if renewed on a day; null beyond what is looked ahead. */
export function spanOfGel(
  _box: ClosedBox,
  _surroundings: Surroundings,
  _estimate: LeakEstimate,
  _ask: { readonly gelKg: number; readonly on: Day; readonly days?: number },
): { readonly [Key in keyof Quantiles]: number | null } | null {
  throw new Error('to follow')
}
