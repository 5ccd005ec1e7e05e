import { normalQuantile } from '../base/normal-quantile.ts'
import type { Quantiles, Range } from '../base/range.ts'

/**
 * A quantity known only within a range, and how it spreads: `size` for what is known to within a factor and never negative
 * (its logarithm is normal, each side of the nominal for itself), `percent` for relative humidity (normal, each side for
 * itself, no draw beyond 0 or 100). Either way one case in ten lies below the range, half below the nominal, one in ten above.
 */
export interface Uncertain {
  readonly range: Range
  readonly spreads: 'size' | 'percent'
}

/** A thousand draws and a few: quantiles settle to about a percent and a run takes milliseconds. */
const drawCount = 1024
const halfOfEightInTen = normalQuantile(0.9)
const bases = [2, 3, 5, 7, 11] as const

/** The digits of a count, mirrored behind the point (van der Corput): fills 0 to 1 evenly however many are taken. */
function mirrored(count: number, base: number): number {
  let [value, place] = [0, 1 / base]
  for (let left = count; left > 0; left = Math.floor(left / base), place /= base)
    value += (left % base) * place
  return value
}

/** Standard deviations of every draw, one list a quantity: the first goes through its range in step, the rest by Halton. */
const deviations: readonly Float64Array[] = [null, ...bases].map((base) =>
  Float64Array.from({ length: drawCount }, (_, draw) =>
    normalQuantile(base === null ? (draw + 0.5) / drawCount : mirrored(draw + 1, base)),
  ),
)

function valueAt({ range, spreads }: Uncertain, deviation: number): number {
  const { low, nominal, high } = range
  const share = Math.abs(deviation) / halfOfEightInTen
  const end = deviation < 0 ? low : high
  if (end === nominal) return nominal
  if (spreads === 'size') return nominal * (end / nominal) ** share
  return Math.min(100, Math.max(0, nominal + (end - nominal) * share))
}

/**
 * Values of each quantity, one list a quantity, the same on every machine and every day [unit of each]. The same place in two
 * calls strays alike, so that a thing and its better can be compared draw by draw.
 * @param quantities [Uncertain] the most telling first; they vary independently of each other
 * @param every [count] only every so many draws, where there are many things to draw for; 7 shares no factor with the bases
 *   of four quantities, so that what is left is still spread evenly
 * @source quasi-random sequence of Halton 1960, 1024 draws
 * @valid up to six quantities
 * @agrees 1 % with the ranges they were drawn from, every seventh draw 3 %
 */
export function drawsOf(quantities: readonly Uncertain[], every = 1): readonly Float64Array[] {
  if (quantities.length > deviations.length)
    throw new Error(`At most ${deviations.length} quantities are drawn together`)
  return quantities.map((quantity, at) =>
    Float64Array.from({ length: Math.ceil(drawCount / every) }, (_, draw) =>
      valueAt(quantity, deviations[at]![draw * every]!),
    ),
  )
}

/**
 * What one in ten, half and nine in ten of some outcomes lie below [unit of the outcomes].
 * @param outcomes [unit of the outcomes] one a draw; may be Infinity, never NaN
 * @source order statistics: none is made up between two draws
 * @valid any number of outcomes
 * @agrees exact with the count
 */
export function quantilesAmong(outcomes: Float64Array): Quantiles {
  const sorted = outcomes.toSorted()
  const below = (share: number) => sorted[Math.ceil(share * sorted.length) - 1]!
  return { p10: below(0.1), p50: below(0.5), p90: below(0.9) }
}

/**
 * How an outcome spreads when what it rests on is known only within ranges [unit of the outcome].
 * @param quantities [Uncertain] what it rests on, the most telling first; they vary independently of each other
 * @param outcome [unit of the outcome] the outcome for one value of each; may be Infinity, never NaN
 * @source quasi-random propagation (Halton 1960), 1024 draws
 * @valid up to six quantities; independent of each other, spreading as Uncertain says
 * @agrees 2 % with the exact quantiles of a product of four
 */
export function quantilesOf(
  quantities: readonly Uncertain[],
  outcome: (values: readonly number[]) => number,
): Quantiles {
  const lists = drawsOf(quantities)
  const values = quantities.map(() => 0)
  return quantilesAmong(
    Float64Array.from({ length: drawCount }, (_, draw) => {
      for (let at = 0; at < lists.length; at += 1) values[at] = lists[at]![draw]!
      return outcome(values)
    }),
  )
}
