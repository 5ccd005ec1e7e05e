/** A quantity that is known only so well: it lies between low and high in eight cases of ten. */
export interface Range {
  readonly low: number
  readonly nominal: number
  readonly high: number
}

/** One in ten lies below p10, half below p50, one in ten above p90. */
export interface Quantiles {
  readonly p10: number
  readonly p50: number
  readonly p90: number
}
