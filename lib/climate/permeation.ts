import { saturationAbsoluteHumidityGPerM3 } from './humidity.ts'
import { saturationOverWaterPa } from './saturation.ts'

/**
 * Permeance of a film [g/(m²·d·kPa)] from the water vapour transmission rate its maker prints.
 * @param transmissionGPerM2Day [g/(m²·d)] as printed
 * @param testTemperatureC [°C] of the test, mostly 38
 * @param testRhPercent [%] on the damp side, mostly 90; the other side is dry
 * @source definition of permeance
 * @valid at the temperature of the test; cooler film lets less through, so that it is an upper bound in a store
 * @agrees exact with the definition
 */
export function permeanceGPerM2DayKPa(
  transmissionGPerM2Day: number,
  testTemperatureC: number,
  testRhPercent: number,
): number {
  return transmissionGPerM2Day / ((testRhPercent / 100) * (saturationOverWaterPa(testTemperatureC) / 1000))
}

/**
 * Permeance of the same stuff at another thickness [g/(m²·d·kPa)].
 * @param permeance [g/(m²·d·kPa)] at the known thickness
 * @param knownMicrometre [µm] thickness it was measured at
 * @param wantedMicrometre [µm] thickness of the wall
 * @source Fick's law: inversely as the thickness
 * @valid plain plastics of one layer; not for metallised or laminated film, whose barrier is a skin
 * @agrees exact with the law
 */
export function permeanceAtThickness(
  permeance: number,
  knownMicrometre: number,
  wantedMicrometre: number,
): number {
  return (permeance * knownMicrometre) / wantedMicrometre
}

/**
 * Air changes a day that would let in as much water as a wall does [1/d].
 * @param wallGPerDayKPa [g/(d·kPa)] permeance of the wall times its area
 * @param volumeL [L] of the box
 * @param temperatureC [°C] of box and room
 * @source both ways written for the same step of relative humidity
 * @valid one temperature
 * @agrees exact with timeConstantDays of the same wall
 */
export function wallAsAirChangesPerDay(
  wallGPerDayKPa: number,
  volumeL: number,
  temperatureC: number,
): number {
  const throughWallG = (wallGPerDayKPa * saturationOverWaterPa(temperatureC)) / 1000
  return throughWallG / ((volumeL / 1000) * saturationAbsoluteHumidityGPerM3(temperatureC, 'water'))
}
