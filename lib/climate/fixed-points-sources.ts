import {
  correctionOverSalts,
  correctionThrough,
  type Correction,
  type CorrectionRefusal,
  type SaltReading,
} from './fixed-points-correction.ts'
import { fixedPoint, handbookRhPercent, type FixedPoint } from './fixed-points.ts'
import { given, type Outcome } from '../base/outcome.ts'

export interface CorrectionBySources {
  readonly correction: Correction
  readonly points: readonly FixedPoint[]
  /** The same line by the handbook alone; null where it does not know both salts at their temperatures, or refuses. */
  readonly byHandbook: Correction | null
}

/**
 * The correction that the salts give [%], and what the second source would make of it, so that their difference can be shown.
 * @param readings [°C, %] one or two salts with their temperature and what the logger read over them
 * @source correctionOverSalts; correctionThrough with handbookRhPercent
 * @valid as correctionOverSalts
 * @agrees exact with both
 */
export function correctionBySources(
  readings: readonly SaltReading[],
): Outcome<CorrectionBySources, readonly CorrectionRefusal[]> {
  const found = correctionOverSalts(readings)
  if (!found.ok) return found
  const byHandbook = correctionThrough(
    readings.map(({ salt, temperatureC, readRhPercent }) => ({
      salt,
      trueRhPercent: handbookRhPercent(salt, temperatureC),
      readRhPercent,
    })),
  )
  return given({
    correction: found.value,
    points: readings.flatMap(({ salt, temperatureC }) => fixedPoint(salt, temperatureC) ?? []),
    byHandbook: byHandbook.ok ? byHandbook.value : null,
  })
}
