import type { IsoDate } from '../base/calendar.ts'

/** A look into a box: a strip read as an interval, or a logger's day with its sensor error allowed for [%]. */
export interface ReportReading {
  readonly on: IsoDate
  readonly by: 'strip' | 'logger'
  readonly lowRhPercent: number
  readonly highRhPercent: number
  /** How far off it may be beyond that [%]: strips are taken as they were read. */
  readonly slackRhPercent: number
}

export interface ReportGel {
  readonly on: IsoDate
  readonly gelKg: number
  /** Null: nobody wrote how much was taken out. */
  readonly removedKg: number | null
  /** Written down as it was done, or known only from the table of boxes. */
  readonly from: 'diary' | 'table'
}

/** The highest relative humidity [%] that what lay in a box bore, from day to day; null where nothing limited it. */
export interface LimitSpan {
  readonly from: IsoDate | null
  readonly to: IsoDate | null
  readonly limitRhPercent: number | null
}

export interface ReportBox {
  readonly box: string
  readonly room: string
  /** In the order of time, without gaps. */
  readonly limits: readonly LimitSpan[]
  /** Days on which each find lay in it, both included, and was not out. */
  readonly lay: readonly {
    readonly findId: string
    readonly from: IsoDate | null
    readonly to: IsoDate | null
  }[]
  /** Up to the end of the period, oldest first. */
  readonly readings: readonly ReportReading[]
  /** Gel put in, up to the end of the period, oldest first. */
  readonly gel: readonly ReportGel[]
  /** When the gel it holds at the end of the period is to be renewed; null where nothing can be told. */
  readonly renewOn: { readonly early: IsoDate | null; readonly likely: IsoDate | null } | null
  /** What loggers recorded above the limit in the period. */
  readonly above: {
    readonly hours: number
    readonly worstRhPercent: number | null
    readonly days: readonly IsoDate[]
  }
}

export interface Period {
  readonly from: IsoDate
  readonly to: IsoDate
  /** Until when renewals count as due ahead. */
  readonly ahead: IsoDate
}

/** The finds that lay in a box on a day. */
export function findsOn({ lay }: ReportBox, day: IsoDate): readonly string[] {
  return lay
    .filter(({ from, to }) => (from === null || from <= day) && (to === null || to >= day))
    .map(({ findId }) => findId)
}

/** The highest relative humidity [%] that what lay in it bore on that day. */
export function limitOn({ limits }: Pick<ReportBox, 'limits'>, day: IsoDate): number | null {
  const span = limits.findLast(({ from, to }) => (from === null || from <= day) && (to === null || to >= day))
  return span?.limitRhPercent ?? null
}
