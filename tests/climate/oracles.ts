import psychrolib from 'psychrolib'

/**
 * Equations by other hands that ours are held against. They live here and not in lib, so that no answer comes out of them.
 */
psychrolib.SetUnitSystem(psychrolib.SI)
export const ashrae = psychrolib

const sum = (terms: readonly number[]) => terms.reduce((all, term) => all + term, 0)

/** Wagner & Pruß 2002, auxiliary equation of IAPWS-95: saturation over water, 273.16 to 647 K [Pa]. */
export function wagnerPrussPa(kelvin: number): number {
  const a = [-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502]
  const b = [1, 1.5, 3, 3.5, 4, 7.5]
  const theta = 1 - kelvin / 647.096
  return 22_064_000 * Math.exp((647.096 / kelvin) * sum(a.map((factor, i) => factor * theta ** b[i]!)))
}

/** IAPWS R14-08: sublimation pressure of ice, 50 to 273.16 K [Pa]. */
export function sublimationPa(kelvin: number): number {
  const a = [-21.2144006, 27.3203819, -6.1059813]
  const b = [0.00333333333, 1.20666667, 1.70333333]
  const theta = kelvin / 273.16
  return 611.657 * Math.exp(sum(a.map((factor, i) => factor * theta ** b[i]!)) / theta)
}

/** IAPWS-IF97, region 4: saturation of water and steam, 273.15 to 647.096 K [Pa]. */
export function steamPa(kelvin: number): number {
  const n = [
    1167.0521452767, -724213.16703206, -17.073846940092, 12020.82470247, -3232555.0322333, 14.91510861353,
    -4823.2657361591, 405113.40542057, -0.23855557567849, 650.17534844798,
  ] as const
  const theta = kelvin + n[8] / (kelvin - n[9])
  const a = theta ** 2 + n[0] * theta + n[1]
  const b = n[2] * theta ** 2 + n[3] * theta + n[4]
  const c = n[5] * theta ** 2 + n[6] * theta + n[7]
  return 1e6 * ((2 * c) / (-b + Math.sqrt(b ** 2 - 4 * a * c))) ** 4
}

/** Murphy & Koop 2005, equation 10 (from memory): supercooled and liquid water, 123 to 332 K [Pa]. */
export function murphyKoopPa(kelvin: number): number {
  const log = Math.log(kelvin)
  return Math.exp(
    54.842763 -
      6763.22 / kelvin -
      4.21 * log +
      0.000367 * kelvin +
      Math.tanh(0.0415 * (kelvin - 218.8)) * (53.878 - 1331.22 / kelvin - 9.44523 * log + 0.014025 * kelvin),
  )
}

/** WMO-No. 8 (from memory): Magnus over water, -45 to 60 °C, and over ice, -65 to 0 °C [Pa]. */
export const magnusWaterPa = (celsius: number) => 611.2 * Math.exp((17.62 * celsius) / (243.12 + celsius))
export const magnusIcePa = (celsius: number) => 611.2 * Math.exp((22.46 * celsius) / (272.62 + celsius))

/** Temperatures from one to another, both included. */
export function steps(from: number, to: number, by: number): readonly number[] {
  return Array.from({ length: Math.round((to - from) / by) + 1 }, (_, at) => Math.min(to, from + at * by))
}

/** The largest relative difference of two functions over the temperatures given. */
export function worstShare(
  at: readonly number[],
  ours: (celsius: number) => number,
  theirs: (celsius: number) => number,
): number {
  return at.reduce((worst, celsius) => {
    const share = Math.abs(ours(celsius) / theirs(celsius) - 1)
    return Number.isNaN(share) ? Number.POSITIVE_INFINITY : Math.max(worst, share)
  }, 0)
}
