import { saturationOverWaterPa } from '../../lib/climate/saturation.ts'

/** A gel that is no straight line: what it holds and, read backwards, the humidity over it. */
export interface RealGel {
  readonly holdsGPerKg: (rhPercent: number, temperatureC: number) => number
  readonly rhPercent: (waterGPerKg: number, temperatureC: number) => number
}

const gasConstant = 8.314462618
const kelvin = (temperatureC: number) => temperatureC + 273.15

/** Dubinin and Astakhov's equation, of Thu 2013. */
export const potentialGel: RealGel = {
  holdsGPerKg: (rh, temperatureC) =>
    326.019 * Math.exp(-(((gasConstant * kelvin(temperatureC) * Math.log(100 / rh)) / 4384) ** 1.35)),
  rhPercent: (water, temperatureC) =>
    100 *
    Math.exp((-4384 * (-Math.log(water / 326.019)) ** (1 / 1.35)) / (gasConstant * kelvin(temperatureC))),
}

const toth = (temperatureC: number) => ({
  affinity: 2.787e-8 * Math.exp(1093 / kelvin(temperatureC)),
  exponent: -0.00119 + 22.13 / kelvin(temperatureC),
})
const tothMost = 1000 * 1.14219590097e5

/** Tóth's equation, of Wang and LeVan 2009. */
export const tothGel: RealGel = {
  holdsGPerKg: (rh, temperatureC) => {
    const { affinity, exponent } = toth(temperatureC)
    const x = (affinity * rh * saturationOverWaterPa(temperatureC)) / 100
    return tothMost * Math.exp(Math.log(x) - Math.log1p(x ** exponent) / exponent)
  },
  rhPercent: (water, temperatureC) => {
    const { affinity, exponent } = toth(temperatureC)
    const share = (water / tothMost) ** exponent
    const x = Math.exp((Math.log(share) - Math.log1p(-share)) / exponent)
    return (100 * x) / affinity / saturationOverWaterPa(temperatureC)
  },
}
