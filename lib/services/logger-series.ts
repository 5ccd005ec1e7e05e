import type { IsoDate } from '../base/calendar.ts'
import { correctedRhPercent } from '../climate/fixed-points-correction.ts'
import { corrected } from '../logger/correction.ts'
import { unpackDays } from '../logger/day-block.ts'
import type { Series } from '../logger/series.ts'
import { correctionOf } from './box-sightings.ts'
import type { Logger } from './loggers.ts'
import type { Reads } from './ports.ts'

/** The readings of one channel, put right by what the logger read over salts. */
export async function loggerSeries(
  reads: Reads,
  logger: Logger,
  of: { readonly channel: string; readonly from?: IsoDate; readonly to?: IsoDate },
): Promise<Series> {
  const days = await reads.readings.days({ loggerId: logger.id, ...of })
  const series = unpackDays(days.map(({ day, block }) => ({ day, text: block })))
  const line = correctionOf(logger)
  return line === null ? series : corrected(series, line).series
}

/** The least the logger can report, put right as its readings are; null where nobody wrote it. */
export function registeredFloor(logger: Logger): number | null {
  const written = logger.given.floor_rh_percent ?? null
  const line = correctionOf(logger)
  return written === null || line === null ? written : correctedRhPercent(line, written)
}
