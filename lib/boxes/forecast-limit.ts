import type { ClosedBox, Day, Surroundings } from './box.ts'
import type { LeakEstimate } from './learn.ts'

/** When a box comes to a limit: a day, or null where that lies beyond what was looked ahead. */
export interface TimeToLimit {
  readonly limitRhPercent: number
  readonly from: Day
  readonly until: Day
  /** One in ten are over by then, half, nine in ten. */
  readonly p10: Day | null
  readonly p50: Day | null
  readonly p90: Day | null
  /** Chance that it stands above the limit already on the first day, and that it comes to it at all until the last. */
  readonly overAlready: number
  readonly overAtAll: number
}

/** The day on which the box comes to the limit, looked for over three years unless said otherwise. */
export function timeToLimit(
  _box: ClosedBox,
  _surroundings: Surroundings,
  _estimate: LeakEstimate,
  _ask: { readonly limitRhPercent: number; readonly from: Day; readonly days?: number },
): TimeToLimit {
  throw new Error('to follow')
}
