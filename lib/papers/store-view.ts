import type { Bucket } from '../logger/buckets.ts'
import { viewSummary } from '../wording/chart-summary.ts'
import type { ChartGround, ChartView, Span, Stretches } from './store-chart.ts'

interface Asked extends Span {
  readonly zone: string
  readonly buckets: readonly Bucket[]
  /** Times beyond what is borne, of the same readings. */
  readonly excursions: readonly (Span & { readonly side: 'above' | 'below' })[]
  readonly ground: ChartGround
}

const tenth = (value: number | null) => (value === null ? null : Math.round(value * 10) / 10)

/** A stretch of readings made ready to draw, with what is to be said of it. */
export function chartViewOf({ fromMs, toMs, zone, buckets, excursions, ground }: Asked): ChartView {
  const view = { fromMs, toMs }
  const above = excursions.filter(({ side }) => side === 'above').flatMap((span) => clipped(span, view) ?? [])
  const gaps = gapsOf(buckets)
  const stretches = stretchesOf(buckets)
  return {
    ...view,
    zone,
    stretches,
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

/** Empty stretches in a row are one time without readings. */
function gapsOf(buckets: readonly Bucket[]): readonly Span[] {
  const gaps: { fromMs: number; toMs: number }[] = []
  let open: { fromMs: number; toMs: number } | null = null
  for (const { count, fromMs, toMs } of buckets) {
    if (count > 0) {
      open = null
    } else if (open === null) {
      open = { fromMs, toMs }
      gaps.push(open)
    } else open.toMs = toMs
  }
  return gaps
}

function clipped({ fromMs, toMs }: Span, view: Span): Span | null {
  const [from, to] = [Math.max(fromMs, view.fromMs), Math.min(toMs, view.toMs)]
  return from < to ? { fromMs: from, toMs: to } : null
}
