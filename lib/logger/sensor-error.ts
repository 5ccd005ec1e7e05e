import { normalShareBelow } from './normal.ts'

/** How far a sensor may be off. */
export interface SensorError {
  /** ± [%]: half the width within which the truth lies, as a data sheet or a calibration certificate prints it. */
  readonly rhPercent: number
  /** `normal`: the ± is the coverage factor times a standard deviation. `rectangular`: anywhere within it, equally likely. */
  readonly shape: 'normal' | 'rectangular'
  /** Standard deviations in the ±; says nothing where the shape is rectangular. */
  readonly coverageFactor: number
}

/**
 * Chance that the truth lay above a limit when the sensor read what it read [one].
 * @param readRhPercent [%] what the sensor read
 * @param limitRhPercent [%] the limit
 * @param error [%] how far the sensor may be off
 * @source JCGM 106:2012, conformance probability for a normal and a rectangular distribution
 * @valid any reading; an error of nothing gives certainty
 * @agrees 0.0001 with the worked case 13 % read, limit 15 %, ±3 %: 0.0912 normal with factor two, 0.1667 rectangular
 */
export function chanceOver(readRhPercent: number, limitRhPercent: number, error: SensorError): number {
  const over = readRhPercent - limitRhPercent
  if (!(error.rhPercent > 0)) return over > 0 ? 1 : 0
  if (error.shape === 'normal') return normalShareBelow((over * error.coverageFactor) / error.rhPercent)
  return Math.min(1, Math.max(0, 0.5 + over / (2 * error.rhPercent)))
}

/** Chance that the truth lay below a limit [one]. */
export function chanceUnder(readRhPercent: number, limitRhPercent: number, error: SensorError): number {
  return chanceOver(limitRhPercent, readRhPercent, error)
}

export type Verdict = 'within' | 'outside' | 'cannot-tell'

/** With the error on the safe side: within the limit only where even the worst the reading can mean is within it. */
export function guarded(readRhPercent: number, limitRhPercent: number, error: SensorError): Verdict {
  if (readRhPercent + error.rhPercent <= limitRhPercent) return 'within'
  return readRhPercent - error.rhPercent > limitRhPercent ? 'outside' : 'cannot-tell'
}

/** What a data sheet prints: one error over the middle of the range, a wider one at its ends. */
export interface ErrorByRange {
  readonly middleRhPercent: number
  readonly endsRhPercent: number
  readonly fromRhPercent: number
  readonly toRhPercent: number
}

/**
 * How far the sensor may be off where it reads [%]. Between the middle of the range and its ends the line is straight.
 * @param readRhPercent [%] what the sensor read
 * @param sheet [%] the errors its data sheet prints
 * @source data sheets of digital capacitive sensors, figure of the accuracy over the range
 * @valid 0 to 100 %; beyond, the error of the end
 * @agrees exact at the points printed
 * @differs the sheets draw the line between those points and print no number for it
 */
export function errorAt(readRhPercent: number, sheet: ErrorByRange): number {
  const { middleRhPercent, endsRhPercent, fromRhPercent, toRhPercent } = sheet
  const out = Math.max(
    (fromRhPercent - readRhPercent) / fromRhPercent,
    (readRhPercent - toRhPercent) / (100 - toRhPercent),
    0,
  )
  return middleRhPercent + (endsRhPercent - middleRhPercent) * Math.min(1, out)
}
