/** Eight of ten plausible mappings lie between these two. */
const ends = [0.1, 0.9] as const

export type Range = readonly [low: number, high: number]

/**
 * The range of a rival's probability over the mappings, each mapping counting as much as the evidence leaves it: between
 * one in ten and nine in ten, and never without the probability itself. One function a matter, asked rival by rival.
 */
export function rangesIn(weights: Float64Array, wide: number): (rival: number, probability: number) => Range {
  const count = weights.length / wide
  const mass = new Float64Array(count)
  for (let k = 0; k < count; k++)
    for (let rival = 0; rival < wide; rival++) mass[k]! += weights[k * wide + rival]!
  const share = new Float64Array(count)
  return (rival, probability) => {
    for (let k = 0; k < count; k++) share[k] = mass[k]! > 0 ? weights[k * wide + rival]! / mass[k]! : 0
    const [low, high] = quantiles(share, mass)
    return [Math.min(low, probability), Math.max(high, probability)]
  }
}

export function rangesOf(weights: Float64Array, probabilities: Float64Array): readonly Range[] {
  const rangeOf = rangesIn(weights, probabilities.length)
  return Array.from(probabilities, (probability, rival) => rangeOf(rival, probability))
}

/** Both ends at once; each value stands at the middle of its own weight, and between two the line is straight. */
function quantiles(values: Float64Array, weights: Float64Array): readonly [number, number] {
  const sorted = inOrder(values)
  return [quantile(values, weights, sorted, ends[0]), quantile(values, weights, sorted, ends[1])]
}

const gaps = [23, 10, 4, 1]

/** Numbers of the values, the least first. Shell's sort: of so few values, without a call for each pair, the quickest. */
function inOrder(values: Float64Array): Uint16Array {
  const keys = values.slice()
  const sorted = new Uint16Array(values.length)
  for (let at = 0; at < sorted.length; at++) sorted[at] = at
  for (const gap of gaps) {
    for (let at = gap; at < sorted.length; at++) {
      const moved = sorted[at]!
      const key = keys[at]!
      let to = at
      for (; to >= gap && keys[to - gap]! > key; to -= gap) {
        keys[to] = keys[to - gap]!
        sorted[to] = sorted[to - gap]!
      }
      keys[to] = key
      sorted[to] = moved
    }
  }
  return sorted
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
