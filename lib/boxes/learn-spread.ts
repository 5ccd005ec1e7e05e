import { normalQuantile } from '../base/normal-quantile.ts'
import type { Range } from './box.ts'

const ninthTenth = normalQuantile(0.9)

/** What is known only so well, as a law of two halves: a normal one below the nominal value and one above, half each. */
export interface Spread {
  readonly nominal: number
  readonly below: number
  readonly above: number
}

export const spreadOf = ({ low, nominal, high }: Range): Spread => ({
  nominal,
  below: Math.max(0, nominal - low) / ninthTenth,
  above: Math.max(0, high - nominal) / ninthTenth,
})

export const rangeOfSpread = ({ nominal, below, above }: Spread): Range => ({
  low: nominal - ninthTenth * below,
  nominal,
  high: nominal + ninthTenth * above,
})

/** The spread of what is never below nothing and differs by factors: a law of the logarithm. */
export const logSpreadOf = ({ low, nominal, high }: Range): Spread =>
  spreadOf({ low: Math.log(low), nominal: Math.log(nominal), high: Math.log(high) })

export function momentsOf(spread: Spread): { readonly mean: number; readonly deviation: number } {
  const { nominal, below, above } = spread
  const variance = (below ** 2 + above ** 2) / 2 - (above - below) ** 2 / (2 * Math.PI)
  return { mean: nominal + (above - below) / Math.sqrt(2 * Math.PI), deviation: Math.sqrt(variance) }
}

export function logDensity({ nominal, below, above }: Spread, value: number): number {
  const deviation = value < nominal ? below : above
  return -(((value - nominal) / deviation) ** 2) / 2 - Math.log(deviation * Math.sqrt(2 * Math.PI))
}

const valueAt = ({ nominal, below, above }: Spread, z: number) => nominal + z * (z < 0 ? below : above)

/** The value below which this share of the cases lies. */
export const spreadAtShare = (spread: Spread, share: number): number => valueAt(spread, normalQuantile(share))

const nodeCount = 9
const nodes = Array.from({ length: nodeCount }, (_, at) => normalQuantile((at + 0.5) / nodeCount))

/** A few values that stand for the whole law, all equally likely. */
export const equalValues = (spread: Spread): readonly number[] => nodes.map((z) => valueAt(spread, z))

/** Low, nominal and high of weighted values: one in ten below, half, nine in ten. */
export function rangeOfWeighted(values: readonly (readonly [value: number, weight: number])[]): Range {
  const sorted = values.filter(([, weight]) => weight > 0).toSorted(([a], [b]) => a - b)
  const total = sorted.reduce((sum, [, weight]) => sum + weight, 0)
  const at = (share: number) => {
    let below = 0
    let before: readonly [number, number] | null = null
    for (const [value, weight] of sorted) {
      const middle = (below + weight / 2) / total
      if (middle >= share) {
        if (!before) return value
        return before[0] + ((value - before[0]) * (share - before[1])) / (middle - before[1])
      }
      before = [value, middle]
      below += weight
    }
    return sorted.at(-1)![0]
  }
  return { low: at(0.1), nominal: at(0.5), high: at(0.9) }
}

/** Logarithm of the sum of numbers that are given by theirs. */
export function logSum(logs: readonly number[]): number {
  const best = Math.max(...logs)
  return best === -Infinity ? best : best + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - best), 0))
}
