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

/** Where a window stands and what was highest and lowest so far. */
interface Rolling {
  /** First reading in the window. */
  left: number
  /** Of the readings in the window [%]. */
  sum: number
  high: number
  low: number
  highest: Window | null
  lowest: Window | null
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
  const leastMs = (windowMs * leastCoveragePercent) / 100
  const state: Rolling = { left: 0, sum: 0, high: -Infinity, low: Infinity, highest: null, lowest: null }
  for (let n = 0; n < stretches.length; n += 1) {
    const next = rollIntoStretch(series, stretches, n, windowMs, leastMs, state)
    rollEvenly(series, stretches[n]!, next, state)
  }
  const { highest, lowest } = state
  if (highest === null || lowest === null) return null
  return { highest: meanOf(series, highest, windowMs), lowest: meanOf(series, lowest, windowMs) }
}

/** Goes on until the window lies within an even stretch, or to the stretch's end; gives the place of the next reading. */
function rollIntoStretch(
  series: Series,
  stretches: readonly Stretch[],
  n: number,
  windowMs: number,
  leastMs: number,
  state: Rolling,
): number {
  const { atMs, rhPercent } = series
  const { from, to, stepMs, even } = stretches[n]!
  const [begins, stretchBegins] = [atMs[0]!, atMs[from]!]
  let { left, sum } = state
  let i = from
  for (let whole = false; i < to && !(whole && even); i += 1) {
    sum += rhPercent[i]!
    const endMs = i + 1 < to ? atMs[i + 1]! : atMs[i]! + stepMs
    const start = endMs - windowMs
    for (; atMs[left]! < start; left += 1) sum -= rhPercent[left]!
    whole = start >= stretchBegins
    const mean = sum / (i + 1 - left)
    if (mean <= state.high && mean >= state.low) continue
    if (start < begins || (!whole && readMs(series, stretches, n, start, endMs) < leastMs)) continue
    const window = { from: left, to: i + 1, endMs }
    if (mean > state.high) [state.high, state.highest] = [mean, window]
    if (mean < state.low) [state.low, state.lowest] = [mean, window]
  }
  state.left = left
  state.sum = sum
  return i
}

/** Within an even stretch every window holds as many readings, and the moments need not be looked at. */
function rollEvenly(
  { atMs, rhPercent }: Series,
  { to, stepMs }: Stretch,
  next: number,
  state: Rolling,
): void {
  if (next >= to) return
  const held = next - state.left
  let sum = state.sum
  let most = state.high * held
  let fewest = state.low * held
  let mostAt = -1
  let fewestAt = -1
  for (let i = next; i < to; i += 1) {
    sum += rhPercent[i]! - rhPercent[i - held]!
    if (sum > most) {
      most = sum
      mostAt = i
    }
    if (sum < fewest) {
      fewest = sum
      fewestAt = i
    }
  }
  const window = (i: number): Window => ({ from: i + 1 - held, to: i + 1, endMs: atMs[i]! + stepMs })
  if (mostAt >= 0) [state.high, state.highest] = [most / held, window(mostAt)]
  if (fewestAt >= 0) [state.low, state.lowest] = [fewest / held, window(fewestAt)]
  state.left = to - held
  state.sum = sum
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
