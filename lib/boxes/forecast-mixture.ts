import { normalShareBelow } from '../logger/normal.ts'

/** Normal laws side by side, each with the share it has of all cases: what is known of one number. */
export interface Mixture {
  readonly weights: Float64Array
  readonly means: Float64Array
  readonly deviations: Float64Array
}

/** Further out, in standard deviations, lies one case in 300,000 of a normal law: it counts as none. */
const reach = 4.5

/** Share of the cases in which the number lies below a value [one]. */
export function shareBelow({ weights, means, deviations }: Mixture, value: number): number {
  let share = 0
  for (let i = 0; i < weights.length; i += 1) {
    const off = value - means[i]!
    const deviation = deviations[i]!
    if (off >= reach * deviation) share += off === 0 ? weights[i]! / 2 : weights[i]!
    else if (off > -reach * deviation) share += weights[i]! * normalShareBelow(off / deviation)
  }
  return share
}

/** How fast that share grows there [one per unit of the number]. */
function densityAt({ weights, means, deviations }: Mixture, value: number): number {
  let density = 0
  for (let i = 0; i < weights.length; i += 1) {
    if (!(deviations[i]! > 0)) continue
    const z = (value - means[i]!) / deviations[i]!
    density += (weights[i]! * Math.exp((-z * z) / 2)) / deviations[i]!
  }
  return density / Math.sqrt(2 * Math.PI)
}

/** Nearer than this [of the unit of the number] no value is looked for. */
const near = 1e-3

/** The value below which this share of the cases lies, by tangents within ever narrower ends; `guess` only saves time. */
export function valueAtShare(mixture: Mixture, share: number, guess: number | null = null): number {
  const { means, deviations } = mixture
  let [low, high] = [Infinity, -Infinity]
  for (let i = 0; i < means.length; i += 1) {
    low = Math.min(low, means[i]! - reach * deviations[i]!)
    high = Math.max(high, means[i]! + reach * deviations[i]!)
  }
  let value = guess !== null && guess > low && guess < high ? guess : (low + high) / 2
  while (high - low > near) {
    const off = shareBelow(mixture, value) - share
    if (off < 0) low = value
    else high = value
    const step = off / densityAt(mixture, value)
    const next = value - step
    if (Math.abs(step) < near && next > low - near && next < high + near) return next
    value = next > low && next < high ? next : (low + high) / 2
  }
  return (low + high) / 2
}

/** A number in its quantiles: one in ten below, half, nine in ten. */
export function quantilesOf(mixture: Mixture): {
  readonly p10: number
  readonly p50: number
  readonly p90: number
} {
  const p50 = valueAtShare(mixture, 0.5)
  return { p10: valueAtShare(mixture, 0.1, p50), p50, p90: valueAtShare(mixture, 0.9, p50) }
}
