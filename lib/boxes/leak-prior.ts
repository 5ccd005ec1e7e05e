import type { Range } from './box.ts'

/** What the leak rate is thought to be before the box itself has said anything, and from where. */
export interface LeakPrior {
  readonly airChangesPerDay: Range
  /**
   * Written or measured for this box; what it told before its gel was renewed; learnt from others of its model, in its room
   * or elsewhere; the trade's range.
   */
  readonly from: 'written' | 'earlier-gel' | 'like-boxes' | 'like-boxes-elsewhere' | 'trade'
  readonly allowance: Allowance
}

/**
 * How far the world may stray from the leak model and sensors from the truth, so that bands hold what they promise. Each
 * number is a figure.
 */
export interface Allowance {
  /** Standard deviation of a room's day from its yearly course [%], and how long such weather lasts [d]. */
  readonly weatherRhPercent: number
  readonly weatherDays: number
  /**
   * How many boxes stray from the law of one reservoir and one temperature [share of one]; for those, by how much of itself
   * the pace grows with each ten percent of humidity gained, for gel takes up less the damper it is, and the standard
   * deviation of how much faster a warm season makes it.
   */
  readonly strayShare: number
  readonly bendPerTenPercent: Range
  readonly seasonalPace: number
  /** Standard deviation of a logger about its own offset from one reading of a week to the next [%]. */
  readonly wanderRhPercent: number
  /** Standard deviation of how far an offset moves in a year [%]. */
  readonly driftRhPercentPerYear: number
  /** Standard deviation of reading a strip, apart from the strip's own error [%]. */
  readonly stripReadingRhPercent: number
  /** What a swing may be off where nothing else is said [%, two standard deviations]. */
  readonly swingErrorRhPercent: Readonly<Record<'logger' | 'written' | 'assumed', number>>
  /** The humidity at which gel shows its spent colour [%]. */
  readonly spentRhPercent: Range
  /** How many times a year a lid stays loose unseen, and how much leakier a box is then. */
  readonly looseLidsPerYear: number
  readonly looseLidFactor: Range
  /** How much boxes of one model differ: standard deviation of the logarithm of their leaks [1]. */
  readonly likeBoxesSpread: number
  /** The same for one box from one closing of its lid to the next [1]. */
  readonly seatingSpread: number
}
