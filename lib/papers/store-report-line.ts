import type { IsoDate } from '../base/calendar.ts'
import type { BoxAtRisk } from './store-report-risk.ts'
import type { RenewalDone, RenewalDue } from './store-report-gel.ts'
import type { StoreReport } from './store-report.ts'
import { findsOn, limitOn, type ReportBox, type ReportReading } from './store-report-box.ts'
import { stateAt, type BoxState } from './store-report-state.ts'

/** One box in the year, in a line. */
export interface BoxYear {
  readonly box: string
  readonly room: string
  readonly finds: number
  readonly limitRhPercent: number | null
  readonly state: BoxState
  readonly lastRead: ReportReading | null
  readonly strips: number
  readonly loggerDays: number
  readonly putInKg: number
  readonly takenOutKg: number
  readonly done: readonly RenewalDone[]
  readonly due: RenewalDue | null
  readonly risk: BoxAtRisk | null
}

/** Every box of the report in a line, in the order given. */
export function boxYears(boxes: readonly ReportBox[], report: StoreReport): readonly BoxYear[] {
  const done = Map.groupBy(report.renewals.done, ({ box }) => box)
  const due = new Map(report.renewals.due.map((one) => [one.box, one]))
  const risk = new Map(report.atRisk.map((one) => [one.box, one]))
  const within = (on: IsoDate) => on >= report.from && on <= report.to
  return boxes.map((box) => {
    const own = done.get(box.box) ?? []
    const read = box.readings.filter(({ on }) => within(on))
    return {
      box: box.box,
      room: box.room,
      finds: findsOn(box, report.to).length,
      limitRhPercent: limitOn(box, report.to),
      state: stateAt(box, report),
      lastRead: read.at(-1) ?? null,
      strips: read.filter(({ by }) => by === 'strip').length,
      loggerDays: read.filter(({ by }) => by === 'logger').length,
      putInKg: own.reduce((sum, { gelKg }) => sum + gelKg, 0),
      takenOutKg: own.reduce((sum, { removedKg }) => sum + (removedKg ?? 0), 0),
      done: own,
      due: due.get(box.box) ?? null,
      risk: risk.get(box.box) ?? null,
    }
  })
}
