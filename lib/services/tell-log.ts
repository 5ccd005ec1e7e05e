import { loggerFigures, sensorErrorOf } from '../boxes/logger-figures.ts'
import type { Figures } from '../boxes/figure-value.ts'
import type { Outcome } from '../base/outcome.ts'
import type { DoseMethod } from '../logger/beyond.ts'
import { excursionsOf, type Excursion } from '../logger/excursions.ts'
import { flatFloorOf, type FlatFloor } from '../logger/flat-floor.ts'
import { nearestWithin } from '../logger/near-limit.ts'
import type { PercentileMethod } from '../logger/percentiles.ts'
import { seasonalBand, type NoSeasonalBand, type SeasonalBand } from '../logger/seasonal-band.ts'
import { chanceOver, chanceUnder, guarded, type SensorError, type Verdict } from '../logger/sensor-error.ts'
import type { Channel } from '../logger/series.ts'
import { statisticsOf, type LogStatistics } from '../logger/statistics.ts'

/** What readings are held against; null: the knowledge's, or nothing. */
export interface LogAsked {
  readonly maxRhPercent: number | null
  readonly minRhPercent: number | null
  readonly sensorErrorRhPercent: number | null
  readonly floorRhPercent: number | null
  readonly percentiles: readonly number[]
  readonly percentileMethod: PercentileMethod
  readonly doseMethod: DoseMethod
}

/** A reading beside a limit, and how likely it lay beyond it. */
export interface LimitChance {
  readonly readRhPercent: number
  readonly limitRhPercent: number
  readonly chance: number
}

/** What the readings of one sensor say. */
export interface LogTold {
  readonly name: string
  readonly serial: string | null
  readonly statistics: LogStatistics
  readonly excursions: readonly Excursion[]
  readonly floor: FlatFloor | null
  readonly error: SensorError
  /** The highest reading within the upper limit, and the lowest within the lower one: may they have been beyond it? */
  readonly overLimit: LimitChance | null
  readonly underLimit: LimitChance | null
  /** Of the upper limit, with the error of the sensor on the safe side; null where there is none. */
  readonly verdict: Verdict | null
  readonly seasonal: Outcome<SeasonalBand, NoSeasonalBand>
  /** So little was read that hours and counts of excursions hardly stand. */
  readonly countsDoubtful: boolean
}

export function tellLog({ name, serial, series }: Channel, asked: LogAsked, knowledge: Figures): LogTold {
  const figures = loggerFigures(knowledge)
  const { maxRhPercent, minRhPercent } = asked
  const error = sensorErrorOf(knowledge, maxRhPercent ?? minRhPercent ?? 50, asked.sensorErrorRhPercent)
  const floor = flatFloorOf(series, {
    highestFloorRhPercent: figures.highestFloorRhPercent,
    registeredRhPercent: asked.floorRhPercent,
  })
  const statistics = statisticsOf(series, {
    band: { minRhPercent, maxRhPercent },
    error,
    floor,
    leastCoveragePercent: figures.leastCoveragePercent,
    percentiles: asked.percentiles,
    percentileMethod: asked.percentileMethod,
    doseMethod: asked.doseMethod,
  })
  const near = (side: Excursion['kind'], limit: number | null): LimitChance | null => {
    const read = limit === null ? null : nearestWithin(series, limit, side, floor?.atRhPercent)
    if (limit === null || read === null) return null
    const chance = side === 'above' ? chanceOver : chanceUnder
    return { readRhPercent: read, limitRhPercent: limit, chance: chance(read, limit, error) }
  }
  return {
    name,
    serial,
    statistics,
    excursions: excursionsOf(series, {
      error,
      ...(maxRhPercent === null ? {} : { aboveRhPercent: maxRhPercent }),
      ...(minRhPercent === null ? {} : { belowRhPercent: minRhPercent }),
      ...(floor === null ? {} : { floorRhPercent: floor.atRhPercent }),
    }),
    floor,
    error,
    verdict: verdictOf(statistics, maxRhPercent, error),
    overLimit: near('above', maxRhPercent),
    underLimit: near('below', minRhPercent),
    seasonal: seasonalBand(series, figures.seasonal),
    countsDoubtful:
      statistics.readings > 0 && statistics.coveragePercent < figures.leastCoverageForCountsPercent,
  }
}

/** What lies at a floor above the limit is known to be neither within nor outside. */
function verdictOf({ humidity }: LogStatistics, limit: number | null, error: SensorError): Verdict | null {
  if (!humidity?.above || limit === null) return null
  const verdict = guarded(humidity.max, limit, error)
  const { excursions, hoursCannotTell } = humidity.above
  return hoursCannotTell > 0 && (verdict === 'within' || excursions === 0) ? 'cannot-tell' : verdict
}
