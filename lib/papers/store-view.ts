import type { Bucket } from '../logger/buckets.ts'
import { viewSummary } from '../wording/chart-summary.ts'
import type { ChartGround, ChartView, Span, Stretches } from './store-chart.ts'

interface Asked extends Span {
  readonly zone: string
  readonly buckets: readonly Bucket[]
  /** Times above the limit, of the same readings. */
  readonly above: readonly Span[]
  /** Times without a reading. */
  readonly gaps: readonly Span[]
  readonly ground: ChartGround
}

const tenth = (value: number | null) => (value === null ? null : Math.round(value * 10) / 10)

/** A stretch of readings made ready to draw, with what is to be said of it. */
export function chartViewOf({ fromMs, toMs, zone, buckets, above, gaps, ground }: Asked): ChartView {
  const view = { fromMs, toMs }
  return {
    ...view,
    zone,
    stretches: stretchesOf(buckets),
    gaps,
    above,
    summary: viewSummary({ zone, buckets, above, gaps, ground }),
  }
}

function stretchesOf(buckets: readonly Bucket[]): Stretches {
  return {
    fromMs: buckets.map(({ fromMs }) => Math.round(fromMs)),
    toMs: buckets.map(({ toMs }) => Math.round(toMs)),
    rhLow: buckets.map(({ minRhPercent }) => tenth(minRhPercent)),
    rhHigh: buckets.map(({ maxRhPercent }) => tenth(maxRhPercent)),
    temperatureLow: buckets.map(({ minTemperatureC }) => tenth(minTemperatureC)),
    temperatureHigh: buckets.map(({ maxTemperatureC }) => tenth(maxTemperatureC)),
  }
}
