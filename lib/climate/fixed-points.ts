import { zeroCelsiusK } from './saturation.ts'

export const salts = [
  'lithium-chloride',
  'potassium-acetate',
  'magnesium-chloride',
  'potassium-carbonate',
  'magnesium-nitrate',
  'sodium-bromide',
  'sodium-chloride',
  'potassium-chloride',
  'potassium-sulphate',
] as const
export type Salt = (typeof salts)[number]

interface Span {
  readonly fromC: number
  readonly toC: number
}

/** Relative humidity [%] as a polynomial of the temperature in °C, lowest power first. */
interface Polynomial extends Span {
  readonly coefficients: readonly number[]
}

/** Relative humidity [%] as a·exp(b/T), T in kelvin. */
interface TwoConstants extends Span {
  readonly a: number
  readonly b: number
}

/** From memory, transcriptions and printed tables compared: see greenspanRhPercent. */
const greenspan: Readonly<Partial<Record<Salt, Polynomial>>> = {
  'lithium-chloride': { coefficients: [11.2323, 8.24245e-3, -2.1489e-4], fromC: 0, toC: 100 },
  'potassium-acetate': { coefficients: [22.4388, 0.156288, -6.12868e-3], fromC: 10, toC: 30 },
  'magnesium-chloride': { coefficients: [33.6686, -7.97397e-3, -1.08988e-3], fromC: 0, toC: 99 },
  'potassium-carbonate': { coefficients: [43.1315, 1.47523e-3], fromC: 0, toC: 30 },
  'magnesium-nitrate': { coefficients: [60.3514, -0.29789], fromC: 0, toC: 50 },
  'sodium-chloride': { coefficients: [75.5164, 3.98321e-2, -2.65459e-3, 2.848e-5], fromC: 0, toC: 80 },
  'potassium-chloride': { coefficients: [88.619, -0.19334, 8.99706e-4], fromC: 0, toC: 90 },
  'potassium-sulphate': { coefficients: [98.7792, -5.90502e-2], fromC: 0, toC: 50 },
}

const handbook: Readonly<Partial<Record<Salt, TwoConstants>>> = {
  'lithium-chloride': { a: 14.53, b: -75, fromC: 20, toC: 65 },
  'magnesium-chloride': { a: 29.26, b: 34, fromC: 5, toC: 45 },
  'magnesium-nitrate': { a: 25.28, b: 220, fromC: 5, toC: 35 },
  'sodium-bromide': { a: 20.49, b: 308, fromC: 0, toC: 35 },
  'sodium-chloride': { a: 69.2, b: 25, fromC: 10, toC: 40 },
  'potassium-chloride': { a: 49.38, b: 159, fromC: 5, toC: 25 },
  'potassium-sulphate': { a: 86.75, b: 34, fromC: 10, toC: 50 },
}

const within = (temperatureC: number, { fromC, toC }: Span) => temperatureC >= fromC && temperatureC <= toC

/**
 * Relative humidity over a slurry of a salt in its own saturated solution, after Greenspan [%].
 * @param salt [name] the salt
 * @param temperatureC [°C] temperature of slurry and air
 * @source Greenspan 1977, table 2: coefficients from memory, held against two public transcriptions and Padfield's table
 * @valid 0 to 30 °C at least (potassium acetate 10 to 30); NaN outside, and for salts whose line we do not have
 * @agrees 0.05 points with Padfield's table read, 0.02 with Greenspan's own table as remembered
 * @differs Two transcriptions print the second coefficient of lithium chloride with a minus, that of potassium carbonate too,
 *   and the third of potassium acetate with a plus. Lithium chloride would then be 10.98 % at 20 °C where the tables have
 *   11.3: we take the signs that give the tables. Wexler & Hasegawa 1954 has the peak of sodium chloride at 30 °C, not at
 *   10: half a point apart at most.
 */
export function greenspanRhPercent(salt: Salt, temperatureC: number): number {
  const line = greenspan[salt]
  if (line === undefined || !within(temperatureC, line)) return Number.NaN
  return line.coefficients.reduceRight((sum, coefficient) => sum * temperatureC + coefficient, 0)
}

/**
 * The same after the two constants of the CRC Handbook, a·exp(b/T) [%].
 * @param salt [name] the salt
 * @param temperatureC [°C] temperature of slurry and air
 * @source CRC Handbook of Chemistry and Physics, section 15, constant humidity solutions
 * @valid as printed for each salt: lithium chloride 20 to 65 °C, magnesium chloride 5 to 45, sodium chloride 10 to 40; NaN
 *   outside, and for salts not taken over
 * @agrees 2 % of the value, as the handbook says of itself; at room temperature 0.4 points with Greenspan
 * @differs 3.1 points below Greenspan for magnesium nitrate at 5 °C, 1.5 above for magnesium chloride at 45 °C
 */
export function handbookRhPercent(salt: Salt, temperatureC: number): number {
  const line = handbook[salt]
  if (line === undefined || !within(temperatureC, line)) return Number.NaN
  return line.a * Math.exp(line.b / (temperatureC + zeroCelsiusK))
}

/** What a salt holds the air at, by each source that reaches there. */
export interface FixedPoint {
  readonly salt: Salt
  readonly temperatureC: number
  /** Greenspan's value where there is one, otherwise the handbook's [%]. */
  readonly rhPercent: number
  readonly from: 'greenspan-1977' | 'crc-handbook'
  readonly greenspanPercent: number | null
  readonly handbookPercent: number | null
  /** How far the two lie apart [percentage points]; null where only one speaks. */
  readonly apartPercent: number | null
}

/**
 * What a salt holds the air at [%], by both sources, so that their difference can be shown; null where neither reaches.
 * @param salt [name] the salt
 * @param temperatureC [°C] temperature of slurry and air
 * @source greenspanRhPercent and handbookRhPercent
 * @valid where either of them is
 * @agrees exact with the one it takes
 */
export function fixedPoint(salt: Salt, temperatureC: number): FixedPoint | null {
  const orNull = (value: number) => (Number.isNaN(value) ? null : value)
  const greenspanPercent = orNull(greenspanRhPercent(salt, temperatureC))
  const handbookPercent = orNull(handbookRhPercent(salt, temperatureC))
  const rhPercent = greenspanPercent ?? handbookPercent
  if (rhPercent === null) return null
  return {
    salt,
    temperatureC,
    rhPercent,
    from: greenspanPercent === null ? 'crc-handbook' : 'greenspan-1977',
    greenspanPercent,
    handbookPercent,
    apartPercent:
      greenspanPercent === null || handbookPercent === null
        ? null
        : Math.abs(greenspanPercent - handbookPercent),
  }
}
