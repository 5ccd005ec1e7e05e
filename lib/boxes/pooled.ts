import type { ClosedBox, Surroundings } from './box.ts'
import type { LeakPrior } from './leak-prior.ts'
import type { LeakEstimate } from './learn.ts'

export interface LearntBox {
  readonly box: ClosedBox
  readonly surroundings: Surroundings
  readonly estimate: LeakEstimate
}

/**
 * What boxes of one model say of each other: for every box given the prior that the others make for it, by the box's
 * name. A box without any reading stands among them with an estimate from no sightings.
 */
export function poolLeaks(_boxes: readonly LearntBox[], _trade: LeakPrior): ReadonlyMap<string, LeakPrior> {
  throw new Error('to follow')
}
