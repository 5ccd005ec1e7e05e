import type { Series } from './series.ts'
import type { Stretch } from './stretches.ts'

/** The mean of the readings of some time up to and with the last of them. */
export interface RollingMean {
  readonly rhPercent: number
  readonly fromMs: number
  /** The last reading and what it stands for. */
  readonly toMs: number
}

export interface Extremes {
  readonly highest: RollingMean
  readonly lowest: RollingMean
}

/** Readings from one place up to, not with, another, and when the time they fill ends. */
interface Window {
  readonly from: number
  readonly to: number
  readonly endMs: number
}

/**
 * The highest and lowest mean over `windowMs` up to each reading, each reading counting once. Only times that lie within the
 * record and of which at least `leastCoveragePercent` was read count; null where there is none.
 */
export function rollingMeans(
  series: Series,
  stretches: readonly Stretch[],
  windowMs: number,
  leastCoveragePercent: number,
): Extremes | null {
  const { atMs, rhPercent } = series
  const least = (windowMs * leastCoveragePercent) / 100
  const begins = atMs[0] ?? 0
  let [left, sum, high, low] = [0, 0, -Infinity, Infinity]
  let highest: Window | null = null
  let lowest: Window | null = null
  for (const [n, { from, to, stepMs, even }] of stretches.entries()) {
    let i = from
    for (let whole = false; i < to && !(whole && even); i += 1) {
      sum += rhPercent[i]!
      const endMs = i + 1 < to ? atMs[i + 1]! : atMs[i]! + stepMs
      const start = endMs - windowMs
      for (; atMs[left]! < start; left += 1) sum -= rhPercent[left]!
      whole = start >= atMs[from]!
      const mean = sum / (i + 1 - left)
      if (mean <= high && mean >= low) continue
      if (start < begins || (!whole && readMs(series, stretches, n, start, endMs) < least)) continue
      const window = { from: left, to: i + 1, endMs }
      if (mean > high) [high, highest] = [mean, window]
      if (mean < low) [low, lowest] = [mean, window]
    }
    // Within an even stretch every window holds as many readings, and the moments need not be looked at.
    const held = i - left
    let [most, fewest] = [high * held, low * held]
    for (; i < to; i += 1) {
      sum += rhPercent[i]! - rhPercent[i - held]!
      if (sum <= most && sum >= fewest) continue
      const window = { from: i + 1 - held, to: i + 1, endMs: atMs[i]! + stepMs }
      if (sum > most) [most, high, highest] = [sum, sum / held, window]
      if (sum < fewest) [fewest, low, lowest] = [sum, sum / held, window]
    }
    left = i - held
  }
  if (highest === null || lowest === null) return null
  return { highest: meanOf(series, highest, windowMs), lowest: meanOf(series, lowest, windowMs) }
}

/** Time with readings from `start` to `end`, which lies in stretch `last` [ms]. */
function readMs(
  { atMs }: Series,
  stretches: readonly Stretch[],
  last: number,
  start: number,
  end: number,
): number {
  let [read, n] = [end - atMs[stretches[last]!.from]!, last - 1]
  for (; n >= 0; n -= 1) {
    const { from, to, stepMs } = stretches[n]!
    const until = atMs[to - 1]! + stepMs
    if (until <= start) break
    read += until - Math.max(start, atMs[from]!)
  }
  return read
}

/** From whole hundredths: the running sum is of single floats, which print as 12.1000004. */
function meanOf({ rhPercent }: Series, { from, to, endMs }: Window, windowMs: number): RollingMean {
  let sum = 0
  for (let i = from; i < to; i += 1) sum += Math.round(rhPercent[i]! * 100)
  return { rhPercent: sum / (to - from) / 100, fromMs: endMs - windowMs, toMs: endMs }
}
