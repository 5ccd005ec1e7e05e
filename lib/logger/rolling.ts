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

/** Steps through the readings in order and tells how long each stands. */
function standing(at: Float64Array, stretches: readonly Stretch[]): (i: number) => number {
  let [n, stretch] = [0, stretches[0]!]
  return (i) => {
    while (i >= stretch.to) stretch = stretches[++n]!
    return i + 1 < stretch.to ? at[i + 1]! - at[i]! : stretch.stepMs
  }
}

/**
 * The highest and lowest mean over `windowMs` up to each reading, each reading counting once. Only times that lie within the
 * record and of which at least `leastCoveragePercent` was read count; null where there is none.
 */
export function rollingMeans(
  { atMs, rhPercent }: Series,
  stretches: readonly Stretch[],
  windowMs: number,
  leastCoveragePercent: number,
): Extremes | null {
  const least = (windowMs * leastCoveragePercent) / 100
  const leaves = standing(atMs, stretches)
  // Hundredths are whole, so that what is added and taken away again leaves nothing behind.
  let [left, sum, read] = [0, 0, 0]
  let [high, low] = [-Infinity, Infinity]
  let [highEnds, lowEnds] = [0, 0]
  for (const { from, to, stepMs } of stretches) {
    for (let i = from; i < to; i += 1) {
      const stands = i + 1 < to ? atMs[i + 1]! - atMs[i]! : stepMs
      sum += Math.round(rhPercent[i]! * 100)
      read += stands
      const start = atMs[i]! + stands - windowMs
      while (atMs[left]! < start) {
        sum -= Math.round(rhPercent[left]! * 100)
        read -= leaves(left)
        left += 1
      }
      if (read < least || start < atMs[0]!) continue
      const mean = sum / (i + 1 - left)
      if (mean > high) [high, highEnds] = [mean, atMs[i]! + stands]
      if (mean < low) [low, lowEnds] = [mean, atMs[i]! + stands]
    }
  }
  if (high === -Infinity) return null
  const mean = (value: number, ends: number): RollingMean => ({
    rhPercent: value / 100,
    fromMs: ends - windowMs,
    toMs: ends,
  })
  return { highest: mean(high, highEnds), lowest: mean(low, lowEnds) }
}
