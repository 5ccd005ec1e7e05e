import { openHourTwice } from './hour-twice.ts'
import { changesOf, type Zone } from './zone.ts'

export interface ZoneWalk {
  /** Readings whose stamp no clock of the zone ever showed: their moments are NaN. */
  readonly skipped: number
  readonly firstSkipped: number
  /** What the first of them shows [ms]. */
  readonly firstSkippedMs: number
  /** Readings of an hour shown twice that nothing tells apart: how many, and the first place. */
  readonly toldTwice: number
  readonly firstToldTwice: number
}

/** Turns stamps of local clocks into moments in place, in the order of the readings. */
export function walkZone(
  ms: Float64Array,
  from: number,
  to: number,
  zone: Zone,
  usualStep: number | null,
): ZoneWalk {
  const changes = changesOf(zone)
  // An hour that is skipped begins with the change, one that is shown twice an hour before it.
  const starts = changes.map(({ civilMs, byMs }) => Math.min(civilMs, civilMs + byMs))
  const ends = changes.map(({ civilMs, byMs }) => Math.max(civilMs, civilMs + byMs))
  const hour = openHourTwice(ms, usualStep)
  let skipped = 0
  let firstSkipped = -1
  let firstSkippedMs = Number.NaN
  let before = Number.NEGATIVE_INFINITY
  let passed = 0
  let offset = 0
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY

  for (let at = from; at < to; at++) {
    const civil = ms[at]!
    if (Number.isNaN(civil)) continue
    if (civil < low || civil >= high) {
      while (passed < starts.length && civil >= starts[passed]!) passed++
      while (passed > 0 && civil < starts[passed - 1]!) passed--
      const last = changes[passed - 1]
      offset = last?.after ?? zone.offset[0]!
      low = last ? ends[passed - 1]! : Number.NEGATIVE_INFINITY
      high = starts[passed] ?? Number.POSITIVE_INFINITY
      if (last && civil < low) {
        if (last.byMs > 0) {
          if (skipped++ === 0) {
            firstSkipped = at
            firstSkippedMs = civil
          }
          ms[at] = Number.NaN
        } else {
          before = hour.take(at, civil, last, before)
          ms[at] = before
        }
        continue
      }
    }
    const moment = civil - offset
    if (hour.isOpen()) hour.leave(at, moment, before)
    before = moment
    ms[at] = moment
  }
  const doubtful = hour.doubtful()
  return {
    skipped,
    firstSkipped,
    firstSkippedMs,
    toldTwice: doubtful.count,
    firstToldTwice: doubtful.first,
  }
}
