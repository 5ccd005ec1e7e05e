/**
 * Air changes a day from the decay of a tracer gas [1/d].
 * @param before [ppm] reading at the beginning
 * @param after [ppm] reading at the end
 * @param background [ppm] of the room
 * @param hours [h] between the two
 * @source decay of a tracer in a space with one constant exchange
 * @valid both readings above the background; NaN otherwise. Carbon dioxide that seeps into plastic reads as leak.
 * @agrees exact with the law of decay
 */
export function airChangesFromTracerPerDay(
  before: number,
  after: number,
  background: number,
  hours: number,
): number {
  if (!(before > background && after > background && hours > 0)) return Number.NaN
  return Math.log((before - background) / (after - background)) / (hours / 24)
}

/**
 * Time constant of a box from two looks at its humidity [d]; Infinity where it did not move.
 * @param outsideRhPercent [%] mean of the room in between
 * @param firstRhPercent [%] inside at the first look
 * @param secondRhPercent [%] inside at the second
 * @param days [d] between the two
 * @source solution of the first-order balance of water for a constant room, read for the time constant
 * @valid both looks on the same side of the room's humidity, the second nearer to it; NaN otherwise
 * @agrees exact with rhAfterDays read backwards
 */
export function timeConstantFromTwoDays(
  outsideRhPercent: number,
  firstRhPercent: number,
  secondRhPercent: number,
  days: number,
): number {
  const left = (outsideRhPercent - secondRhPercent) / (outsideRhPercent - firstRhPercent)
  if (!(left > 0 && left <= 1 && days > 0)) return Number.NaN
  return left === 1 ? Infinity : days / -Math.log(left)
}
