import type { MethodMinutes } from '../knowledge/knowledge.ts'

/**
 * Hours at an instrument, as finds that can be taken: it is set up once for all of them, and each then takes its time. Bench
 * figures are round, so what misses a whole find by less than a second counts as whole.
 */
const nearlyAMinute = 1 / 60

/** How many objects the hours are enough for. */
export function slotsIn(hours: number, { setUp, each }: MethodMinutes): number {
  const left = hours * 60 - setUp + nearlyAMinute
  return left < each ? 0 : Math.floor(left / each)
}

/** Hours [h] that so many objects take; none where there are none. */
export const hoursFor = (slots: number, { setUp, each }: MethodMinutes): number =>
  slots === 0 ? 0 : (setUp + slots * each) / 60
