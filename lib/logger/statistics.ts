import { againstBand, type Against, type Beyond, type DoseMethod } from './beyond.ts'
import { greatestChange, type Change } from './greatest-change.ts'
import { moistureOf, type MoistureSummary } from './moisture.ts'
import { monthsOf, type MonthRow } from './months.ts'
import { percentile, type PercentileMethod } from './percentiles.ts'
import { rankedOf, profileOf, spreadOf, type Profile, type Spread } from './profile.ts'
import { rollingMeans, type Extremes } from './rolling.ts'
import type { Series } from './series.ts'
import { intervalMs, stretchesOf, withHumidity, type Stretch } from './stretches.ts'

export type { Beyond, DoseMethod } from './beyond.ts'

export interface StatisticsOptions extends Against {
  /** Share of the time [%] that must have been read before a rolling mean counts. */
  readonly leastCoveragePercent: number
  readonly percentiles?: readonly number[]
  readonly percentileMethod?: PercentileMethod
  /** A longer step is a gap [ms]; left out: one longer than twice the steps around it. */
  readonly longestStepMs?: number
  /** How long the last reading before a gap is taken to hold [ms]; left out: one step. */
  readonly lastStandsMs?: number
}

export interface Gap {
  readonly fromMs: number
  readonly toMs: number
}

export interface Percentile {
  readonly percent: number
  readonly rhPercent: number
  /** At the floor of the logger: the truth may be lower. */
  readonly atMost: boolean
}

/** What the humidities of a log say. */
export interface HumidityStatistics extends Spread {
  /** Readings lie at the flat floor: the least and the mean are what they are at most. */
  readonly atMost: boolean
  readonly percentiles: readonly Percentile[]
  readonly percentileMethod: PercentileMethod
  readonly doseMethod: DoseMethod
  /** Time with readings. */
  readonly hours: number
  readonly hoursIn: number
  readonly percentOfTimeIn: number
  /** Null where the band has no such end. */
  readonly above: Beyond | null
  readonly below: Beyond | null
  /** Means over 24 hours and over 30 days, wherever they fall; null where no such time was read well enough. */
  readonly day: Extremes | null
  readonly thirtyDays: Extremes | null
  /** Between two readings at most 24 hours apart, and so the widest range of any such time; null where there are no two. */
  readonly greatestChange: Change | null
}

export interface LogStatistics {
  /** Readings with a humidity. */
  readonly readings: number
  readonly fromMs: number | null
  readonly toMs: number | null
  /** How far apart the readings usually stand. */
  readonly intervalMs: number
  /** Time with readings, of the time from the first to what the last stands for; 0 where there are none. */
  readonly coveragePercent: number
  readonly gaps: readonly Gap[]
  /** Values of more than two decimals, taken at the nearest hundredth. */
  readonly rounded: number
  /** Values that no humidity can have, left out. */
  readonly implausible: number
  /** Null where no humidity was read. */
  readonly humidity: HumidityStatistics | null
  readonly temperatureC: Spread | null
  readonly moisture: MoistureSummary | null
  /** By calendar month of UTC. */
  readonly months: readonly MonthRow[]
}

export const hourMs = 3_600_000
export const dayMs = 24 * hourMs
const usualPercentiles = [7, 50, 93]

/** Everything that is told of a log. */
export function statisticsOf(series: Series, options: StatisticsOptions): LogStatistics {
  const read = withHumidity(series)
  const stretches = stretchesOf(read, options.longestStepMs)
  const profile = profileOf(read, stretches, options.lastStandsMs ?? null)
  const { atMs } = read
  const last = stretches.at(-1)
  const stood = stretches.reduce((sum, { from, to, stepMs }) => sum + atMs[to - 1]! - atMs[from]! + stepMs, 0)
  return {
    readings: profile.readings,
    fromMs: atMs[0] ?? null,
    toMs: atMs.at(-1) ?? null,
    intervalMs: intervalMs(read),
    coveragePercent:
      last === undefined ? 0 : stood === 0 ? 100 : (100 * stood) / (atMs.at(-1)! + last.stepMs - atMs[0]!),
    gaps: stretches.slice(1).map(({ from }) => ({ fromMs: atMs[from - 1]!, toMs: atMs[from]! })),
    rounded: profile.rounded,
    implausible: profile.implausible,
    humidity: humidityOf(read, stretches, profile, options),
    moisture: moistureOf(read),
    ...monthsOf(series),
  }
}

function humidityOf(
  read: Series,
  stretches: readonly Stretch[],
  profile: Profile,
  options: StatisticsOptions,
): HumidityStatistics | null {
  const spread = spreadOf(profile)
  if (spread === null) return null
  const {
    percentileMethod = 'linear',
    doseMethod = 'rectangle',
    leastCoveragePercent,
    floor = null,
  } = options
  const ranked = rankedOf(profile)
  const { inMs, readMs, over, under } = againstBand(read, stretches, profile, options)
  return {
    ...spread,
    atMost: floor !== null,
    percentiles: (options.percentiles ?? usualPercentiles).map((percent) => {
      const rhPercent = percentile(ranked, percent, percentileMethod)
      return { percent, rhPercent, atMost: floor !== null && rhPercent <= floor.atRhPercent }
    }),
    percentileMethod,
    doseMethod,
    hours: readMs / hourMs,
    hoursIn: inMs / hourMs,
    percentOfTimeIn: readMs === 0 ? 0 : (100 * inMs) / readMs,
    above: over,
    below: under,
    day: rollingMeans(read, stretches, dayMs, leastCoveragePercent),
    thirtyDays: rollingMeans(read, stretches, 30 * dayMs, leastCoveragePercent),
    greatestChange: greatestChange(read, dayMs),
  }
}
