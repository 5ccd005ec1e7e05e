import type { ClosedBox, Day, Quantiles, Range, Sighting, Surroundings } from './box.ts'
import type { LeakPrior } from './leak-prior.ts'
import type { RateState } from './learn-state.ts'

/** Why a box's own readings say little of its leak. */
export type SaysLittle =
  | 'no-sightings'
  /** Every reading lies below what the logger can report. */
  | 'below-range'
  /** The time between first and last sighting is too short for the box to have moved. */
  | 'too-short'
  /** It moved less than sensor and strip may be wrong. */
  | 'error-exceeds-change'
  /** It stands at the level of its room: any leaky box would. */
  | 'at-room-level'

/** Signs that the box does not follow the leak model, so that bands are to be read with care. */
export type Misfit =
  /** The readings stray from the best line of the model by more than sensor and weather explain. */
  | 'strays'
  /** It needs a leak that lies far outside what was thought possible. */
  | 'leak-out-of-range'
  /** It needs a gel whose reservoir changes with humidity more than was allowed for. */
  | 'gel-bends'

export interface LeakEstimate {
  readonly airChangesPerDay: Range
  /** What was thought before its own sightings were looked at. */
  readonly before: Range
  readonly from: LeakPrior['from']
  /** How much narrower the leak is known than before: 0 nothing learnt, towards 1 all [1]. */
  readonly learnt: number
  readonly saysLittle: boolean
  readonly littleBecause: SaysLittle | null
  readonly modelMayNotHold: Misfit | null
  readonly sightings: { readonly logger: number; readonly rounds: number; readonly beforeStart: number }
  /** The day of the last sighting, or of the start. */
  readonly asOf: Day
  /** What the box held that day, the sensor's error allowed for [%]. */
  readonly rhPercent: Quantiles
  /** What each logger is thought to read too high [%]. */
  readonly offsets: readonly { readonly serial: string; readonly rhPercent: Range }[]
  readonly allowance: LeakPrior['allowance']
  /** One for each pace the box may have: the stuff of forecasts. */
  readonly states: readonly RateState[]
}

/**
 * The leak of a box from what was seen in it since its gel was renewed. Sightings may come in any order; those before the
 * start are left out and counted.
 */
export function learnLeak(
  _box: ClosedBox,
  _surroundings: Surroundings,
  _sightings: readonly Sighting[],
  _prior: LeakPrior,
): LeakEstimate {
  throw new Error('to follow')
}
