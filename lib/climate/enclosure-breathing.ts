import { zeroCelsiusK } from './saturation.ts'

/**
 * Air changes a day that a box breathes as it warms and cools, however tight its lid [1/d].
 * @param dailySwingC [°C] from the coolest to the warmest of a day
 * @param temperatureC [°C] mean
 * @source law of gases at constant pressure
 * @valid a box that gives way to pressure, once up and down a day
 * @agrees 2 % with the exact ratio of the two volumes
 */
export function breathedByWarmthPerDay(dailySwingC: number, temperatureC: number): number {
  return dailySwingC / (temperatureC + zeroCelsiusK)
}

/**
 * Share of a box's air that a change of the barometer moves [ratio].
 * @param changeHPa [hPa] how far the pressure goes
 * @param pressureHPa [hPa] where it starts
 * @source law of gases at constant temperature
 * @valid a box that gives way to pressure
 * @agrees 2 % with the exact ratio of the two volumes
 */
export function breathedByPressure(changeHPa: number, pressureHPa: number): number {
  return changeHPa / pressureHPa
}
