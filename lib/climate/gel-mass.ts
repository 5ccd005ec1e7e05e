import { heldGPerPercent, passedGPerDayPercent, timeConstantDays, type Enclosure } from './enclosure.ts'
import { seasonalDaysToLimit, type Season } from './seasonal.ts'

/** Enough for any case or store; a box that asks for more than this is asked to be tighter instead. */
const mostKg = 1e6

/**
 * Dry gel that keeps a box at or below its limit for a span, in a room that stays as it is [kg]; 0 where the box needs
 * none, null where no amount does.
 * @param box [Enclosure] the closed box; whatever gel it has is left out of account
 * @param outsideRhPercent [%] relative humidity of the room
 * @param startRhPercent [%] inside, at the beginning
 * @param limitRhPercent [%] the highest its contents bear
 * @param days [d] how long it is to hold
 * @source time to the limit in a constant room, solved for the mass of gel
 * @valid as timeConstantDays; limits below about 30 %
 * @agrees 1 % with the quantity equation for small changes, 0.1 % with the numerical solution
 */
export function gelKgForSpan(
  box: Enclosure,
  outsideRhPercent: number,
  startRhPercent: number,
  limitRhPercent: number,
  days: number,
): number | null {
  if (startRhPercent >= limitRhPercent) return null
  if (outsideRhPercent <= limitRhPercent) return 0
  const lasting = Math.log((outsideRhPercent - startRhPercent) / (outsideRhPercent - limitRhPercent))
  const toHold = (passedGPerDayPercent(box) * days) / lasting
  const airHolds = heldGPerPercent({ ...box, gelKg: 0 })
  return Math.max(0, (toHold - airHolds) / box.reservoirGPerKgPercent)
}

/**
 * Dry gel that keeps a box at or below its limit for a span, in a room that follows the seasons [kg]; 0 where the box
 * needs none, null where no amount does.
 * @param box [Enclosure] the closed box; whatever gel it has is left out of account
 * @param season [Season] of the room
 * @param startRhPercent [%] inside, at the beginning
 * @param startDay [d] the day of the beginning, counted as the season counts
 * @param limitRhPercent [%] the highest its contents bear
 * @param days [d] how long it is to hold
 * @source time to the limit in a seasonal room, halved in on for the mass of gel
 * @valid as timeConstantDays; limits below about 30 %
 * @agrees 0.1 % with the numerical solution
 */
export function seasonalGelKgForSpan(
  box: Enclosure,
  season: Season,
  startRhPercent: number,
  startDay: number,
  limitRhPercent: number,
  days: number,
): number | null {
  if (startRhPercent >= limitRhPercent) return null
  const holds = (gelKg: number): boolean => {
    const tau = timeConstantDays({ ...box, gelKg })
    return (seasonalDaysToLimit(tau, season, startRhPercent, startDay, limitRhPercent) ?? Infinity) >= days
  }
  if (holds(0)) return 0
  let [toLittle, enough] = [0, box.volumeL / 1000]
  while (!holds(enough)) {
    if (enough > mostKg) return null
    ;[toLittle, enough] = [enough, enough * 4]
  }
  while (enough - toLittle > 1e-7 * enough) {
    const middle = (toLittle + enough) / 2
    if (holds(middle)) enough = middle
    else toLittle = middle
  }
  return enough
}

/**
 * Dry gel for a case by the quantity equation of the trade [kg].
 * @param saturationGPerM3 [g/m³] water in air at 100 %, at the temperature of the case
 * @param differenceRhPercent [%] how much damper the room is than the middle of what is allowed inside
 * @param volumeM3 [m³] of the case
 * @param airChangesPerDay [1/d] air replaced through gaps
 * @param days [d] how long it is to hold
 * @param reservoirGPerKgPercent [g/(kg·%)] of the gel, with what hysteresis takes from it taken off
 * @param allowedRhPercent [%] by how much the inside may rise altogether
 * @source Weintraub 2002 and CCI Technical Bulletin 33, form of the equation from memory
 * @valid rises that are small beside the difference to the room
 * @agrees 1 % with gelKgForSpan at a difference of 45 % and a rise of 10 %
 * @differs the air of the case is left out, as the trade does
 */
export function gelKgByQuantityEquation(
  saturationGPerM3: number,
  differenceRhPercent: number,
  volumeM3: number,
  airChangesPerDay: number,
  days: number,
  reservoirGPerKgPercent: number,
  allowedRhPercent: number,
): number {
  const throughGapsG = saturationGPerM3 * (differenceRhPercent / 100) * volumeM3 * airChangesPerDay * days
  return throughGapsG / (reservoirGPerKgPercent * allowedRhPercent)
}
