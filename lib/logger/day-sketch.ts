import { hundredthsOf } from './day-text.ts'
import type { Series } from './series.ts'

/**
 * What is known of readings without looking at them again. Sketches of times that follow each other join into the sketch of
 * both, to the last digit: all sums are whole numbers. So a day added costs a day, however long the log.
 */
export interface Sketch {
  /** Readings with a humidity. */
  readonly readings: number
  /** The usual step [ms]: more than twice as much is a gap, and the reading before a gap stands for one step. */
  readonly stepMs: number
  readonly first: Told | null
  /** How long it stands is not known before the next one: it is in no bin yet. */
  readonly last: Told | null
  readonly minRhPercent: number | null
  readonly maxRhPercent: number | null
  readonly sumRhHundredths: number
  readonly sumSquaresRhHundredths: number
  readonly gaps: number
  readonly temperatures: number
  readonly minTemperatureC: number | null
  readonly maxTemperatureC: number | null
  readonly sumTemperatureHundredths: number
  /** One for each whole percent that was read, in rising order. */
  readonly bins: readonly Bin[]
}

export interface Told {
  readonly atMs: number
  readonly rhHundredths: number
}

/** Readings above `percent − 1` and up to `percent`. Whole percents belong to the bin below, as a reading at a limit is within it. */
export interface Bin {
  readonly percent: number
  readonly stoodMs: number
  /** Humidity times how long it stood [hundredths of a percent × ms]. */
  readonly stoodHundredthsMs: number
}

export const emptySketch: Sketch = {
  readings: 0,
  stepMs: 0,
  first: null,
  last: null,
  minRhPercent: null,
  maxRhPercent: null,
  sumRhHundredths: 0,
  sumSquaresRhHundredths: 0,
  gaps: 0,
  temperatures: 0,
  minTemperatureC: null,
  maxTemperatureC: null,
  sumTemperatureHundredths: 0,
  bins: [],
}

const least = (a: number | null, b: number | null) => (a === null ? b : b === null ? a : Math.min(a, b))
const most = (a: number | null, b: number | null) => (a === null ? b : b === null ? a : Math.max(a, b))

/** How long a reading stands: till the next one, or for a step where a gap follows. */
const stands = (stepMs: number, untilNext: number) => (untilNext > 2 * stepMs ? stepMs : untilNext)

/** The sketch of readings in order of time. */
export function sketchOf({ atMs, rhPercent, temperatureC }: Series, stepMs: number): Sketch {
  const bins = new Map<number, [stoodMs: number, stoodHundredthsMs: number]>()
  let [readings, sum, squares, gaps] = [0, 0, 0, 0]
  let [min, max] = [Infinity, -Infinity]
  let first: Told | null = null
  let last: Told | null = null
  for (let i = 0; i < atMs.length; i += 1) {
    const rh = hundredthsOf(rhPercent[i]!)
    if (rh === null) continue
    const told: Told = { atMs: atMs[i]!, rhHundredths: rh }
    if (last) {
      const step = told.atMs - last.atMs
      if (step > 2 * stepMs) gaps += 1
      stand(bins, last.rhHundredths, stands(stepMs, step))
    }
    first ??= told
    last = told
    readings += 1
    sum += rh
    squares += rh * rh
    min = Math.min(min, rh)
    max = Math.max(max, rh)
  }
  return {
    readings,
    stepMs,
    first,
    last,
    minRhPercent: readings === 0 ? null : min / 100,
    maxRhPercent: readings === 0 ? null : max / 100,
    sumRhHundredths: sum,
    sumSquaresRhHundredths: squares,
    gaps,
    ...temperaturesOf(temperatureC),
    bins: binsOf(bins),
  }
}

function temperaturesOf(temperatureC: Float32Array) {
  let [count, sum, min, max] = [0, 0, Infinity, -Infinity]
  for (const value of temperatureC) {
    const here = hundredthsOf(value)
    if (here === null) continue
    count += 1
    sum += here
    min = Math.min(min, here)
    max = Math.max(max, here)
  }
  return {
    temperatures: count,
    minTemperatureC: count === 0 ? null : min / 100,
    maxTemperatureC: count === 0 ? null : max / 100,
    sumTemperatureHundredths: sum,
  }
}

