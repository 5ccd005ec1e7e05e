/**
 * What relative humidity is counted against below 0 °C: liquid water, as meteorology and the sensors of loggers do, or ice,
 * as engineering tables do. The two differ by a fifth at -20 °C, so every formula is told which one holds.
 */
export type Convention = 'water' | 'ice-below-zero'

export const zeroCelsiusK = 273.15
export const triplePointC = 0.01

/** Where the equations hold [°C]. Outside, every formula of this room gives NaN, never the value at the edge. */
export const waterValidC = { from: -100, to: 200 } as const
export const iceValidC = { from: -100, to: 0.01 } as const

const within = (value: number, { from, to }: { readonly from: number; readonly to: number }) =>
  value >= from && value <= to

function hylandWexlerWater(kelvin: number): number {
  return (
    -5.8002206e3 / kelvin +
    1.3914993 +
    kelvin * (-4.8640239e-2 + kelvin * (4.1764768e-5 + kelvin * -1.4452093e-8)) +
    6.5459673 * Math.log(kelvin)
  )
}

function sonntagSupercooled(kelvin: number): number {
  return (
    -6096.9385 / kelvin +
    21.2409642 +
    kelvin * (-2.711193e-2 + kelvin * 1.673952e-5) +
    2.433502 * Math.log(kelvin)
  )
}

function hylandWexlerIce(kelvin: number): number {
  return (
    -5.6745359e3 / kelvin +
    6.3925247 +
    kelvin * (-9.677843e-3 + kelvin * (6.2215701e-7 + kelvin * (2.0747825e-9 + kelvin * -9.484024e-13))) +
    4.1635019 * Math.log(kelvin)
  )
}

/** Lifts Sonntag's line onto Hyland and Wexler's where they meet, so that nothing jumps at 0 °C. */
const joinAtZero = hylandWexlerWater(zeroCelsiusK) - sonntagSupercooled(zeroCelsiusK)

/**
 * Pressure of the vapour over liquid water at rest with it, supercooled below 0 °C [Pa].
 * @param temperatureC [°C] temperature of water and vapour
 * @source Hyland & Wexler 1983 as ASHRAE Fundamentals 2017, chapter 1, equation 6, from 0 °C up; Sonntag 1990 over
 *   supercooled water below
 * @valid -100 to 200 °C; NaN outside. Below about -40 °C water freezes of itself: there the line is a convention only.
 * @agrees 0.03 % with ASHRAE's printed table, 0.023 % with Wagner & Pruß 2002 from 0.01 to 200 °C;
 *   supercooled 0.07 % with Murphy & Koop 2005 down to -20 °C, 1.2 % down to -45
 * @differs Sonntag's values are raised by the 0.000005 % that makes the two equations meet at 0 °C
 */
export function saturationOverWaterPa(temperatureC: number): number {
  if (!within(temperatureC, waterValidC)) return Number.NaN
  const kelvin = temperatureC + zeroCelsiusK
  return Math.exp(temperatureC >= 0 ? hylandWexlerWater(kelvin) : sonntagSupercooled(kelvin) + joinAtZero)
}

/**
 * Pressure of the vapour over ice at rest with it [Pa].
 * @param temperatureC [°C] temperature of ice and vapour
 * @source Hyland & Wexler 1983 as ASHRAE Fundamentals 2017, chapter 1, equation 5
 * @valid -100 to 0.01 °C, the triple point; NaN outside
 * @agrees 0.03 % with ASHRAE's printed table from -20 °C up, 0.033 % with IAPWS R14-08 over the whole range
 * @differs printed for up to 0 °C; taken to the triple point, where it meets the equation over water
 */
export function saturationOverIcePa(temperatureC: number): number {
  return within(temperatureC, iceValidC) ? Math.exp(hylandWexlerIce(temperatureC + zeroCelsiusK)) : Number.NaN
}

/**
 * Vapour pressure that counts as 100 % of relative humidity [Pa].
 * @param temperatureC [°C] temperature of the air
 * @param convention [water | ice-below-zero] what counts below the triple point
 * @source Hyland & Wexler 1983 and Sonntag 1990, see saturationOverWaterPa and saturationOverIcePa
 * @valid -100 to 200 °C; NaN outside
 * @agrees 0.0000001 % with psychrolib 1.1.1 over the whole range, where ice counts below zero
 * @differs ASHRAE changes over at 0 °C, where its equations miss each other by 0.01 %; here, as in psychrolib, at the
 *   triple point, where they meet
 */
export function saturationVapourPressurePa(temperatureC: number, convention: Convention): number {
  return convention === 'ice-below-zero' && temperatureC <= triplePointC
    ? saturationOverIcePa(temperatureC)
    : saturationOverWaterPa(temperatureC)
}
