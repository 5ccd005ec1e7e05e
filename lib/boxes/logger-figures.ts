import type { SeasonalOptions } from '../logger/seasonal-band.ts'
import { errorAt, type SensorError } from '../logger/sensor-error.ts'
import { figureValue, type Figures } from './figure-value.ts'

/** What the tool takes of loggers where nobody says better, each from a figure of the knowledge. */
export interface LoggerFigures {
  /** A flat run at more than this is no floor but a quiet box [%]. */
  readonly highestFloorRhPercent: number
  readonly leastCoveragePercent: number
  /** Share of the time that must have been read for hours and excursions to stand [%]. */
  readonly leastCoverageForCountsPercent: number
  /** A limit not read as passed counts as perhaps passed from this chance on [one]. */
  readonly perhapsChance: number
  readonly seasonal: SeasonalOptions
}

export function loggerFigures(knowledge: Figures): LoggerFigures {
  const value = (id: string) => figureValue(knowledge, id)
  return {
    highestFloorRhPercent: value('logger-floor-highest'),
    leastCoveragePercent: value('log-least-read-mean'),
    leastCoverageForCountsPercent: value('log-least-read-count'),
    perhapsChance: value('log-perhaps-chance') / 100,
    seasonal: {
      leastMonths: value('seasonal-least-months'),
      windowDays: value('seasonal-window-days'),
      lowPercent: value('seasonal-low-percent'),
      highPercent: value('seasonal-high-percent'),
      widenToRhPercent: value('seasonal-widen'),
      leastCoveragePercent: value('log-least-read-mean'),
    },
  }
}

/** The error of a sensor near a humidity: what the register, a certificate or the caller says of it, else what data sheets print. */
export function sensorErrorOf(
  knowledge: Figures,
  nearRhPercent: number,
  saidRhPercent: number | null = null,
): SensorError {
  const value = (id: string) => figureValue(knowledge, id)
  const sheet = {
    middleRhPercent: value('logger-error-middle'),
    endsRhPercent: value('logger-error-ends'),
    fromRhPercent: value('logger-error-middle-from'),
    toRhPercent: value('logger-error-middle-to'),
  }
  return {
    rhPercent: saidRhPercent ?? errorAt(nearRhPercent, sheet),
    shape: 'normal',
    coverageFactor: value('logger-coverage-factor'),
  }
}
