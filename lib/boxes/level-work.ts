import type { IsoDate } from '../base/calendar.ts'

/** Gel that is to be renewed in one box, once or again and again. */
export interface RenewalDue {
  readonly box: string
  readonly room: string
  readonly shelf: string
  readonly gelKg: number
  /** Until then the box is thought to keep below its limit in nine cases of ten. */
  readonly safeOn: IsoDate
  /** It is as likely spent before as after this day; null: beyond what is looked ahead. */
  readonly likelyOn: IsoDate | null
  /** How long a fresh filling is safe [d]; null: not known, and nothing is planned after this once. */
  readonly lastsDays: number | null
}

/** What there is to do it with. Infinity stands for a limit that nobody has set. */
export interface Means {
  readonly startOn: IsoDate
  readonly weeks: number
  readonly minutesPerBox: number
  /** Hours a week in each month, from January on. */
  readonly hoursPerWeek: readonly number[]
  readonly dryKg: number
  readonly spentKg: number
  /** Null: nobody dries gel here. */
  readonly oven: Oven | null
}

export interface Oven {
  readonly kgPerBatch: number
  readonly batchesPerWeek: number
  readonly hoursPerBatch: number
}

export interface PlannedRenewal {
  readonly due: RenewalDue
  /** The first renewal that is due is 1; those after it are only as sure as the ones before. */
  readonly turn: number
  /** Days between which it is safe to leave it, for this turn. */
  readonly safeOn: IsoDate
  /** Index of its week in the plan. */
  readonly week: number
  /** The day to do it by: the end of its week, or the safe day where that comes first. */
  readonly by: IsoDate
  readonly late: boolean
}

/** What would have to be more for a renewal to come in time. */
export type Missing = 'hours' | 'oven' | 'gel'

export interface NotInTime {
  readonly due: RenewalDue
  readonly turn: number
  readonly safeOn: IsoDate
  /** The week it can be done at last; null: in none that is planned. */
  readonly week: number | null
  /** Was over before the first week began: nothing could have helped. */
  readonly overdue: boolean
  readonly missing: readonly Missing[]
}

export interface WeekOfWork {
  readonly on: IsoDate
  /** In the order of rooms and shelves. */
  readonly renewals: readonly PlannedRenewal[]
  readonly minutes: number
  readonly hoursThere: number
  readonly gelKg: number
  readonly batches: number
  readonly driedKg: number
  readonly ovenHours: number
  /** At the end of the week. */
  readonly dryKg: number
  readonly spentKg: number
}

export interface LevelledPlan {
  readonly weeks: readonly WeekOfWork[]
  readonly notInTime: readonly NotInTime[]
}
