import { saturationAbsoluteHumidityGPerM3 } from './humidity.ts'
import { saturationOverWaterPa } from './saturation.ts'

/** A closed box as the leak model sees it: what holds water inside, and what lets it through. */
export interface Enclosure {
  readonly volumeL: number
  readonly gelKg: number
  /** Water the gel takes up [g per kg of dry gel and % of relative humidity]. */
  readonly reservoirGPerKgPercent: number
  /** Air of the box replaced through its gaps, times a day. */
  readonly airChangesPerDay: number
  /** Water through all its walls [g a day and kPa of vapour pressure]; left out where they let nothing through. */
  readonly wallGPerDayKPa?: number
  readonly temperatureC: number
}

/**
 * Water that air and gel of a box hold for each percent of relative humidity [g/%].
 * @param box [Enclosure] the closed box
 * @source balance of water in a closed box, with the reservoir of Thomson 1977 for the gel
 * @valid one temperature throughout; gel on the straight part of its isotherm, below about 30 %
 * @agrees exact with the definition of the reservoir
 */
export function heldGPerPercent(box: Enclosure): number {
  const airGPerPercent =
    ((box.volumeL / 1000) * saturationAbsoluteHumidityGPerM3(box.temperatureC, 'water')) / 100
  return airGPerPercent + box.gelKg * box.reservoirGPerKgPercent
}

/**
 * Water that comes into a box each day for each percent that the room is damper than its inside [g/(d·%)].
 * @param box [Enclosure] the closed box
 * @source exchange of air through gaps (Thomson 1977) and Fick's law through walls
 * @valid room and box at one temperature
 * @agrees exact with the sum of both ways
 */
export function passedGPerDayPercent(box: Enclosure): number {
  const { volumeL, airChangesPerDay, temperatureC, wallGPerDayKPa = 0 } = box
  const throughGaps =
    ((volumeL / 1000) * airChangesPerDay * saturationAbsoluteHumidityGPerM3(temperatureC, 'water')) / 100
  const throughWalls = (wallGPerDayKPa * saturationOverWaterPa(temperatureC)) / 1000 / 100
  return throughGaps + throughWalls
}

/**
 * Time constant of a box [d]: after it, about a third (1/e) of its distance from the room is left.
 * @param box [Enclosure] the closed box; one that lets nothing through has no end to it and gives Infinity
 * @source first-order balance of water, the differential equation behind Thomson 1977 and Weintraub 2002
 * @valid one temperature, gel well mixed and much faster than the leak, inside below about 30 %
 * @agrees 0.1 % with the numerical solution of the same box
 * @differs walls count beside gaps, which neither work does
 */
export function timeConstantDays(box: Enclosure): number {
  return heldGPerPercent(box) / passedGPerDayPercent(box)
}
