/** Eight of ten plausible mappings lie between these two. */
const ends = [0.1, 0.9] as const

/**
 * For each rival the range of its probability over the mappings, each mapping counting as much as the evidence leaves it:
 * between one in ten and nine in ten, and never without the probability itself.
 */
export function rangesOf(
  weights: Float64Array,
  probabilities: Float64Array,
): readonly (readonly [low: number, high: number])[] {
  const wide = probabilities.length
  const count = weights.length / wide
  const mass = new Float64Array(count)
  for (let at = 0; at < weights.length; at++) mass[Math.floor(at / wide)]! += weights[at]!
  const share = new Float64Array(count)
  return Array.from(probabilities, (probability, rival) => {
    for (let k = 0; k < count; k++) share[k] = mass[k]! > 0 ? weights[k * wide + rival]! / mass[k]! : 0
    const [low, high] = quantiles(share, mass)
    return [Math.min(low, probability), Math.max(high, probability)]
  })
}

const order = { numbers: new Uint16Array(0) }

/** Both ends at once; each value stands at the middle of its own weight, and between two the line is straight. */
function quantiles(values: Float64Array, weights: Float64Array): readonly [number, number] {
  const count = values.length
  if (order.numbers.length !== count) order.numbers = new Uint16Array(count)
  const sorted = order.numbers
  for (let at = 0; at < count; at++) {
    let to = at
    for (; to > 0 && values[sorted[to - 1]!]! > values[at]!; to--) sorted[to] = sorted[to - 1]!
    sorted[to] = at
  }
  return [quantile(values, weights, sorted, ends[0]), quantile(values, weights, sorted, ends[1])]
}

function quantile(values: Float64Array, weights: Float64Array, sorted: Uint16Array, share: number): number {
  let below = 0
  let from = 0
  let last = values[sorted[0]!]!
  for (const at of sorted) {
    const middle = below + weights[at]! / 2
    if (middle >= share) {
      const part = middle > from ? (share - from) / (middle - from) : 1
      return last + (values[at]! - last) * Math.max(0, part)
    }
    below += weights[at]!
    from = middle
    last = values[at]!
  }
  return last
}
