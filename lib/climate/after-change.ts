import { saturationAbsoluteHumidityGPerM3 } from './humidity.ts'
import { samePotentialRhPercent } from './isotherm-equations.ts'
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
 * Relative humidity after a sealed box with gel has been warmed or cooled: gel and air share the water anew [%].
 * @param rhPercent [%] relative humidity before, air and gel at rest with each other
 * @param fromC [°C] temperature before
 * @param toC [°C] temperature after
 * @param volumeL [L] air in the box
 * @param gelKg [kg] dry mass of the gel
 * @param reservoirGPerKgPercent [g/(kg·%)] water a kilogram of gel takes up for each per cent of relative humidity
 * @source water of air and gel together stays; gel as a straight line about samePotentialRhPercent
 * @valid rigid tight box of 5 to 40 °C, time enough for the gel (hours to a day), a few per cent either side; NaN outside
 * @agrees exact with rhAfterSealedPercent without gel; within 0.1 points of samePotentialRhPercent for 50 g of gel in 10 L
 * @differs by potential theory gel of 15 % at 20 °C stands at 14.0 % at 10 °C and 16.0 at 30; the line of Wang & LeVan 2009
 *   drifts the other way and less, 15.7 and 15.1. Both keep within 1.1 points.
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
  const atRest = samePotentialRhPercent(rhPercent, fromC, toC)
  return (
    (airGPerPercent(fromC) * rhPercent + gelGPerPercent * atRest) / (airGPerPercent(toC) + gelGPerPercent)
  )
}
