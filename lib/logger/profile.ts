import { rankedByValue, type Ranked } from './percentiles.ts'
import type { Series } from './series.ts'
import { intervalMs, type Stretch } from './stretches.ts'

/**
 * Readings sorted by value in hundredths of a percent: how many there are of each and how long they stood. Whatever asks
 * about a limit is answered from it without the readings.
 */
export interface Profile {
  readonly readings: number
  /** Readings of more than two decimals, taken at the nearest hundredth. */
  readonly rounded: number
  /** Values that no humidity can have, left out. */
  readonly implausible: number
  /** By hundredth, from `lowest` up. */
  readonly counts: Float64Array
  /** [ms] */
  readonly stood: Float64Array
}

/** Sensors print a little below nothing and above a hundred; far beyond it is no humidity. [hundredths of a percent] */
const lowest = -10_000
const highest = 20_000
const size = highest - lowest + 1
/** What binary fractions may put beside a whole hundredth. */
const hair = 1e-9

/** How far single floats of two decimals lie from whole hundredths at most. */
const printedApart = 0.004
const apartSquared = printedApart ** 2

/** Each reading stands till the next one, the last before a gap for `lastStandsMs`, or for one step where that is null. */
export function profileOf(
  series: Series,
  stretches: readonly Stretch[],
  lastStandsMs: number | null,
): Profile {
  const { counts, rounded, implausible } = countedByValue(series.rhPercent)
  // Nearly all steps are one and the same: those are counted in one go, and only where steps differ is each looked at.
  const usual = intervalMs(series)
  const stood = counts.map((count) => count * usual)
  for (const stretch of stretches) {
    if (!stretch.even || stretch.stepMs !== usual) correctSteps(series, stretch, usual, stood)
    stands(series, stretch.to - 1, (lastStandsMs ?? stretch.stepMs) - usual, stood)
  }
  return { readings: series.rhPercent.length - implausible, rounded, implausible, counts, stood }
}

function countedByValue(rhPercent: Float32Array) {
  const counts = new Float64Array(size)
  let rounded = 0
  let implausible = 0
  for (let i = 0; i < rhPercent.length; i += 1) {
    const scaled = rhPercent[i]! * 100
    if (!(scaled >= lowest && scaled <= highest)) {
      implausible += 1
      continue
    }
    const place = placeOf(scaled)
    counts[place]! += 1
    const apart = scaled - (place + lowest)
    if (apart * apart > apartSquared) rounded += 1
  }
  return { counts, rounded, implausible }
}

function correctSteps(series: Series, { from, to }: Stretch, usual: number, stood: Float64Array): void {
  const { atMs } = series
  for (let i = from; i < to - 1; i += 1) {
    const ms = atMs[i + 1]! - atMs[i]!
    if (ms !== usual) stands(series, i, ms - usual, stood)
  }
}

/** The reading at `i` stands so much longer. */
function stands({ rhPercent }: Series, i: number, ms: number, stood: Float64Array): void {
  const scaled = rhPercent[i]! * 100
  if (scaled >= lowest && scaled <= highest) stood[placeOf(scaled)]! += ms
}

/** Where a value of hundredths is counted: rounded to the nearest, halves up, in whole-number steps for there are millions. */
const placeOf = (scaled: number) => (scaled + (0.5 - lowest)) | 0

export interface Spread {
  readonly min: number
  readonly max: number
  readonly mean: number
  /** Of these readings. */
  readonly sdPopulation: number
  /** Of all that could have been read, judged by these; null for a single reading. */
  readonly sdSample: number | null
}

/** Lowest, highest, mean and spread; each reading counts once. Null where there is none. */
export function spreadOf({ counts, readings }: Profile): Spread | null {
  if (readings === 0) return null
  const min = counts.findIndex((count) => count > 0)
  const max = counts.findLastIndex((count) => count > 0)
  // Whole numbers of hundredths: sums are exact.
  let [sum, squares] = [0, 0]
  for (let at = min; at <= max; at += 1) sum += counts[at]! * (at + lowest)
  const mean = sum / readings
  for (let at = min; at <= max; at += 1) squares += counts[at]! * (at + lowest - mean) ** 2
  return {
    min: (min + lowest) / 100,
    max: (max + lowest) / 100,
    mean: mean / 100,
    sdPopulation: Math.sqrt(squares / readings) / 100,
    sdSample: readings > 1 ? Math.sqrt(squares / (readings - 1)) / 100 : null,
  }
}

/** The readings in rising order [%], for percentiles. */
export function rankedOf({ counts }: Profile): Ranked {
  const [values, upTo]: [number[], number[]] = [[], []]
  let sum = 0
  for (let at = 0; at < size; at += 1) {
    if (counts[at] === 0) continue
    sum += counts[at]!
    values.push((at + lowest) / 100)
    upTo.push(sum)
  }
  return rankedByValue(values, upTo)
}

/** Time [ms], and what lay beyond times how long [% ms]. */
export interface Part {
  readonly ms: number
  readonly dose: number
}

/**
 * Readings above a limit; a reading at it is not above. Where the logger does not read below a floor that lies higher, only
 * readings above the floor are known to be.
 */
export function above({ stood }: Profile, limitRhPercent: number, floorRhPercent = -Infinity): Part {
  const limit = limitRhPercent * 100
  const line = Math.max(limit, floorRhPercent * 100)
  let [ms, dose] = [0, 0]
  for (let at = Math.max(0, Math.floor(line) - lowest); at < size; at += 1) {
    if (at + lowest - line <= hair || stood[at] === 0) continue
    ms += stood[at]!
    dose += stood[at]! * (at + lowest - limit)
  }
  return { ms, dose: dose / 100 }
}

/** Readings below a limit. */
export function below({ stood }: Profile, limitRhPercent: number): Part {
  const limit = limitRhPercent * 100
  let [ms, dose] = [0, 0]
  for (let at = 0; at < Math.min(size, Math.ceil(limit) - lowest); at += 1) {
    const under = limit - (at + lowest)
    if (under <= hair || stood[at] === 0) continue
    ms += stood[at]!
    dose += stood[at]! * under
  }
  return { ms, dose: dose / 100 }
}

/** Time with readings [ms]. */
export function stoodMs({ stood }: Profile): number {
  return stood.reduce((sum, ms) => sum + ms, 0)
}
