import { saturationAbsoluteHumidityGPerM3 } from './humidity.ts'

/**
 * Hygrometric half-time of a case: days in which half its distance from the room is gone [d].
 * @param reservoirGPerKgPercent [g/(kg·%)] of the gel
 * @param gelKgPerM3 [kg/m³] gel for each cubic metre of the case
 * @param airChangesPerDay [1/d] air replaced through gaps
 * @param temperatureC [°C] of case and room
 * @source Thomson 1977, with the air of the case counted
 * @valid gel on the straight part of its isotherm; one temperature
 * @agrees 0.7 % with the rule of four at 20 °C and 20 kg/m³
 */
export function halfTimeDays(
  reservoirGPerKgPercent: number,
  gelKgPerM3: number,
  airChangesPerDay: number,
  temperatureC: number,
): number {
  const airGPerPercent = saturationAbsoluteHumidityGPerM3(temperatureC, 'water') / 100
  return (
    (Math.LN2 * (airGPerPercent + reservoirGPerKgPercent * gelKgPerM3)) / (airChangesPerDay * airGPerPercent)
  )
}

/**
 * Hygrometric half-time by the rule of four [d].
 * @param reservoirGPerKgPercent [g/(kg·%)] of the gel
 * @param gelKgPerM3 [kg/m³] gel for each cubic metre of the case
 * @param airChangesPerDay [1/d] air replaced through gaps
 * @source Thomson 1977: 4·M·B/N
 * @valid about 20 °C, gel in plenty: the air of the case is left out
 * @agrees 0.7 % with halfTimeDays at 20 °C and 20 kg/m³; 12 % too long at 22 °C
 */
export function halfTimeByRuleDays(
  reservoirGPerKgPercent: number,
  gelKgPerM3: number,
  airChangesPerDay: number,
): number {
  return (4 * reservoirGPerKgPercent * gelKgPerM3) / airChangesPerDay
}
