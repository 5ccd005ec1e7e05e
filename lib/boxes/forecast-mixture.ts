import { normalShareBelow } from '../logger/normal.ts'

/** Normal laws side by side, each with the share it has of all cases: what is known of one number. */
export interface Mixture {
  readonly weights: Float64Array
  readonly means: Float64Array
  readonly deviations: Float64Array
}

/** Share of the cases in which the number lies below a value [one]. */
export function shareBelow({ weights, means, deviations }: Mixture, value: number): number {
  let share = 0
  for (let i = 0; i < weights.length; i += 1) {
    const off = value - means[i]!
    share +=
      weights[i]! *
      (deviations[i]! > 0 ? normalShareBelow(off / deviations[i]!) : off > 0 ? 1 : off < 0 ? 0 : 0.5)
  }
  return share
}

/** Nearer than this [of the unit of the number] no value is looked for. */
const near = 1e-3
/** No normal law matters further out, in its standard deviations. */
const reach = 6

/** The value below which this share of the cases lies; `guess` only saves time. */
export function valueAtShare(mixture: Mixture, share: number, guess: number | null = null): number {
  let [low, high] = bracket(mixture, share, guess)
  while (high - low > near) {
    const middle = (low + high) / 2
    if (shareBelow(mixture, middle) < share) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function bracket(mixture: Mixture, share: number, guess: number | null): [number, number] {
  const { means, deviations } = mixture
  let [low, high] = [Infinity, -Infinity]
  for (let i = 0; i < means.length; i += 1) {
    low = Math.min(low, means[i]! - reach * deviations[i]!)
    high = Math.max(high, means[i]! + reach * deviations[i]!)
  }
  if (guess === null || guess <= low || guess >= high) return [low, high]
  for (let step = 0.25; step < high - low; step *= 4) {
    const [left, right] = [Math.max(low, guess - step), Math.min(high, guess + step)]
    if (shareBelow(mixture, left) <= share && shareBelow(mixture, right) >= share) return [left, right]
  }
  return [low, high]
}

/** A number in its Quantiles: one in ten below, half, nine in ten. */
export const quantilesOf = (mixture: Mixture) => {
  const p50 = valueAtShare(mixture, 0.5)
  return { p10: valueAtShare(mixture, 0.1, p50), p50, p90: valueAtShare(mixture, 0.9, p50) }
}
