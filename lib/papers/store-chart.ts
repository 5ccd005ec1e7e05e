import type { Band } from '../engine/plan.ts'
import { numberScale } from './store-axis.ts'

/** Columns of one length: stretches of time in order, each with the least and most that was read; null where nothing was. */
export interface Stretches {
  readonly fromMs: readonly number[]
  readonly toMs: readonly number[]
  readonly rhLow: readonly (number | null)[]
  readonly rhHigh: readonly (number | null)[]
  readonly temperatureLow: readonly (number | null)[]
  readonly temperatureHigh: readonly (number | null)[]
}

export interface Span {
  readonly fromMs: number
  readonly toMs: number
}

/** One view of a logger's readings, ready to draw: what a chart shows between two moments and what is said of it. */
export interface ChartView extends Span {
  readonly zone: string
  readonly stretches: Stretches
  /** Time in the view without a reading. */
  readonly gaps: readonly Span[]
  /** Time in the view above the limit. */
  readonly above: readonly Span[]
  /** Sentences about the view. */
  readonly summary: readonly string[]
}

/** What stands behind the line whatever the view: the band needed, the limit, and where the logger cannot read. */
export interface ChartGround {
  readonly band: Band | null
  /** The highest relative humidity [%] that what stands here bears. */
  readonly limitRhPercent: number | null
  /** Below this the logger prints one value whatever the truth [%]. */
  readonly floorRhPercent: number | null
}

/** The scale that holds every reading of the view, the limit and the floor. */
export function humidityScale(view: ChartView, { band, limitRhPercent, floorRhPercent }: ChartGround) {
  const edges = [limitRhPercent, floorRhPercent, band === null || band.min <= 0 ? null : band.min]
  const values = numbers([...view.stretches.rhLow, ...view.stretches.rhHigh, ...edges])
  return numberScale(values, { least: 10, within: [0, 100] })
}

export function temperatureScale({ stretches }: ChartView) {
  const values = numbers([...stretches.temperatureLow, ...stretches.temperatureHigh])
  return values.length === 0 ? null : numberScale(values, { least: 4, within: [-60, 80], most: 3 })
}

const numbers = (values: readonly (number | null)[]): readonly number[] =>
  values.filter((value) => value !== null)

/** The middle of each stretch, as a share of the view from 0 to 1: where a line over the chart may stand. */
export function middlesOf({ fromMs, toMs, stretches }: ChartView): readonly number[] {
  return stretches.fromMs.map((from, index) => {
    const middle = (from + (stretches.toMs[index] ?? from)) / 2
    return Math.min(1, Math.max(0, (middle - fromMs) / (toMs - fromMs)))
  })
}

/** The part of a span that lies in the view, in hundredths of its width; null where none does. */
export function placeIn(view: Span, span: Span): { readonly from: number; readonly to: number } | null {
  const share = (at: number) => ((at - view.fromMs) / (view.toMs - view.fromMs)) * 100
  const [from, to] = [Math.max(0, share(span.fromMs)), Math.min(100, share(span.toMs))]
  return from < to ? { from, to } : null
}

const shortestMs = 60 * 60 * 1000

/** A view within the whole, never shorter than an hour and never past either end. */
export function viewWithin(whole: Span, wanted: Span): Span {
  const wide = Math.min(Math.max(wanted.toMs - wanted.fromMs, shortestMs), whole.toMs - whole.fromMs)
  const middle = (wanted.fromMs + wanted.toMs) / 2
  const from = Math.min(Math.max(middle - wide / 2, whole.fromMs), whole.toMs - wide)
  return { fromMs: Math.round(from), toMs: Math.round(from + wide) }
}

/** Nearer or wider round a moment, which keeps its place in the view. */
export function zoomedRound(view: Span, atMs: number, factor: number): Span {
  return { fromMs: atMs - (atMs - view.fromMs) * factor, toMs: atMs + (view.toMs - atMs) * factor }
}

/** Earlier (negative) or later by a share of the view. */
export function shifted(view: Span, share: number): Span {
  const by = (view.toMs - view.fromMs) * share
  return { fromMs: view.fromMs + by, toMs: view.toMs + by }
}
