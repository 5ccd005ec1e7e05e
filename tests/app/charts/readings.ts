import type { Bucket } from '../../../lib/logger/buckets.ts'
import { chartViewOf } from '../../../lib/papers/store-view.ts'
import type { ChartGround, Span } from '../../../lib/papers/store-chart.ts'

const hour = 3_600_000
export const begins = Date.parse('2026-03-14T00:00:00Z')
export const at = (hours: number) => begins + hours * hour

export const ground: ChartGround = { band: { min: 0, max: 15 }, limitRhPercent: 15, floorRhPercent: 5 }

/** Ten hours: dry, at the floor of the logger, two hours without readings, then damp. */
const read = [9, 8, 5, 5, null, null, 12, 21, 27, 14] as const

export const buckets: readonly Bucket[] = read.map((rh, index) => ({
  fromMs: at(index),
  toMs: at(index + 1),
  count: rh === null ? 0 : 4,
  minRhPercent: rh,
  maxRhPercent: rh === null ? null : rh + 0.4,
  minTemperatureC: rh === null ? null : 18,
  maxTemperatureC: rh === null ? null : 19,
}))

export const whole = { fromMs: at(0), toMs: at(10) }

export const viewOf = (fromMs: number, toMs: number) =>
  chartViewOf({
    fromMs,
    toMs,
    zone: 'UTC',
    buckets: buckets.filter((bucket) => bucket.toMs > fromMs && bucket.fromMs < toMs),
    above: cut({ fromMs: at(7), toMs: at(9) }, fromMs, toMs),
    gaps: cut({ fromMs: at(4), toMs: at(6) }, fromMs, toMs),
    ground,
  })

function cut(span: Span, fromMs: number, toMs: number): readonly Span[] {
  const [from, to] = [Math.max(span.fromMs, fromMs), Math.min(span.toMs, toMs)]
  return from < to ? [{ fromMs: from, toMs: to }] : []
}
