/** The yearly course of relative humidity: mean + swing · cos(2π (day − highestOnDay)/365.25). */
export interface Season {
  readonly meanRhPercent: number
  readonly swingRhPercent: number
  /** Any day of highest humidity, counted like the days the functions are asked for. */
  readonly highestOnDay: number
}

export const yearDays = 365.25
const perDay = (2 * Math.PI) / yearDays

/**
 * Relative humidity of the room on a day [%].
 * @param season [Season] its yearly course
 * @param day [d] counted as the season counts
 * @source one harmonic a year
 * @valid a room whose humidity follows the seasons
 * @agrees exact, by definition
 */
export function outsideRhPercent(season: Season, day: number): number {
  return season.meanRhPercent + season.swingRhPercent * Math.cos(perDay * (day - season.highestOnDay))
}

/**
 * Share of the room's yearly swing that gets into a box [ratio].
 * @param timeConstantDays [d] of the box
 * @source first-order response to one harmonic
 * @valid as timeConstantDays
 * @agrees 0.1 % with the numerical solution
 */
export function seasonalGain(timeConstantDays: number): number {
  return 1 / Math.hypot(1, perDay * timeConstantDays)
}

/**
 * How long after the room the box is at its dampest [d].
 * @param timeConstantDays [d] of the box
 * @source first-order response to one harmonic
 * @valid as timeConstantDays
 * @agrees 0.1 % with the numerical solution
 */
export function seasonalLagDays(timeConstantDays: number): number {
  return Math.atan(perDay * timeConstantDays) / perDay
}

/** What the inside comes to in the end, and what is left of the beginning: both as the box stood on `startDay`. */
function response(timeConstantDays: number, season: Season, startRhPercent: number, startDay: number) {
  const swing = season.swingRhPercent * seasonalGain(timeConstantDays)
  const highestOn = season.highestOnDay + seasonalLagDays(timeConstantDays)
  const settled = (days: number) =>
    season.meanRhPercent + swing * Math.cos(perDay * (startDay + days - highestOn))
  return { swing, highestOn, settled, fading: startRhPercent - settled(0) }
}

/**
 * Relative humidity in a box after some days in a room that follows the seasons [%].
 * @param timeConstantDays [d] of the box; Infinity for one that lets nothing through
 * @param season [Season] of the room
 * @param startRhPercent [%] inside, at the beginning
 * @param startDay [d] the day of the beginning, counted as the season counts
 * @param days [d] since then
 * @source solution of the first-order balance of water for one harmonic
 * @valid as timeConstantDays
 * @agrees 0.1 % with the numerical solution
 */
export function seasonalRhAfterDays(
  timeConstantDays: number,
  season: Season,
  startRhPercent: number,
  startDay: number,
  days: number,
): number {
  if (timeConstantDays === Infinity) return startRhPercent
  const { settled, fading } = response(timeConstantDays, season, startRhPercent, startDay)
  return settled(days) + fading * Math.exp(-days / timeConstantDays)
}

/** Closer than any sensor reads by far, so that the last step is not taken for ever. */
const closePercent = 1e-9

/**
 * Days until the inside of a box first reaches its limit in a room that follows the seasons [d]; 0 where it is there already,
 * null where it never gets there.
 * @param timeConstantDays [d] of the box
 * @param season [Season] of the room
 * @param startRhPercent [%] inside, at the beginning
 * @param startDay [d] the day of the beginning, counted as the season counts
 * @param limitRhPercent [%] the highest its contents bear
 * @source the same solution, stepped towards the limit no further than its greatest curvature allows, so that no crossing
 *   is stepped over
 * @valid as timeConstantDays; limits below about 30 %
 * @agrees 0.1 % with the numerical solution
 */
export function seasonalDaysToLimit(
  timeConstantDays: number,
  season: Season,
  startRhPercent: number,
  startDay: number,
  limitRhPercent: number,
): number | null {
  if (startRhPercent >= limitRhPercent) return 0
  if (timeConstantDays === Infinity) return null
  const { swing, highestOn, fading } = response(timeConstantDays, season, startRhPercent, startDay)
  const size = Math.abs(swing)
  const reach = season.meanRhPercent + size - limitRhPercent
  // What is left of a dry beginning keeps the box below the settled course, which must reach higher than the limit.
  if (reach <= 0 && fading <= 0) return null
  // Before the highest the box could be has come up to the limit there is nothing to look for.
  let days = fading < 0 ? Math.max(0, timeConstantDays * Math.log(-fading / reach)) : 0
  for (;;) {
    const left = fading * Math.exp(-days / timeConstantDays)
    if (reach + left <= 0 && left >= 0) return null
    const angle = perDay * (startDay + days - highestOn)
    const gap = limitRhPercent - season.meanRhPercent - swing * Math.cos(angle) - left
    if (!(gap > closePercent)) return Number.isNaN(gap) ? gap : days
    const slope = -swing * perDay * Math.sin(angle) - left / timeConstantDays
    const curvature = size * perDay ** 2 + Math.abs(left) / timeConstantDays ** 2
    // The step at which gap = slope·step + curvature/2·step², in the form that loses no digits.
    const root = Math.sqrt(slope ** 2 + 2 * curvature * gap)
    days += slope > 0 ? (2 * gap) / (slope + root) : (root - slope) / curvature
  }
}
