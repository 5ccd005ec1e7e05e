import type { IsoDate } from '../base/calendar.ts'
import { findsOn, limitOn, type Period, type ReportBox } from './store-report-box.ts'
import { stateAt, tells, type BoxState } from './store-report-state.ts'

/** A box that stood over its limit at some time of the period, by a logger or by a strip. */
export interface BoxAtRisk {
  readonly box: string
  readonly room: string
  readonly limitRhPercent: number | null
  /** Finds that lay in it on a day on which it was over. */
  readonly findIds: readonly string[]
  /** What loggers recorded; strips tell of no hours. */
  readonly hoursAbove: number
  readonly worstRhPercent: number | null
  /** Strips that were read over the limit. */
  readonly stripsOver: number
  readonly lastOverOn: IsoDate
  readonly state: BoxState
}

function riskOf(box: ReportBox, period: Period): readonly BoxAtRisk[] {
  const strips = box.readings.filter(({ by, on, ...reading }) => {
    const limit = limitOn(box, on)
    return by === 'strip' && on >= period.from && limit !== null && tells(reading, limit) === 'over'
  })
  const days = [...box.above.days, ...strips.map(({ on }) => on)].toSorted()
  const lastOverOn = days.at(-1)
  if (lastOverOn === undefined) return []
  const { hours: hoursAbove, worstRhPercent: logged } = box.above
  // A strip was at least as damp as the lower end of what it showed.
  const worst = Math.max(logged ?? -Infinity, ...strips.map(({ lowRhPercent }) => lowRhPercent))
  return [
    {
      box: box.box,
      room: box.room,
      limitRhPercent: limitOn(box, lastOverOn),
      findIds: [...new Set(days.flatMap((day) => findsOn(box, day)))],
      hoursAbove,
      worstRhPercent: worst === -Infinity ? null : worst,
      stripsOver: strips.length,
      lastOverOn,
      state: stateAt(box, period),
    },
  ]
}

/** The fullest first, those longest over before others. */
export function boxesAtRisk(boxes: readonly ReportBox[], period: Period): readonly BoxAtRisk[] {
  return boxes
    .flatMap((box) => riskOf(box, period))
    .toSorted((a, b) => b.findIds.length - a.findIds.length || b.hoursAbove - a.hoursAbove)
}
