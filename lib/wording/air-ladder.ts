import type { Range } from '../base/range.ts'
import { listWords } from './list.ts'

/** What stands above the fiercest class. */
export const aboveAll = 'above'

const shown = (value: number) => value.toLocaleString('en-GB', { maximumSignificantDigits: 3 })

export const limitWords = (value: number): string => value.toLocaleString('en-GB')

export const decadeWords = (value: number): string =>
  value.toLocaleString('en-GB', { maximumSignificantDigits: 1 })

/** The ladder in words, for those who do not see it. */
export function ladderWords(rate: Range, touched: readonly string[], classes: readonly string[]): string {
  const range = `from ${shown(rate.low)} to ${shown(rate.high)} mg/m² a year, most likely ${shown(rate.nominal)}`
  return classes.length === 0
    ? `A range ${range}, on a logarithmic axis without classes: their limits are not known.`
    : `A range ${range}, on a logarithmic ladder of the classes ${listWords(classes)}. It lies in ${listWords(touched, 'or')}.`
}
