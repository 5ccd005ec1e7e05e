import type { IsoDate } from '../base/calendar.ts'
import {
  findsOn,
  type Period,
  type ReportBox,
  type ReportGel,
  type ReportReading,
} from './store-report-box.ts'
import { boxesAtRisk, type BoxAtRisk } from './store-report-risk.ts'
import { monthsOf, renewalsOf, type MonthCount, type Renewals } from './store-report-gel.ts'
import { hangsOnStrip, stateAt, type BoxState } from './store-report-state.ts'

export interface RoomCount {
  readonly room: string
  readonly boxes: number
  readonly states: Readonly<Record<BoxState, number>>
  readonly putInKg: number
  readonly takenOutKg: number
  readonly changes: number
}

export interface StoreReport {
  readonly from: IsoDate
  readonly to: IsoDate
  readonly ahead: IsoDate
  readonly boxes: number
  readonly finds: number
  /** Names of boxes by how they stood at the end. */
  readonly states: Readonly<Record<BoxState, readonly string[]>>
  /** Of those in band or over: boxes of which that hangs on a strip that is true to less than its error. */
  readonly hangsOnStrip: readonly string[]
  readonly rooms: readonly RoomCount[]
  readonly gel: {
    readonly putInKg: number
    readonly takenOutKg: number
    readonly changes: number
    /** Changes of which nobody wrote how much was taken out. */
    readonly takenOutUnwritten: number
    /** Changes that are known only from the table of boxes. */
    readonly onlyInTable: number
  }
  readonly months: readonly MonthCount[]
  readonly renewals: Renewals
  readonly atRisk: readonly BoxAtRisk[]
  /** Different finds that were at risk, and in how many boxes of which nobody knows what lay in them. */
  readonly findsAtRisk: number
  readonly restsOn: { readonly strips: number; readonly loggerDays: number; readonly boxesRead: number }
}

const within = ({ from, to }: Period, on: IsoDate) => on >= from && on <= to

function roomsOf(boxes: readonly ReportBox[], period: Period): readonly RoomCount[] {
  return [...Map.groupBy(boxes, ({ room }) => room)].map(([room, own]) => {
    const states = own.map((box) => stateAt(box, period))
    const changes = changesIn(own, period)
    const count = (state: BoxState) => states.filter((one) => one === state).length
    return {
      room,
      boxes: own.length,
      states: {
        over: count('over'),
        'cannot-tell': count('cannot-tell'),
        'renewed-unread': count('renewed-unread'),
        'in-band': count('in-band'),
        'not-read': count('not-read'),
        'no-limit': count('no-limit'),
      },
      ...sums(changes),
    }
  })
}

const changesIn = (boxes: readonly ReportBox[], period: Period): readonly ReportGel[] =>
  boxes.flatMap(({ gel }) => gel.filter(({ on }) => within(period, on)))

const sums = (changes: readonly ReportGel[]) => ({
  putInKg: changes.reduce((sum, { gelKg }) => sum + gelKg, 0),
  takenOutKg: changes.reduce((sum, { removedKg }) => sum + (removedKg ?? 0), 0),
  changes: changes.length,
})

/** A year of the store: what was read, what the gel did, what was due, done and late, and which finds were at risk. */
export function storeReport(boxes: readonly ReportBox[], period: Period): StoreReport {
  const states = Object.groupBy(boxes, (box) => stateAt(box, period))
  const names = (state: BoxState) => (states[state] ?? []).map(({ box }) => box)
  const changes = changesIn(boxes, period)
  const atRisk = boxesAtRisk(boxes, period)
  const readings = boxes.map((box) => box.readings.filter(({ on }) => within(period, on)))
  const renewals = renewalsOf(boxes, period)
  return {
    ...period,
    boxes: boxes.length,
    finds: new Set(boxes.flatMap((box) => findsOn(box, period.to))).size,
    states: {
      over: names('over'),
      'cannot-tell': names('cannot-tell'),
      'renewed-unread': names('renewed-unread'),
      'in-band': names('in-band'),
      'not-read': names('not-read'),
      'no-limit': names('no-limit'),
    },
    hangsOnStrip: boxes.filter((box) => hangsOnStrip(box, period)).map(({ box }) => box),
    rooms: roomsOf(boxes, period),
    gel: {
      ...sums(changes),
      takenOutUnwritten: changes.filter(({ removedKg }) => removedKg === null).length,
      onlyInTable: changes.filter(({ from }) => from === 'table').length,
    },
    months: monthsOf(renewals, period),
    renewals,
    atRisk,
    findsAtRisk: new Set(atRisk.flatMap(({ findIds }) => findIds)).size,
    restsOn: {
      strips: countBy(readings, 'strip'),
      loggerDays: countBy(readings, 'logger'),
      boxesRead: readings.filter((own) => own.length > 0).length,
    },
  }
}

const countBy = (readings: readonly (readonly ReportReading[])[], by: ReportReading['by']) =>
  readings.reduce((sum, own) => sum + own.filter((reading) => reading.by === by).length, 0)
