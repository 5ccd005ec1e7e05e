/** What is known at one pace of the box: how likely that pace is, and the unknowns that go with it, as a normal law. */
export interface RateState {
  /** Share of the way to the room's level that is left behind in a day [1/d]. */
  readonly ratePerDay: number
  readonly weight: number
  readonly mean: Float64Array
  /** Row by row. */
  readonly covariance: Float64Array
}
