import type { ClosedBox, Day, Surroundings } from './box.ts'
import type { LeakEstimate } from './learn.ts'

export interface LogCandidate {
  readonly box: ClosedBox
  readonly surroundings: Surroundings
  readonly estimate: LeakEstimate
  readonly findsAtRisk: number
  /** A logger stands in it already. */
  readonly logged: boolean
}

/** Why a logger would tell most in a box, strongest first. */
export type LogReason =
  /** It may stand over its limit and nobody would know. */
  | 'may-be-over'
  /** Its renewal date is known only within months. */
  | 'date-is-wide'
  /** Nothing was ever read in it. */
  | 'never-read'
  /** Others of its model in the room would be known better too. */
  | 'teaches-others'

export interface LogNext {
  readonly box: string
  readonly reasons: readonly LogReason[]
  /** Chance that it is over its limit today [0…1]. */
  readonly overNow: number
  /** Days between early and late renewal, as known now and as known after three months of a logger. */
  readonly spreadDays: number
  readonly spreadDaysAfter: number
  readonly findsAtRisk: number
  readonly othersTaught: number
}

/** The boxes in which a logger would tell most, best first; boxes that have one, and boxes without limit, are left out. */
export function logNext(
  _boxes: readonly LogCandidate[],
  _ask: { readonly today: Day; readonly most: number },
): readonly LogNext[] {
  throw new Error('to follow')
}
