import { msPerHour } from './civil.ts'
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

/**
 * Turns stamps of local clocks into moments in place, in the order of the readings: in an hour that is shown twice a reading
 * belongs to the second showing once the stamps have run back, or where the first would lie before the reading before it.
 */
export function walkZone(
  ms: Float64Array,
  from: number,
  to: number,
  zone: Zone,
  usualStep: number | null,
): ZoneWalk {
  // A stamp told again at once is a repeat, unless readings are an hour or more apart.
  const sameIsSecond = usualStep === null || usualStep >= msPerHour
  /** The second showing is one usual step after the reading before, the first is not. */
  const isNext = (second: number, first: number, before: number) =>
    usualStep !== null && second - before === usualStep && first - before !== usualStep
  const changes = changesOf(zone)
  let skipped = 0
  let firstSkipped = -1
  let firstSkippedMs = Number.NaN
  let change = 0
  let offset = changes[0]?.before ?? zone.offset[0]!
  let low = Number.NEGATIVE_INFINITY
  let high = changes[0] ? edge(0) : Number.POSITIVE_INFINITY
  let before = Number.NEGATIVE_INFINITY
  const twice = new Map<number, { first: number; count: number; second: boolean }>()

  /** Civil time from which change `at` matters: the hour shown twice begins before the change itself. */
  function edge(at: number) {
    const { civilMs, byMs } = changes[at]!
    return Math.min(civilMs, civilMs + byMs)
  }
  function settle(civil: number) {
    change = 0
    while (change < changes.length && civil >= edge(change)) change++
    offset = change === 0 ? (changes[0]?.before ?? zone.offset[0]!) : changes[change - 1]!.after
    low = change === 0 ? Number.NEGATIVE_INFINITY : Math.max(edge(change - 1), endOf(change - 1))
    high = change < changes.length ? edge(change) : Number.POSITIVE_INFINITY
  }
  function endOf(at: number) {
    const { civilMs, byMs } = changes[at]!
    return Math.max(civilMs, civilMs + byMs)
  }

  for (let at = from; at < to; at++) {
    const civil = ms[at]!
    if (Number.isNaN(civil)) continue
    if (civil < low || civil >= high) {
      settle(civil)
      if (change > 0 && civil < low) {
        const { byMs, before: offsetBefore, after } = changes[change - 1]!
        if (byMs > 0) {
          if (skipped++ === 0) {
            firstSkipped = at
            firstSkippedMs = civil
          }
          ms[at] = Number.NaN
          continue
        }
        const first = civil - offsetBefore
        const second =
          first < before || (sameIsSecond && first === before) || isNext(civil - after, first, before)
        const seen = twice.get(change) ?? { first: at, count: 0, second: false }
        // The usual step from the reading before tells which showing it is.
        const plain =
          usualStep !== null && (first - before === usualStep || isNext(civil - after, first, before))
        twice.set(change, {
          ...seen,
          count: seen.count + (plain ? 0 : 1),
          second: seen.second || second,
        })
        before = second ? civil - after : first
        ms[at] = before
        continue
      }
    }
    before = civil - offset
    ms[at] = before
  }
  const open = [...twice.values()].filter(({ second }) => !second)
  return {
    skipped,
    firstSkipped,
    firstSkippedMs,
    toldTwice: open.reduce((sum, { count }) => sum + count, 0),
    firstToldTwice: open.length === 0 ? -1 : Math.min(...open.map(({ first }) => first)),
  }
}
