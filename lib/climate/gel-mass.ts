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
 * @source time to the limit in a seasonal room, solved for the mass of gel by false position
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
  /** How much longer than asked so much gel lasts [d]. */
  const spare = (gelKg: number): number => {
    const tau = timeConstantDays({ ...box, gelKg })
    return (seasonalDaysToLimit(tau, season, startRhPercent, startDay, limitRhPercent) ?? Infinity) - days
  }
  if (spare(0) >= 0) return 0
  const { meanRhPercent, swingRhPercent } = season
  const dampest = Math.min(100, meanRhPercent + Math.abs(swingRhPercent))
  let enough = gelKgForSpan(box, dampest, startRhPercent, limitRhPercent, days) ?? mostKg
  while (spare(enough) < 0) {
    if (enough > mostKg) return null
    enough = Math.max(1e-3, enough * 4)
  }
  return rootBetween(spare, 0, enough)
}

/** A tenth of a second. */
const closeDays = 1e-6

/** Where a rising function comes up to zero: false position, an end that stays put counted half (Illinois), then halving. */
function rootBetween(f: (x: number) => number, low: number, high: number): number {
  let [atLow, atHigh, moved] = [f(low), f(high), 'neither']
  for (let turn = 0; high - low > 1e-7 * high; turn += 1) {
    const chord = high - (atHigh * (high - low)) / (atHigh - atLow)
    // A chord to "never" says nothing, and where days leap from one season to the next it creeps.
    const x = chord > low && chord < high && turn < 12 ? chord : (low + high) / 2
    const at = f(x)
    if (Math.abs(at) < closeDays) return x
    if (at > 0) {
      if (moved === 'high') atLow /= 2
      ;[high, atHigh, moved] = [x, at, 'high']
    } else {
      if (moved === 'low') atHigh /= 2
      ;[low, atLow, moved] = [x, at, 'low']
    }
  }
  return high
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