type Stood = Map<number, [stoodMs: number, stoodHundredthsMs: number]>

function stand(bins: Stood, rhHundredths: number, ms: number): void {
  add(bins, Math.ceil(rhHundredths / 100), ms, rhHundredths * ms)
}

function add(bins: Stood, percent: number, ms: number, hundredthsMs: number): void {
  const bin = bins.get(percent)
  if (bin) {
    bin[0] += ms
    bin[1] += hundredthsMs
  } else bins.set(percent, [ms, hundredthsMs])
}

const binsOf = (bins: Stood): readonly Bin[] =>
  [...bins]
    .map(([percent, [stoodMs, stoodHundredthsMs]]) => ({ percent: percent + 0, stoodMs, stoodHundredthsMs }))
    .toSorted((a, b) => a.percent - b.percent)

/** The sketch of two times of which the second follows the first. */
export function joined(a: Sketch, b: Sketch): Sketch {
  const stepMs = Math.max(a.stepMs, b.stepMs)
  const bins: Stood = new Map()
  for (const { percent, stoodMs, stoodHundredthsMs } of [...a.bins, ...b.bins])
    add(bins, percent, stoodMs, stoodHundredthsMs)
  const seam = a.last && b.first ? b.first.atMs - a.last.atMs : null
  if (a.last && seam !== null) stand(bins, a.last.rhHundredths, stands(stepMs, seam))
  return {
    readings: a.readings + b.readings,
    stepMs,
    first: a.first ?? b.first,
    last: b.last ?? a.last,
    minRhPercent: least(a.minRhPercent, b.minRhPercent),
    maxRhPercent: most(a.maxRhPercent, b.maxRhPercent),
    sumRhHundredths: a.sumRhHundredths + b.sumRhHundredths,
    sumSquaresRhHundredths: a.sumSquaresRhHundredths + b.sumSquaresRhHundredths,
    gaps: a.gaps + b.gaps + (seam !== null && seam > 2 * stepMs ? 1 : 0),
    temperatures: a.temperatures + b.temperatures,
    minTemperatureC: least(a.minTemperatureC, b.minTemperatureC),
    maxTemperatureC: most(a.maxTemperatureC, b.maxTemperatureC),
    sumTemperatureHundredths: a.sumTemperatureHundredths + b.sumTemperatureHundredths,
    bins: binsOf(bins),
  }
}

/** What a sketch tells of a limit of whole percents; null for any other limit, which cuts through a bin. */
export interface SketchAbove {
  readonly hours: number
  readonly hoursAbove: number
  /** [% h], each reading standing till the next. */
  readonly doseRhPercentHours: number
}

/** Time and dose above a limit; the last reading of all stands for one step. */
export function sketchAbove(sketch: Sketch, limitRhPercent: number): SketchAbove | null {
  if (!Number.isInteger(limitRhPercent)) return null
  const { last, stepMs } = sketch
  const bins: Stood = new Map()
  for (const bin of sketch.bins) add(bins, bin.percent, bin.stoodMs, bin.stoodHundredthsMs)
  if (last) stand(bins, last.rhHundredths, stepMs)
  let [ms, aboveMs, dose] = [0, 0, 0]
  for (const { percent, stoodMs, stoodHundredthsMs } of binsOf(bins)) {
    ms += stoodMs
    if (percent <= limitRhPercent) continue
    aboveMs += stoodMs
    dose += stoodHundredthsMs - limitRhPercent * 100 * stoodMs
  }
  const hour = 3_600_000
  return { hours: ms / hour, hoursAbove: aboveMs / hour, doseRhPercentHours: dose / 100 / hour }
}

/** The mean and its spread, each reading counting once; null where nothing was read. */
export function sketchMean(
  sketch: Sketch,
): { readonly meanRhPercent: number; readonly sdRhPercent: number } | null {
  const { readings, sumRhHundredths, sumSquaresRhHundredths } = sketch
  if (readings === 0) return null
  const mean = sumRhHundredths / readings
  return {
    meanRhPercent: mean / 100,
    sdRhPercent: Math.sqrt(Math.max(0, sumSquaresRhHundredths / readings - mean * mean)) / 100,
  }
}
