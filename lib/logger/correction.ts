import type { Series } from './series.ts'

/** A straight line from what the sensor reads to what it should read, through two points above saturated salts. */
export interface Correction {
  /** True = offset + slope × read [%]. */
  readonly offsetRhPercent: number
  readonly slope: number
  /** The two readings it was drawn through [%]: beyond them it is a guess. */
  readonly fromRhPercent: number
  readonly toRhPercent: number
}

export interface Corrected {
  readonly series: Series
  /** Readings beyond the two points. */
  readonly beyondPoints: number
  /** Readings that came out below 0 or above 100 %: they stand as they came out, for they say that the line is wrong there. */
  readonly impossible: number
}

/** The series as the sensor should have read it. */
export function corrected(series: Series, correction: Correction): Corrected {
  const { offsetRhPercent, slope, fromRhPercent, toRhPercent } = correction
  const [low, high] = [Math.min(fromRhPercent, toRhPercent), Math.max(fromRhPercent, toRhPercent)]
  const rhPercent = new Float32Array(series.rhPercent.length)
  let [beyondPoints, impossible] = [0, 0]
  for (let i = 0; i < rhPercent.length; i += 1) {
    const read = Math.round(series.rhPercent[i]! * 100) / 100
    const right = offsetRhPercent + slope * read
    rhPercent[i] = right
    if (read < low || read > high) beyondPoints += 1
    if (right < 0 || right > 100) impossible += 1
  }
  return { series: { ...series, rhPercent }, beyondPoints, impossible }
}
