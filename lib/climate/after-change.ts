import { saturationAbsoluteHumidityGPerM3 } from './humidity.ts'
import { saturationVapourPressurePa, zeroCelsiusK, type Convention } from './saturation.ts'

/**
 * Relative humidity after air that can come and go has been warmed or cooled: a room, a vented box, an open bag [%].
 * Above 100 where it cannot hold its water any longer: the rest condenses.
 * @param rhPercent [%] relative humidity before
 * @param fromC [°C] temperature before
 * @param toC [°C] temperature after
 * @param convention [water | ice-below-zero] what the relative humidities count against below zero
 * @source vapour pressure stays when the air pressure does; ASHRAE Fundamentals 2017, chapter 1, equation 22
 * @valid -100 to 200 °C, no gel, wood or card near that gives or takes water; NaN outside
 * @agrees 0.0000001 % with psychrolib 1.1.1 at the same mixing ratio
 */
export function rhAfterVentedPercent(
  rhPercent: number,
  fromC: number,
  toC: number,
  convention: Convention,
): number {
  return (
    (rhPercent * saturationVapourPressurePa(fromC, convention)) / saturationVapourPressurePa(toC, convention)
  )
}

/**
 * Relative humidity after a rigid, sealed, otherwise empty box has been warmed or cooled [%]. Its water stays in its space, so
 * that the vapour pressure rises and falls with the temperature in kelvin.
 * @param rhPercent [%] relative humidity before
 * @param fromC [°C] temperature before
 * @param toC [°C] temperature after
 * @param convention [water | ice-below-zero] what the relative humidities count against below zero
 * @source ideal gas law at constant volume
 * @valid -100 to 200 °C, walls that neither give way nor take up water; NaN outside
 * @agrees 0.0000001 % with absoluteHumidityGPerM3, which must stay the same
 */
export function rhAfterSealedPercent(
  rhPercent: number,
  fromC: number,
  toC: number,
  convention: Convention,
): number {
  return (
    (rhAfterVentedPercent(rhPercent, fromC, toC, convention) * (toC + zeroCelsiusK)) / (fromC + zeroCelsiusK)
  )
}

/**
 * Relative humidity at which gel holds the same water after it has been warmed or cooled [%].
 * @param rhPercent [%] relative humidity before
 * @param fromC [°C] temperature before
 * @param toC [°C] temperature after
 * @source Dubinin & Astakhov: the adsorption potential R·T·ln(100/RH) stays when the water content does; Thu 2013 uses it
 *   for silica gel
 * @valid 0 to 100 % and the temperatures of rooms, water in small pores: dry gel below about 40 %
 * @agrees 0.1 percentage points with the D-A line of Thu 2013 for 15 % at 20 °C taken to 10 and 30 °C (14.0 and 16.0 %)
 * @differs Wang & LeVan 2009 has the drift the other way and smaller: 15.7 and 15.1 %. Both leave it within 1.1 points.
 */
export function rhOfGelPercent(rhPercent: number, fromC: number, toC: number): number {
  if (!(rhPercent >= 0 && rhPercent <= 100)) return Number.NaN
  return 100 * (rhPercent / 100) ** ((fromC + zeroCelsiusK) / (toC + zeroCelsiusK))
}

/**
 * Relative humidity after a sealed box with gel has been warmed or cooled: gel and air share the water anew [%].
 * @param rhPercent [%] relative humidity before, air and gel at rest with each other
 * @param fromC [°C] temperature before
 * @param toC [°C] temperature after
 * @param volumeL [L] air in the box
 * @param gelKg [kg] dry mass of the gel
 * @param reservoirGPerKgPercent [g/(kg·%)] water a kilogram of gel takes up for each per cent of relative humidity
 * @source water of air and gel together stays; gel as a straight line about rhOfGelPercent
 * @valid rigid tight box, time enough for the gel (hours to a day), straight line: a few per cent either side
 * @agrees exact with rhAfterSealedPercent without gel; within 0.1 points of rhOfGelPercent for 50 g of gel in 10 L
 */
export function rhAfterBufferedPercent(
  rhPercent: number,
  fromC: number,
  toC: number,
  volumeL: number,
  gelKg: number,
  reservoirGPerKgPercent: number,
): number {
  // Above freezing the conventions are one; below it a sensor reads over water, and so does this.
  const airGPerPercent = (temperatureC: number) =>
    ((volumeL / 1000) * saturationAbsoluteHumidityGPerM3(temperatureC, 'water')) / 100
  const gelGPerPercent = gelKg * reservoirGPerKgPercent
  const atRest = rhOfGelPercent(rhPercent, fromC, toC)
  return (
    (airGPerPercent(fromC) * rhPercent + gelGPerPercent * atRest) / (airGPerPercent(toC) + gelGPerPercent)
  )
}
