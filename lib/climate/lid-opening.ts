import { heldGPerPercent, type Enclosure } from './enclosure.ts'

/**
 * How much a box rises when its lid is opened and all its air is replaced by the room's [%].
 * @param box [Enclosure] the closed box
 * @param outsideRhPercent [%] relative humidity of the room
 * @param insideRhPercent [%] of the box before
 * @source balance of water: the new air shares its water with the gel once the lid is shut
 * @valid lid open for minutes, gel covered; what gel takes up while it stands open is not in it
 * @agrees exact with the balance
 */
export function riseOnOpeningPercent(
  box: Enclosure,
  outsideRhPercent: number,
  insideRhPercent: number,
): number {
  const air = heldGPerPercent({ ...box, gelKg: 0 })
  return (air * (outsideRhPercent - insideRhPercent)) / heldGPerPercent(box)
}

/**
 * Air changes a day that openings of the lid come to [1/d].
 * @param openingsPerYear [1/a] how often the lid is opened
 * @source each opening replaces the air of the box once
 * @valid openings spread over the year, each of minutes
 * @agrees exact with the count
 */
export function openingsAsAirChangesPerDay(openingsPerYear: number): number {
  return openingsPerYear / 365.25
}
