import { correctedRhPercent, type Correction } from '../climate/fixed-points-correction.ts'
import type { Series } from './series.ts'

export interface Corrected {
  readonly series: Series
  /** Readings beyond those that were held against a salt: there the correction is a guess. */
  readonly beyondPoints: number
  /** Readings that came out below 0 or above 100 %: they stand as they came out, for they say that the line is wrong there. */
  readonly impossible: number
}

/** The series as the sensor should have read it. */
export function corrected(series: Series, correction: Correction): Corrected {
  const { fromRhPercent, toRhPercent } = correction
  const rhPercent = new Float32Array(series.rhPercent.length)
  let [beyondPoints, impossible] = [0, 0]
  for (let i = 0; i < rhPercent.length; i += 1) {
    const read = Math.round(series.rhPercent[i]! * 100) / 100
    const right = correctedRhPercent(correction, read)
    rhPercent[i] = right
    if (read < fromRhPercent || read > toRhPercent) beyondPoints += 1
    if (right < 0 || right > 100) impossible += 1
  }
  return { series: { ...series, rhPercent }, beyondPoints, impossible }
}
