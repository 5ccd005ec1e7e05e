import type { Isotherm, Span } from './isotherm.ts'
import { saturationOverWaterPa, zeroCelsiusK } from './saturation.ts'

/** Molar gas constant, CODATA 2018 [J/(mol·K)]. */
const gasConstant = 8.314462618
const within = (value: number, { from, to }: Span) => value >= from && value <= to

/** How far from 25 °C the law of equal potential is trusted: a store, not an oven. */
export const potentialTheoryC = { from: 5, to: 40 } as const

/**
 * Relative humidity at which gel of another temperature holds the same water [%].
 * @param rhPercent [%] relative humidity at the first temperature
 * @param temperatureC [°C] the first temperature
 * @param toTemperatureC [°C] the other
 * @source potential theory (Polanyi, Dubinin): content depends on R·T·ln(1/φ) alone
 * @valid 5 to 40 °C, a few tens of percent; NaN outside
 * @agrees 2 % of relative humidity with the Tóth equation for 10 °C of change at 15 %
 */
export function samePotentialRhPercent(
  rhPercent: number,
  temperatureC: number,
  toTemperatureC: number,
): number {
  if (!within(temperatureC, potentialTheoryC) || !within(toTemperatureC, potentialTheoryC)) return Number.NaN
  return 100 * (rhPercent / 100) ** ((temperatureC + zeroCelsiusK) / (toTemperatureC + zeroCelsiusK))
}

/** The humidities at which the gel of Thu 2013 was measured [%]: 177.7 to 3021.8 Pa at 25 °C. */
const dubininAstakhovRh = { from: 5.6, to: 95.4 } as const

/**
 * Water held by a regular-density silica gel (RD 2560) [g/kg].
 * @param rhPercent [%] relative humidity of the air
 * @param temperatureC [°C] of the gel
 * @source Dubinin–Astakhov equation of Thu 2013: 0.327 L/kg, 4384 J/mol, exponent 1.35; water at 997 g/L
 * @valid fitted at 25 °C from 5.6 to 95.4 %; elsewhere from 5 to 40 °C by the equation's own theory; NaN outside
 * @agrees 17 % with the measured points of the same gel: right at 10 to 30 %, too low above and at the dry end
 */
export function dubininAstakhovGPerKg(rhPercent: number, temperatureC: number): number {
  if (!within(rhPercent, dubininAstakhovRh) || !within(temperatureC, potentialTheoryC)) return Number.NaN
  const potential = gasConstant * (temperatureC + zeroCelsiusK) * Math.log(100 / rhPercent)
  return 997 * 0.327 * Math.exp(-((potential / 4384) ** 1.35))
}

const tothC = { from: 0, to: 75 } as const
const tothPa = { from: 13.9, to: 5250 } as const
/** The most that was measured; beyond it the equation climbs on without end. */
const tothMostGPerKg = 342.3

function tothUnbounded(pressurePa: number, kelvin: number): number {
  const exponent = -0.00119 + 22.13 / kelvin
  const affinity = Math.log(2.787e-8) + 1093 / kelvin + Math.log(pressurePa)
  return (
    1000 *
    Math.exp(Math.log(1.14219590097e5) + affinity - Math.log1p(Math.exp(exponent * affinity)) / exponent)
  )
}

/**
 * Water held by a silica gel [g/kg].
 * @param rhPercent [%] relative humidity of the air
 * @param temperatureC [°C] of the gel
 * @source Tóth equation of Wang & LeVan 2009; in logarithms, since its saturation content is no real amount
 * @valid 0 to 75 °C, 13.9 to 5250 Pa of vapour, up to 342 g/kg; NaN outside
 * @agrees 13 % with the measured points of the same work, 0 to 75 °C
 */
export function tothGPerKg(rhPercent: number, temperatureC: number): number {
  const pressurePa = (rhPercent / 100) * saturationOverWaterPa(temperatureC)
  if (!within(temperatureC, tothC) || !within(pressurePa, tothPa) || rhPercent > 100) return Number.NaN
  const content = tothUnbounded(pressurePa, temperatureC + zeroCelsiusK)
  return content <= tothMostGPerKg ? content : Number.NaN
}

function tothRhPercent(temperatureC: number): Span | null {
  if (!within(temperatureC, tothC)) return null
  const saturation = saturationOverWaterPa(temperatureC)
  let low: number = tothPa.from
  let high = Math.min(tothPa.to, saturation)
  for (let halvings = 0; halvings < 60; halvings += 1) {
    const middle = (low + high) / 2
    if (tothUnbounded(middle, temperatureC + zeroCelsiusK) <= tothMostGPerKg) low = middle
    else high = middle
  }
  return { from: (100 * tothPa.from) / saturation, to: (100 * low) / saturation }
}

const fujiARh = { from: 0.6, to: 53 } as const
const fujiAC = { from: 19.8, to: 120.2 } as const

/**
 * Water held by a type A silica gel [g/kg].
 * @param rhPercent [%] relative humidity of the air
 * @param temperatureC [°C] of the gel; by the equation content follows relative humidity alone
 * @source Freundlich equation of Sakoda & Suzuki 1984: 0.346·φ^(1/1.6)
 * @valid the isobar it was drawn through, of 1215 Pa: 20 to 120 °C, 0.6 to 53 %; NaN outside
 * @agrees 33 % with that isobar
 */
export function fujiAGPerKg(rhPercent: number, temperatureC: number): number {
  if (!within(rhPercent, fujiARh) || !within(temperatureC, fujiAC)) return Number.NaN
  return 346 * (rhPercent / 100) ** 0.625
}

export const dubininAstakhov: Isotherm = {
  id: 'dubinin-astakhov-rd-2560',
  work: 'thu-2013',
  temperatureC: potentialTheoryC,
  rhPercent: (temperatureC) => (within(temperatureC, potentialTheoryC) ? dubininAstakhovRh : null),
  contentGPerKg: dubininAstakhovGPerKg,
}

export const toth: Isotherm = {
  id: 'toth-wang-levan',
  work: 'wang-levan-2009',
  temperatureC: tothC,
  rhPercent: tothRhPercent,
  contentGPerKg: tothGPerKg,
}

export const fujiA: Isotherm = {
  id: 'freundlich-fuji-a',
  work: 'sakoda-suzuki-1984',
  temperatureC: fujiAC,
  rhPercent: (temperatureC) => (within(temperatureC, fujiAC) ? fujiARh : null),
  contentGPerKg: fujiAGPerKg,
}
