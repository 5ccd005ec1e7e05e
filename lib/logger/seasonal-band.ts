import { given, refused, type Outcome } from '../base/outcome.ts'
import { percentile, rankedValues, type PercentileMethod } from './percentiles.ts'
import type { Series } from './series.ts'
import { stretchesOf, withHumidity } from './stretches.ts'

/** The numbers of the method, from content/figures/logger.yaml. */
export interface SeasonalOptions {
  readonly leastMonths: number
  readonly windowDays: number
  readonly lowPercent: number
  readonly highPercent: number
  /** A narrower band is widened to this much either way, as the standard is remembered [%]. */
  readonly widenToRhPercent: number
  readonly leastCoveragePercent: number
  readonly percentileMethod?: PercentileMethod
}

/**
 * How the humidity of a place swings about its seasonal level. Meant for organic materials that took to that climate; it says
 * nothing of metal that is kept dry.
 */
export interface SeasonalBand {
  readonly for: 'organic-materials'
  /** Readings with a whole window about them, and so with a seasonal level. */
  readonly readings: number
  /** How far below and above its level the humidity may lie [%]. */
  readonly lowRhPercent: number
  readonly highRhPercent: number
  /** The same after widening. It lets more through, and the standard was not seen: for information, never to pass anything. */
  readonly widened: {
    readonly lowRhPercent: number
    readonly highRhPercent: number
    readonly changes: boolean
  }
  /** Of these readings, outside the band that was not widened. */
  readonly percentOutside: number
  readonly percentileMethod: PercentileMethod
  /** One a day of UTC. */
  readonly level: readonly { readonly atMs: number; readonly rhPercent: number }[]
}

export type NoSeasonalBand =
  | { readonly because: 'too-short'; readonly wholeMonths: number; readonly leastMonths: number }
  | {
      readonly because: 'too-little-read'
      readonly coveragePercent: number
      readonly leastCoveragePercent: number
    }

const dayMs = 86_400_000

/** The mean of all readings within half a window before and after each; NaN where the window leaves the record. */
export function seasonalLevels({ atMs, rhPercent }: Series, windowMs: number): Float64Array {
  const levels = new Float64Array(atMs.length).fill(Number.NaN)
  const half = windowMs / 2
  const [first, last] = [atMs[0] ?? 0, atMs.at(-1) ?? 0]
  let [left, right, sum] = [0, 0, 0]
  for (let i = 0; i < atMs.length; i += 1) {
    const at = atMs[i]!
    for (; right < atMs.length && atMs[right]! <= at + half; right += 1) sum += rhPercent[right]!
    for (; atMs[left]! < at - half; left += 1) sum -= rhPercent[left]!
    if (at - half >= first && at + half <= last) levels[i] = sum / (right - left)
  }
  return levels
}

/**
 * The band of the fluctuations about the seasonal level [%], or what is missing for it.
 * @param series [%] readings of a place
 * @param options [%] the numbers of the method
 * @source EN 15757:2010: central moving mean over thirty days, the 7th and 93rd percentile of what is left
 * @valid thirteen months of readings or more, three quarters of the time read; otherwise the answer says what is missing
 * @agrees 0.02 % with a year of two sines, whose 93rd percentile is known in closed form
 * @differs the standard was not seen, the method is as others report it; the widening it is said to allow is given apart
 */
export function seasonalBand(
  series: Series,
  options: SeasonalOptions,
): Outcome<SeasonalBand, NoSeasonalBand> {
  const read = withHumidity(series)
  const { atMs, rhPercent } = read
  const stretches = stretchesOf(read)
  const ends = (atMs.at(-1) ?? 0) + (stretches.at(-1)?.stepMs ?? 0)
  const wholeMonths = atMs.length === 0 ? 0 : monthsBetween(atMs[0]!, ends)
  const { leastMonths, leastCoveragePercent, percentileMethod = 'linear' } = options
  if (wholeMonths < leastMonths) return refused({ because: 'too-short', wholeMonths, leastMonths })
  const stood = stretches.reduce((sum, { from, to, stepMs }) => sum + atMs[to - 1]! - atMs[from]! + stepMs, 0)
  const coveragePercent = (100 * stood) / (ends - atMs[0]!)
  if (coveragePercent < leastCoveragePercent)
    return refused({ because: 'too-little-read', coveragePercent, leastCoveragePercent })

  const levels = seasonalLevels(read, options.windowDays * dayMs)
  const fluctuations = fluctuationsAbout(levels, rhPercent)
  const byValue = rankedValues(fluctuations)
  const lowRhPercent = percentile(byValue, options.lowPercent, percentileMethod)
  const highRhPercent = percentile(byValue, options.highPercent, percentileMethod)
  const widest = options.widenToRhPercent
  let outside = 0
  for (const value of fluctuations) if (value < lowRhPercent || value > highRhPercent) outside += 1
  return given({
    for: 'organic-materials',
    readings: fluctuations.length,
    lowRhPercent,
    highRhPercent,
    widened: {
      lowRhPercent: Math.min(lowRhPercent, -widest),
      highRhPercent: Math.max(highRhPercent, widest),
      changes: lowRhPercent > -widest || highRhPercent < widest,
    },
    percentOutside: (100 * outside) / fluctuations.length,
    percentileMethod,
    level: dailyOf(atMs, levels),
  })
}

/** What is left of the readings that have a level, less that level. */
function fluctuationsAbout(levels: Float64Array, rhPercent: Float32Array): Float64Array {
  const left = new Float64Array(levels.length)
  let count = 0
  for (let i = 0; i < levels.length; i += 1) {
    const off = rhPercent[i]! - levels[i]!
    if (!Number.isNaN(off)) left[count++] = off
  }
  return left.subarray(0, count)
}

/** Whole calendar months from one moment to another. */
function monthsBetween(fromMs: number, toMs: number): number {
  const from = new Date(fromMs)
  let months = 0
  while (addedMonths(from, months + 1) <= toMs) months += 1
  return months
}

/** The same day some months on, or the last of that month where it has no such day. */
function addedMonths(from: Date, months: number): number {
  const [year, month] = [from.getUTCFullYear(), from.getUTCMonth() + months]
  const last = new Date(Date.UTC(year, month + 1, 0)).getUTCDate()
  const sinceMidnight = from.getTime() % dayMs
  return Date.UTC(year, month, Math.min(from.getUTCDate(), last)) + sinceMidnight
}

function dailyOf(atMs: Float64Array, levels: Float64Array): SeasonalBand['level'] {
  const daily: { atMs: number; rhPercent: number }[] = []
  let seen = -1
  for (let i = 0; i < atMs.length; i += 1) {
    const day = Math.floor(atMs[i]! / dayMs)
    if (day === seen || Number.isNaN(levels[i]!)) continue
    seen = day
    daily.push({ atMs: atMs[i]!, rhPercent: levels[i]! })
  }
  return daily
}
