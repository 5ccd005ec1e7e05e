import { saturationVapourPressurePa, zeroCelsiusK, type Convention } from './saturation.ts'

/** Gas constant of water vapour [J/(kg·K)]: 8.314462618 / 0.01801528. */
const vapourGasConstant = 461.523
/** Mass of a mole of water over that of a mole of dry air. */
const molarMassRatio = 0.621945
/** Air pressure at sea level in the standard atmosphere [Pa]. */
export const standardPressurePa = 101_325

/**
 * Pressure of the water vapour in the air [Pa].
 * @param temperatureC [°C] temperature of the air
 * @param rhPercent [%] relative humidity
 * @param convention [water | ice-below-zero] what the relative humidity counts against below zero
 * @source definition of relative humidity, WMO-No. 8, annex 4.A
 * @valid -100 to 200 °C; NaN outside
 * @agrees 0.001 % with psychrolib 1.1.1
 */
export function vapourPressurePa(temperatureC: number, rhPercent: number, convention: Convention): number {
  return (rhPercent / 100) * saturationVapourPressurePa(temperatureC, convention)
}

/**
 * Relative humidity of air that holds a vapour pressure [%]; above 100 where it cannot hold it.
 * @param temperatureC [°C] temperature of the air
 * @param vapourPa [Pa] pressure of the water vapour
 * @param convention [water | ice-below-zero] what the relative humidity counts against below zero
 * @source definition of relative humidity, WMO-No. 8, annex 4.A
 * @valid -100 to 200 °C; NaN outside
 * @agrees 0.001 % with psychrolib 1.1.1
 */
export function rhPercentOf(temperatureC: number, vapourPa: number, convention: Convention): number {
  return (100 * vapourPa) / saturationVapourPressurePa(temperatureC, convention)
}

/**
 * Water in a cubic metre of air [g/m³].
 * @param temperatureC [°C] temperature of the air
 * @param vapourPa [Pa] pressure of the water vapour
 * @source ideal gas law with the molar gas constant of CODATA 2018
 * @valid -100 to 200 °C, vapour as an ideal gas
 * @agrees 0.16 % with steam tables at 20 °C, 0.23 % at 30, 0.42 % at 50: vapour is no ideal gas
 */
export function absoluteHumidityGPerM3(temperatureC: number, vapourPa: number): number {
  return (1000 * vapourPa) / (vapourGasConstant * (temperatureC + zeroCelsiusK))
}

/**
 * Water in a cubic metre of air at 100 % relative humidity [g/m³].
 * @param temperatureC [°C] temperature of the air
 * @param convention [water | ice-below-zero] what counts as 100 % below zero
 * @source saturationVapourPressurePa and the ideal gas law
 * @valid -100 to 200 °C; NaN outside
 * @agrees 0.16 % with steam tables at 20 °C, 0.23 % at 30, 0.42 % at 50: vapour is no ideal gas
 */
export function saturationAbsoluteHumidityGPerM3(temperatureC: number, convention: Convention): number {
  return absoluteHumidityGPerM3(temperatureC, saturationVapourPressurePa(temperatureC, convention))
}

/**
 * Water carried by a kilogram of dry air [g/kg]: what stays the same when air is warmed, cooled or let through a gap.
 * @param vapourPa [Pa] pressure of the water vapour
 * @param airPressurePa [Pa] pressure of the air, vapour included
 * @source ASHRAE Fundamentals 2017, chapter 1, equation 20
 * @valid vapour pressure below the air pressure; NaN otherwise
 * @agrees 0.001 % with psychrolib 1.1.1
 * @differs ASHRAE's printed table allows for air that is no ideal gas and lies up to 0.5 % higher at room temperature
 */
export function mixingRatioGPerKg(vapourPa: number, airPressurePa: number): number {
  if (!(vapourPa < airPressurePa)) return Number.NaN
  return (1000 * molarMassRatio * vapourPa) / (airPressurePa - vapourPa)
}

/**
 * Vapour pressure of air that carries so much water [Pa]: the mixing ratio read backwards.
 * @param mixingRatio [g/kg] water carried by a kilogram of dry air
 * @param airPressurePa [Pa] pressure of the air, vapour included
 * @source ASHRAE Fundamentals 2017, chapter 1, equation 20 solved for the vapour pressure
 * @valid mixing ratios from 0 up
 * @agrees 0.000001 % with mixingRatioGPerKg read backwards
 */
export function vapourPressureOfMixingRatioPa(mixingRatio: number, airPressurePa: number): number {
  return (mixingRatio * airPressurePa) / (1000 * molarMassRatio + mixingRatio)
}
