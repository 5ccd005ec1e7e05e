import type { Series } from './series.ts'

/** Readings without a gap between them: from the one at `from` up to, not with, the one at `to`. */
export interface Stretch {
  readonly from: number
  readonly to: number
  /** How far apart its last readings stand, and so how long its last one is taken to hold [ms]. */
  readonly stepMs: number
  /** All its steps are that one: what asks about time need not look at the moments again. */
  readonly even: boolean
}

/** More than twice the step on both sides is a gap; so a logger that was set to another step makes none. */
const gapSteps = 2
const looked = 5

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1]!
}

/** The usual step over readings `from` to `to`, NaN where there are not two. */
function usualStep(at: Float64Array, from: number, to: number): number {
  const steps: number[] = []
  for (let i = Math.max(1, from + 1); i < Math.min(at.length, to); i += 1) steps.push(at[i]! - at[i - 1]!)
  return steps.length === 0 ? Number.NaN : median(steps)
}

function isGap(at: Float64Array, i: number): boolean {
  const before = usualStep(at, i - looked - 1, i)
  const after = usualStep(at, i, i + looked + 1)
  const usual = Math.max(Number.isNaN(before) ? 0 : before, Number.isNaN(after) ? 0 : after)
  return usual > 0 && at[i]! - at[i - 1]! > gapSteps * usual
}

/** How far apart the readings usually stand [ms]: the median of at most some thousand steps spread over all; 0 below two readings. */
export function intervalMs({ atMs }: Series): number {
  const steps = atMs.length - 1
  if (steps < 1) return 0
  const asked = Math.min(steps, 4096)
  return median(
    Array.from({ length: asked }, (_, n) => {
      const i = 1 + Math.floor((n * steps) / asked)
      return atMs[i]! - atMs[i - 1]!
    }),
  )
}

/**
 * The series cut at its gaps. A step longer than `longestStepMs` is a gap; where that is not given, one longer than twice the
 * steps around it.
 */
export function stretchesOf(series: Series, longestStepMs?: number): readonly Stretch[] {
  const usual = intervalMs(series)
  const stretches: Stretch[] = []
  for (let from = 0; from < series.atMs.length; from = stretches.at(-1)!.to)
    stretches.push(stretchFrom(series.atMs, from, usual, longestStepMs))
  return stretches
}

/** The stretch that begins with the reading at `from`. */
function stretchFrom(
  at: Float64Array,
  from: number,
  usual: number,
  longestStepMs: number | undefined,
): Stretch {
  let [to, step, changes] = [from + 1, usual, 0]
  while (to < at.length) {
    const here = at[to]! - at[to - 1]!
    // A step no longer than twice the last one is no gap: the usual case is over before the median is asked.
    if (longestStepMs === undefined ? here > gapSteps * step && isGap(at, to) : here > longestStepMs) break
    step = here
    changes += 1
    to = firstOtherStep(at, to + 1, step)
  }
  return { from, to, stepMs: step, even: changes <= 1 }
}

/** The place of the first reading from `from` on that does not follow the one before it by that step. */
function firstOtherStep(at: Float64Array, from: number, step: number): number {
  let to = from
  for (let last = at[from - 1]!; to < at.length; to += 1) {
    const now = at[to]!
    if (now - last !== step) break
    last = now
  }
  return to
}

/** Only the readings that have a humidity; the series itself where all have. */
export function withHumidity(series: Series): Series {
  const { atMs, rhPercent, temperatureC } = series
  // One that is no number makes the sum none.
  let sum = 0
  for (let i = 0; i < rhPercent.length; i += 1) sum += rhPercent[i]!
  if (!Number.isNaN(sum)) return series
  let count = 0
  for (const rh of rhPercent) if (!Number.isNaN(rh)) count += 1
  const kept = {
    atMs: new Float64Array(count),
    rhPercent: new Float32Array(count),
    temperatureC: new Float32Array(count),
  }
  for (let i = 0, to = 0; i < rhPercent.length; i += 1) {
    if (Number.isNaN(rhPercent[i]!)) continue
    kept.atMs[to] = atMs[i]!
    kept.rhPercent[to] = rhPercent[i]!
    kept.temperatureC[to] = temperatureC[i]!
    to += 1
  }
  return kept
}

/** Place of the first reading at or after a moment. */
export function firstFrom(at: Float64Array, moment: number): number {
  let [low, high] = [0, at.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (at[middle]! < moment) low = middle + 1
    else high = middle
  }
  return low
}

/** The readings from a moment on, up to and not with another. Shares the columns. */
export function between(series: Series, fromMs: number, toMs: number): Series {
  const [from, to] = [firstFrom(series.atMs, fromMs), firstFrom(series.atMs, toMs)]
  return {
    atMs: series.atMs.subarray(from, to),
    rhPercent: series.rhPercent.subarray(from, to),
    temperatureC: series.temperatureC.subarray(from, to),
  }
}
