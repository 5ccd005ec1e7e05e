import type { Range } from '../../../lib/base/range.ts'

interface Limit {
  readonly name: string
  /** Upper limit of the class. */
  readonly to: number
}

/** All places are percentages of the width of the drawing. */
export interface ClassLadder {
  readonly decades: readonly { readonly value: number; readonly at: number }[]
  readonly classes: readonly { readonly name: string; readonly from: number; readonly to: number }[]
  readonly bar: {
    readonly from: number
    readonly to: number
    readonly nominal: number
    /** It goes on below what is drawn: a logarithm has no nothing. */
    readonly opensLeft: boolean
  }
}

const leastDecades = 2

/** A range of rates on a logarithmic axis that begins well below the mildest limit and ends well above the fiercest. */
export function classLadder(rate: Range, limits: readonly Limit[], beyond: string): ClassLadder {
  const positive = [...limits.map(({ to }) => to), rate.nominal, rate.high].filter((value) => value > 0)
  const least = Math.min(...positive, ...(positive.length === 0 ? [1] : []))
  const most = Math.max(...positive, ...(positive.length === 0 ? [1] : []))
  const first = Math.floor(Math.log10(least / 3))
  const last = Math.max(first + leastDecades, Math.ceil(Math.log10(most * 3)))
  const at = (value: number) =>
    value <= 0 ? 0 : Math.min(100, Math.max(0, (100 * (Math.log10(value) - first)) / (last - first)))
  const ends = limits.map(({ to }) => at(to))
  return {
    decades: Array.from({ length: last - first + 1 }, (_, index) => {
      const value = 10 ** (first + index)
      return { value, at: at(value) }
    }),
    classes:
      limits.length === 0
        ? []
        : [...limits.map(({ name }) => name), beyond].map((name, index) => ({
            name,
            from: ends[index - 1] ?? 0,
            to: ends[index] ?? 100,
          })),
    bar: {
      from: at(rate.low),
      to: at(rate.high),
      nominal: at(rate.nominal),
      opensLeft: rate.low < 10 ** first,
    },
  }
}
