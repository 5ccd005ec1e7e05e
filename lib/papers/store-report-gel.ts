import type { IsoDate } from '../base/calendar.ts'
import { limitOn, type Period, type ReportBox, type ReportGel } from './store-report-box.ts'
import { tells } from './store-report-state.ts'

/** Gel that was renewed: while the last reading that tells stood at or under the limit, over it, or nobody had looked. */
export interface RenewalDone {
  readonly box: string
  readonly room: string
  readonly on: IsoDate
  readonly gelKg: number
  readonly removedKg: number | null
  readonly how: 'in-time' | 'late' | 'unseen'
}

/** Gel that is to be renewed: as likely as not spent by the end of the period; likely, or perhaps, within the time ahead. */
export interface RenewalDue {
  readonly box: string
  readonly room: string
  readonly early: IsoDate | null
  readonly likely: IsoDate | null
  readonly when: 'overdue' | 'likely' | 'perhaps'
}

export interface Renewals {
  readonly done: readonly RenewalDone[]
  readonly due: readonly RenewalDue[]
  /** Boxes with a limit of which nothing can be told. */
  readonly untold: readonly string[]
}

/** A month of the period, with what fell into it; the months ahead only carry what falls due. */
export interface MonthCount {
  /** `2026-03`. */
  readonly month: string
  readonly putInKg: number
  readonly inTime: number
  readonly late: number
  readonly unseen: number
  readonly due: number
}

function howDone(box: ReportBox, { on }: ReportGel): RenewalDone['how'] {
  const limit = limitOn(box, on)
  const filled = box.gel.findLast((change) => change.on < on)?.on ?? ''
  if (limit === null) return 'unseen'
  const told = box.readings.findLast(
    (reading) =>
      reading.on >= filled &&
      // The logger's day of the renewal has both gels in it.
      (reading.by === 'strip' ? reading.on <= on : reading.on < on) &&
      tells(reading, limit) !== 'cannot-tell',
  )
  if (told === undefined) return 'unseen'
  return tells(told, limit) === 'over' ? 'late' : 'in-time'
}

function dueOf({ box, room, renewOn }: ReportBox, { to, ahead }: Period): readonly RenewalDue[] {
  if (renewOn === null) return []
  const { early, likely } = renewOn
  const due = { box, room, early, likely }
  if (likely !== null && likely <= to) return [{ ...due, when: 'overdue' }]
  if (likely !== null && likely <= ahead) return [{ ...due, when: 'likely' }]
  return early !== null && early <= ahead ? [{ ...due, when: 'perhaps' }] : []
}

export function renewalsOf(boxes: readonly ReportBox[], period: Period): Renewals {
  const limited = boxes.filter((box) => limitOn(box, period.to) !== null)
  return {
    done: boxes
      .flatMap((box) =>
        box.gel
          .filter(({ on }) => on >= period.from && on <= period.to)
          .map((change): RenewalDone => {
            const { on, gelKg, removedKg } = change
            return { box: box.box, room: box.room, on, gelKg, removedKg, how: howDone(box, change) }
          }),
      )
      .toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0)),
    due: limited.flatMap((box) => dueOf(box, period)).toSorted(soonestFirst),
    untold: limited.filter(({ renewOn }) => renewOn === null).map(({ box }) => box),
  }
}

const dayOf = ({ early, likely }: RenewalDue) => likely ?? early ?? ''

const soonestFirst = (a: RenewalDue, b: RenewalDue) => (dayOf(a) < dayOf(b) ? -1 : 1)

const monthOf = (day: IsoDate) => day.slice(0, 7)

/** Every month from one day to another: `2026-11`, `2026-12`, `2027-01`. */
function monthsBetween(from: IsoDate, to: IsoDate): readonly string[] {
  const months: string[] = []
  let [year = 0, month = 1] = from.split('-').map(Number)
  for (;;) {
    const name = `${year}-${String(month).padStart(2, '0')}`
    if (name > monthOf(to)) return months
    months.push(name)
    ;[year, month] = month === 12 ? [year + 1, 1] : [year, month + 1]
  }
}

/** The months of the period and those ahead. What is overdue is due in none of them: it was before. */
export function monthsOf({ done, due }: Renewals, { from, ahead }: Period): readonly MonthCount[] {
  const doneIn = Map.groupBy(done, ({ on }) => monthOf(on))
  const dueIn = Map.groupBy(
    due.filter(({ when }) => when === 'likely'),
    ({ likely }) => monthOf(likely!),
  )
  return monthsBetween(from, ahead).map((month) => {
    const own = doneIn.get(month) ?? []
    const count = (how: RenewalDone['how']) => own.filter((one) => one.how === how).length
    return {
      month,
      putInKg: own.reduce((sum, { gelKg }) => sum + gelKg, 0),
      inTime: count('in-time'),
      late: count('late'),
      unseen: count('unseen'),
      due: dueIn.get(month)?.length ?? 0,
    }
  })
}
