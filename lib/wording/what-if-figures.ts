import type { Quantiles } from '../base/range.ts'

/** A reckoned number as far as it counts: two figures, never more than two behind the point; `0` where it is hardly anything. */
export function roundWords(value: number): string {
  const size = Math.abs(value)
  if (size < 0.05) return '0'
  return Number(size < 1 ? value.toFixed(2) : value.toPrecision(2)).toLocaleString('en-GB')
}

/** Dry gel, grams below a kilogram, as far as it counts. */
export function aboutKilogramWords(kg: number): string {
  const size = Math.abs(kg)
  if (size < 0.005) return '0 kg'
  return size < 0.995 ? `${roundWords(kg * 1000)} g` : `${roundWords(kg)} kg`
}

export type Amount = 'renewals' | 'gel'

const valueWords: Readonly<Record<Amount, (value: number) => string>> = {
  renewals: roundWords,
  gel: aboutKilogramWords,
}

export const amountWords = (value: number, of: Amount): string => valueWords[of](value)

/** Both ends of a range with the unit once: `4 and 12 kg`; empty where both are the same to the reader. */
export function endsWords(low: number, high: number, of: Amount, joined = 'and'): string {
  const [from, to] = [amountWords(low, of), amountWords(high, of)]
  if (from === to) return ''
  const [number = '', unit] = from.split(' ')
  return unit !== undefined && to.endsWith(` ${unit}`)
    ? `${number} ${joined} ${to}`
    : `${from} ${joined} ${to}`
}

/** `, likely between 25 and 60`; empty where both ends are the same to the reader. */
export function likelyWords(low: number, high: number, of: Amount): string {
  const ends = endsWords(low, high, of)
  return ends === '' ? '' : `, likely between ${ends}`
}

/** The same in the least room, for tables: `38 (25 to 60)`. */
export function spreadMark({ p10, p50, p90 }: Quantiles, of: Amount): string {
  const ends = endsWords(p10, p90, of, 'to')
  return ends === '' ? amountWords(p50, of) : `${amountWords(p50, of)} (${ends})`
}

/** How long gel lasts that is renewed so often a year: days, then months, then years. */
export function lastsWords(perYear: number): string {
  if (perYear < 1 / 100) return 'more than a hundred years'
  const days = 365.25 / perYear
  if (days < 60) return Math.round(days) <= 1 ? 'a day or less' : `${Math.round(days)} days`
  const months = days / 30.44
  return months < 36 ? `${Math.round(months)} months` : `${roundWords(months / 12)} years`
}
