import type { ClosedBox, Day, Surroundings } from './box.ts'
import { lookingAhead, type TimeToLimit } from './forecast-limit.ts'
import type { LeakEstimate } from './learn.ts'

export interface Renewal {
  readonly crossing: TimeToLimit
  /** Renew by this day; null: not within what was looked ahead. */
  readonly renewBy: Day | null
  /**
   * What set the day: the chance of being over reaches one in ten; the likely course comes within the sensor's error of
   * the limit, which is sooner; the box is as likely as not over already.
   */
  readonly because: 'one-in-ten' | 'sensor-guard' | 'over-already' | null
  /** ± of the sensor [%] that the guard used; null where nothing was read, or where even fresh gel stands within it. */
  readonly guardRhPercent: number | null
}

export interface RenewalAsked {
  readonly from: Day
  readonly days?: number
}

/** When the gel must be renewed; null where nothing limits the box. */
export function renewalOf(
  box: ClosedBox,
  surroundings: Surroundings,
  estimate: LeakEstimate,
  ask: RenewalAsked,
): Renewal | null {
  if (box.limitRhPercent === null) return null
  const reaches = lookingAhead(box, surroundings, estimate, ask)
  const crossing = reaches(box.limitRhPercent)
  const guardRhPercent = workableGuard(box, estimate.errorRhPercent)
  const as = (renewBy: Day | null, because: Renewal['because']): Renewal => ({
    crossing,
    renewBy,
    because,
    guardRhPercent,
  })
  if (crossing.overAlready >= 0.5) return as(crossing.from, 'over-already')
  const guarded = guardRhPercent === null ? null : reaches(box.limitRhPercent - guardRhPercent).p50
  if (guarded !== null && (crossing.p10 === null || guarded < crossing.p10))
    return as(guarded, 'sensor-guard')
  return as(crossing.p10, crossing.p10 === null ? null : 'one-in-ten')
}

/** A guard that even fresh gel cannot keep clear of would call for renewal every day, and guards nothing. */
function workableGuard(box: ClosedBox, errorRhPercent: number | null): number | null {
  if (errorRhPercent === null || box.limitRhPercent === null) return null
  return box.startRhPercent.nominal + errorRhPercent < box.limitRhPercent ? errorRhPercent : null
}
