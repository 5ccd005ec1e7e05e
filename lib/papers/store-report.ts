import type { IsoDate } from '../base/calendar.ts'

/** A look into a box: a strip read as an interval, or a logger's day with its sensor error allowed for [%]. */
export interface ReportReading {
  readonly on: IsoDate
  readonly lowRhPercent: number
  readonly highRhPercent: number
}

export interface ReportBox {
  readonly box: string
  readonly room: string
  /** The highest relative humidity [%] its finds bear; null where nothing limits it. */
  readonly limitRhPercent: number | null
  readonly finds: number
  /** Up to the end of the period, oldest first. */
  readonly readings: readonly ReportReading[]
  /** Gel put in, up to the end of the period, oldest first. */
  readonly gel: readonly {
    readonly on: IsoDate
    readonly gelKg: number
    readonly removedKg: number | null
  }[]
  /** When the gel it holds at the end of the period is to be renewed; null where nothing can be told. */
  readonly renewOn: { readonly early: IsoDate | null; readonly likely: IsoDate | null } | null
  /** Hours above the limit that loggers recorded in the period, and the worst [%]. */
  readonly hoursAbove: number
  readonly worstRhPercent: number | null
}

/** How a box stood by its newest reading of the period; a reading from before the gel was renewed tells of the old gel. */
export const boxStates = ['over', 'cannot-tell', 'renewed-unread', 'in-band', 'not-read', 'no-limit'] as const
export type BoxState = (typeof boxStates)[number]

export interface StoreReport {
  readonly from: IsoDate
  readonly to: IsoDate
  readonly states: Readonly<Record<BoxState, readonly string[]>>
  readonly gel: { readonly putInKg: number; readonly takenOutKg: number; readonly changes: number }
  readonly renewals: {
    /** Done while the last reading still stood at or under the limit, or where none was taken. */
    readonly inTime: readonly string[]
    /** Done after a reading had stood over the limit. */
    readonly late: readonly string[]
    /** Not done, though the gel was as likely as not spent by the end of the period. */
    readonly overdue: readonly string[]
    /** Fall due within a year after the period. */
    readonly ahead: readonly string[]
  }
  /** Finds in boxes that stood over their limit, at the end or for hours that a logger recorded. */
  readonly atRisk: readonly {
    readonly box: string
    readonly room: string
    readonly finds: number
    readonly hoursAbove: number
    readonly worstRhPercent: number | null
    readonly state: BoxState
  }[]
}

export function boxState({ limitRhPercent, readings, gel }: ReportBox, from: IsoDate): BoxState {
  if (limitRhPercent === null) return 'no-limit'
  const newest = readings.at(-1)
  if (newest === undefined || newest.on < from) return 'not-read'
  if (newest.on < (gel.at(-1)?.on ?? newest.on)) return 'renewed-unread'
  if (newest.highRhPercent <= limitRhPercent) return 'in-band'
  return newest.lowRhPercent > limitRhPercent ? 'over' : 'cannot-tell'
}

/** Whether gel was changed only after somebody, or something, had read the box over its limit. */
function changedLate({ limitRhPercent, readings, gel }: ReportBox, on: IsoDate): boolean {
  const fillingBefore = gel.findLast((change) => change.on < on)?.on ?? ''
  const before = readings.findLast((reading) => reading.on <= on && reading.on >= fillingBefore)
  return limitRhPercent !== null && before !== undefined && before.lowRhPercent > limitRhPercent
}

/** A year of the store: what was read, what the gel did, what was due, done and late, and which finds were at risk. */
export function storeReport(
  boxes: readonly ReportBox[],
  { from, to, aYearOn }: { readonly from: IsoDate; readonly to: IsoDate; readonly aYearOn: IsoDate },
): StoreReport {
  const states = Object.groupBy(boxes, (box) => boxState(box, from))
  const names = (some: readonly ReportBox[]) => some.map(({ box }) => box)
  const changes = boxes.flatMap((box) =>
    box.gel.filter(({ on }) => on >= from && on <= to).map((change) => ({ box, change })),
  )
  const done = (late: boolean) =>
    changes.filter(({ box, change }) => changedLate(box, change.on) === late).map(({ box }) => box)
  const due = boxes.filter(({ limitRhPercent, renewOn }) => limitRhPercent !== null && renewOn !== null)
  const isOverdue = ({ renewOn }: ReportBox) => renewOn!.likely !== null && renewOn!.likely <= to
  return {
    from,
    to,
    states: {
      over: names(states.over ?? []),
      'cannot-tell': names(states['cannot-tell'] ?? []),
      'renewed-unread': names(states['renewed-unread'] ?? []),
      'in-band': names(states['in-band'] ?? []),
      'not-read': names(states['not-read'] ?? []),
      'no-limit': names(states['no-limit'] ?? []),
    },
    gel: {
      putInKg: changes.reduce((sum, { change }) => sum + change.gelKg, 0),
      takenOutKg: changes.reduce((sum, { change }) => sum + (change.removedKg ?? 0), 0),
      changes: changes.length,
    },
    renewals: {
      inTime: names(done(false)),
      late: names(done(true)),
      overdue: names(due.filter(isOverdue)),
      ahead: names(
        due.filter((box) => !isOverdue(box) && box.renewOn!.early !== null && box.renewOn!.early <= aYearOn),
      ),
    },
    atRisk: boxes
      .map((box) => ({ ...box, state: boxState(box, from) }))
      .filter(({ state, hoursAbove }) => state === 'over' || hoursAbove > 0)
      .toSorted((a, b) => b.finds - a.finds || b.hoursAbove - a.hoursAbove)
      .map(({ box, room, finds, hoursAbove, worstRhPercent, state }) => ({
        box,
        room,
        finds,
        hoursAbove,
        worstRhPercent,
        state,
      })),
  }
}
