import type { ProblemCode } from './problem.ts'

export type NumberRead =
  | { readonly ok: true; readonly value: number; readonly asWritten: boolean }
  | { readonly ok: false; readonly code: ProblemCode; readonly suggestion?: string }

/** What a number of a column may be. */
export interface Quantity {
  /** What each unit, in small letters, is worth in the unit that the column's name ends in. */
  readonly units: Readonly<Record<string, number>>
  readonly whole?: boolean
  /** Lowest and highest that can be true. */
  readonly range?: readonly [number, number] | null
  /** A spreadsheet that shows 45 % holds 0.45: less than one per cent is asked about. */
  readonly percent?: boolean
}

const plain = /^[+-]?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/i
const roughly = /^(?:c\.?|ca\.?|circa|approx\.?|about|~|≈)\s*(?=[\d+.-])/i
const groups = /^\d{1,3}(?:[ '’\u00a0\u2009\u202f]\d{3})+(?=\D|$)/u

/** Digits with points, commas and blanks as people write them, as one number; a list where it may be either of two. */
function digits(text: string): readonly number[] {
  const joined = text.replace(groups, (grouped) => grouped.replace(/[^\d]/g, ''))
  if (/^\d+$/.test(joined) || /^\d*\.\d+$/.test(joined) || /^\d+\.$/.test(joined)) return [Number(joined)]
  if (/^\d{1,3}(?:,\d{3})+\.\d+$/.test(joined)) return [Number(joined.replaceAll(',', ''))]
  if (/^\d{1,3}(?:\.\d{3})+,\d+$/.test(joined)) return [Number(joined.replaceAll('.', '').replace(',', '.'))]
  if (/^\d{1,3}(?:,\d{3}){2,}$/.test(joined)) return [Number(joined.replaceAll(',', ''))]
  if (/^\d{1,3}(?:\.\d{3}){2,}$/.test(joined)) return [Number(joined.replaceAll('.', ''))]
  if (/^[1-9]\d{0,2},\d{3}$/.test(joined))
    return [Number(joined.replace(',', '')), Number(joined.replace(',', '.'))]
  if (/^\d*,\d+$/.test(joined)) return [Number(joined.replace(',', '.'))]
  return []
}

/** The number and the unit written before or after it. */
function cut(text: string): { sign: number; number: string; unit: string; rough: boolean } | null {
  const exact = text.replace(roughly, '')
  const found = /^([a-z]{1,3}\s*(?=[\d+.-]))?([+\-−]?)\s*([\d.,](?:[\d.,'’\s]*[\d.])?)\s*([^\d]*)$/iu.exec(
    exact,
  )
  if (!found) return null
  const [, before = '', sign = '', number = '', after = ''] = found
  if (before !== '' && after !== '') return null
  const unit = `${before}${after}`
    .trim()
    .toLowerCase()
    .replace('º', '°')
    .replace(/\.$/, '')
    .replace(/\s+/g, ' ')
  return { sign: sign === '-' || sign === '−' ? -1 : 1, number, unit, rough: exact !== text }
}

function checked({ whole, percent, range }: Quantity, value: number, asWritten: boolean): NumberRead {
  if (whole === true && !Number.isInteger(value))
    return { ok: false, code: 'not-whole', suggestion: String(Math.round(value)) }
  if (percent === true && value > 0 && value < 1) {
    return { ok: false, code: 'ambiguous-number', suggestion: String(Number((value * 100).toPrecision(6))) }
  }
  if (range && !(value >= range[0] && value <= range[1])) {
    return { ok: false, code: 'out-of-range', suggestion: `${range[0]} to ${range[1]}` }
  }
  return { ok: true, value: value === 0 ? 0 : value, asWritten }
}

/** A number with or without its unit, with decimal point or comma; never a guess where it could be either of two. */
export function readQuantity(quantity: Quantity, text: string): NumberRead {
  if (plain.test(text)) return checked(quantity, Number(text), true)
  const pieces = cut(text)
  const candidates = pieces ? digits(pieces.number.trim()) : []
  if (!pieces || candidates.length === 0) return { ok: false, code: 'not-a-number' }
  const factor = pieces.unit === '' ? 1 : quantity.units[pieces.unit]
  if (factor === undefined) return { ok: false, code: 'wrong-unit' }
  const values = candidates.map((value) => Number((pieces.sign * value * factor).toPrecision(12)))
  const possible = quantity.whole === true ? values.filter(Number.isInteger) : values
  if (possible.length > 1) return { ok: false, code: 'ambiguous-number', suggestion: possible.join(' or ') }
  return checked(quantity, possible[0] ?? values[0]!, false)
}
