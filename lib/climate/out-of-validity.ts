/** A formula was asked beyond what its source vouches for: what, how much, and where it holds. */
export interface OutOfValidity {
  /** Named as the argument is: `temperatureC`, `so2MgPerM2Day`. */
  readonly quantity: string
  readonly value: number
  readonly from: number
  readonly to: number
  /** The work that sets the range, as the knowledge names works. */
  readonly source: string
}

/**
 * The quantities that lie outside their range [unit of each]; empty where all hold. A quantity that is no number lies outside.
 * @param asked [unit of each] quantity, value, range and the work that sets it
 * @source a comparison of ours; the ranges bring their own source
 * @valid any
 * @agrees exact
 */
export function outside(asked: readonly OutOfValidity[]): readonly OutOfValidity[] {
  return asked.filter(({ value, from, to }) => !(value >= from && value <= to))
}
