import { normalShareBelow } from '../logger/normal.ts'
import { unknowns, type Law } from './learn-state.ts'

/** A reading sees the inside plus, where it has one, the offset of what read it; `null` sees the inside itself. */
export type Offset = number | null

const rootTwoPi = Math.sqrt(2 * Math.PI)
const density = (z: number) => Math.exp((-z * z) / 2) / rootTwoPi

function seen({ size, mean, covariance }: Law, offset: Offset) {
  const gain = new Float64Array(size)
  for (let i = 0; i < size; i += 1)
    gain[i] = covariance[i * size + unknowns.inside]! + (offset === null ? 0 : covariance[i * size + offset]!)
  const value = mean[unknowns.inside]! + (offset === null ? 0 : mean[offset]!)
  const variance = gain[unknowns.inside]! + (offset === null ? 0 : gain[offset]!)
  return { gain, value, variance }
}

/** Moves the law so that what was seen has this shift of its mean and this much less variance, both for one of its own. */
function draw({ size, mean, covariance }: Law, gain: Float64Array, shift: number, less: number): void {
  for (let i = 0; i < size; i += 1) {
    mean[i]! += gain[i]! * shift
    for (let j = 0; j < size; j += 1) covariance[i * size + j]! -= gain[i]! * gain[j]! * less
  }
}

/** How likely a sighting was, as a logarithm, and, of a reading, how far it lay off: squared, in parts of its variance. */
export interface Told {
  readonly log: number
  readonly strayed: number
}

export const nothingTold: Told = { log: 0, strayed: 0 }

/** Learns from a reading with a variance of its own. */
export function observe(law: Law, offset: Offset, rhPercent: number, variance: number): Told {
  const { gain, value, variance: expected } = seen(law, offset)
  const total = expected + variance
  const off = rhPercent - value
  draw(law, gain, off / total, 1 / total)
  const strayed = off ** 2 / total
  return { log: -strayed / 2 - Math.log(total) / 2 - Math.log(rootTwoPi), strayed }
}

/** Less likely than this a sighting is taken for a reading at the nearer end, where the shares of a tail lose their digits. */
const leastShare = 1e-9

/**
 * Learns that the humidity lay between two values, ends blurred by a variance: the law is replaced by the normal one of the
 * same mean and spread.
 */
export function observeWithin(law: Law, offset: Offset, low: number, high: number, variance: number): Told {
  const { gain, value, variance: expected } = seen(law, offset)
  const deviation = Math.sqrt(expected + variance)
  const [from, to] = [(low - value) / deviation, (high - value) / deviation]
  const share =
    from > 0 ? normalShareBelow(-from) - normalShareBelow(-to) : normalShareBelow(to) - normalShareBelow(from)
  if (!(share > leastShare)) return observe(law, offset, from > 0 ? low : high, variance)
  const at = (z: number) => (Number.isFinite(z) ? density(z) : 0)
  const slope = (at(from) - at(to)) / share
  const bend =
    ((Number.isFinite(from) ? from * at(from) : 0) - (Number.isFinite(to) ? to * at(to) : 0)) / share
  draw(law, gain, slope / deviation, (slope ** 2 - bend) / deviation ** 2)
  return { log: Math.log(share), strayed: 0 }
}
