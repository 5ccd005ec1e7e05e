import {
  saturationOverIcePa,
  saturationOverWaterPa,
  saturationVapourPressurePa,
  triplePointC,
  type Convention,
} from './saturation.ts'

/** What gathers on a surface: nothing, dew, or below freezing frost. */
export type Deposit = 'none' | 'dew' | 'frost'

/** On a frozen surface ice is at rest with less vapour than water is, whatever a sensor counts against. */
const depositsFromPa = (surfaceC: number) =>
  surfaceC <= triplePointC ? saturationOverIcePa(surfaceC) : saturationOverWaterPa(surfaceC)

/**
 * Relative humidity of the thin air at a surface that is colder or warmer than the room [%]; above 100 it gets wet.
 * @param rhPercent [%] relative humidity of the room
 * @param airC [°C] temperature of the room
 * @param surfaceC [°C] temperature of the surface
 * @param convention [water | ice-below-zero] what the relative humidities count against below zero
 * @source the vapour pressure at the surface is that of the room; Padfield, Conservation physics
 * @valid -100 to 200 °C, a surface that neither gives nor takes water; NaN outside
 * @agrees 0.0000001 % with rhAfterVentedPercent, of which it is the other reading
 */
export function rhAtSurfacePercent(
  rhPercent: number,
  airC: number,
  surfaceC: number,
  convention: Convention,
): number {
  return (
    (rhPercent * saturationVapourPressurePa(airC, convention)) /
    saturationVapourPressurePa(surfaceC, convention)
  )
}

/**
 * What gathers on a surface in air of this vapour pressure [none | dew | frost]; null where a temperature is out of range.
 * A surface at the dew point itself counts as wet.
 * @param vapourPa [Pa] pressure of the water vapour in the room
 * @param surfaceC [°C] temperature of the surface
 * @source a surface gets wet at or below the dew point, rimes at or below the frost point; ASHRAE Fundamentals 2017, chapter 1
 * @valid surfaces of -100 to 200 °C, clean: salts on a metal take up water long before
 * @agrees exact with dewPointC and frostPointC
 */
export function depositOn(vapourPa: number, surfaceC: number): Deposit | null {
  const needed = depositsFromPa(surfaceC)
  if (Number.isNaN(needed) || Number.isNaN(vapourPa)) return null
  if (vapourPa < needed) return 'none'
  return surfaceC <= triplePointC ? 'frost' : 'dew'
}

/**
 * Highest relative humidity of the room at which the air at a surface stays below what it bears [%].
 * @param airC [°C] temperature of the room
 * @param surfaceC [°C] temperature of the surface
 * @param bearsPercent [%] what the surface bears: 100 to stay dry, less for iron with salts on it
 * @param convention [water | ice-below-zero] what the relative humidities count against below zero
 * @source rhAtSurfacePercent read backwards; on a frozen surface never above what rimes it
 * @valid -100 to 200 °C; NaN outside. Above 100 for a surface warmer than the room: no humidity wets it.
 * @agrees 0.0000001 % with rhAtSurfacePercent read backwards
 */
export function highestRoomRhPercent(
  airC: number,
  surfaceC: number,
  bearsPercent: number,
  convention: Convention,
): number {
  const bearsPa = (bearsPercent / 100) * saturationVapourPressurePa(surfaceC, convention)
  return (100 * Math.min(bearsPa, depositsFromPa(surfaceC))) / saturationVapourPressurePa(airC, convention)
}
