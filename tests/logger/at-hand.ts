import type { SensorError } from '../../lib/logger/sensor-error.ts'
import type { Series } from '../../lib/logger/series.ts'
import type { StatisticsOptions } from '../../lib/logger/statistics.ts'

export const hour = 3_600_000
export const day = 24 * hour
/** The moment most series of these tests begin at. */
export const start = Date.UTC(2026, 2, 1)

/** The 24 hourly readings that physics.md part 4.3 works through by hand. */
export const workedDay = [
  14, 14, 13, 13, 14, 15, 15, 16, 18, 21, 24, 26, 27, 25, 22, 19, 17, 16, 15, 15, 14, 14, 14, 13,
] as const

/** Readings `stepMs` apart. */
export function every(
  stepMs: number,
  rhPercent: readonly number[],
  temperatureC: readonly number[] = [],
  fromMs = start,
): Series {
  return at(
    rhPercent.map((_, i) => fromMs + i * stepMs),
    rhPercent,
    temperatureC,
  )
}

export function at(
  atMs: readonly number[],
  rhPercent: readonly number[],
  temperatureC: readonly number[] = [],
): Series {
  return {
    atMs: Float64Array.from(atMs),
    rhPercent: Float32Array.from(rhPercent),
    temperatureC: Float32Array.from(rhPercent, (_, i) => temperatureC[i] ?? Number.NaN),
  }
}

export const error: SensorError = { rhPercent: 3, shape: 'normal', coverageFactor: 2 }

export const against = (
  maxRhPercent: number | null,
  more: Partial<StatisticsOptions> = {},
): StatisticsOptions => ({
  band: { minRhPercent: null, maxRhPercent },
  error,
  leastCoveragePercent: 75,
  ...more,
})
