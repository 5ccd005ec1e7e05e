import type { Series } from '../logger/series.ts'
import type { Day } from './box.ts'

/** A stretch as long as one weather lasts, read as one: neighbours within it tell the same thing twice. */
export interface RoomSpan {
  readonly on: Day
  readonly rhPercent: number
  /** How much of the stretch was read [share of one]. */
  readonly share: number
}

const dayMs = 86_400_000

/** Readings of a room as means of stretches of so many days [d]; a stretch with less than a day read is left out. */
export function roomSpans({ atMs, rhPercent }: Series, weatherDays: number): readonly RoomSpan[] {
  const days = new Map<number, { sum: number; count: number }>()
  for (let at = 0; at < atMs.length; at++) {
    const value = rhPercent[at]!
    if (Number.isNaN(value)) continue
    const day = Math.floor(atMs[at]! / dayMs)
    const of = days.get(day) ?? { sum: 0, count: 0 }
    of.sum += value
    of.count += 1
    days.set(day, of)
  }
  const spans = Map.groupBy(days, ([day]) => Math.floor(day / weatherDays))
  return [...spans.values()].map((inIt) => ({
    on: inIt.reduce((sum, [day]) => sum + day + 0.5, 0) / inIt.length,
    rhPercent: inIt.reduce((sum, [, { sum: total, count }]) => sum + total / count, 0) / inIt.length,
    share: Math.min(1, inIt.length / weatherDays),
  }))
}
