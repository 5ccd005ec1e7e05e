import type { FieldName } from './fields.ts'
import { fields } from './fields.ts'
import type { ProblemCode } from './problem.ts'

export type NumberRead =
  | { readonly ok: true; readonly value: number; readonly asWritten: boolean }
  | { readonly ok: false; readonly code: ProblemCode; readonly suggestion?: string }

/** What a unit is worth in the unit that the field's name ends in. */
const mass = { g: 1, gr: 1, gm: 1, gram: 1, grams: 1, gramme: 1, grammes: 1, kg: 1000, mg: 0.001 }
const length = { mm: 1, cm: 10, m: 1000 }
const days = { d: 1, day: 1, days: 1, week: 7, weeks: 7 }
const count = {
  x: 1,
  pc: 1,
  pcs: 1,
  piece: 1,
  pieces: 1,
  bits: 1,
  frag: 1,
  frags: 1,
  fragment: 1,
  fragments: 1,
}

const units: Readonly<Partial<Record<FieldName, Readonly<Record<string, number>>>>> = {
  mass_g: mass,
  length_mm: length,
  width_mm: length,
  thickness_mm: length,
  days_since_lifting: days,
  watched_days: days,
  quantity: count,
  fragments: count,
  soil_ph: { ph: 1 },
  soil_chloride_mg_kg: { 'mg/kg': 1, ppm: 1, 'g/kg': 1000 },
  stored_rh_percent: { '%': 1, percent: 1, rh: 1, '%rh': 1, '% rh': 1, 'percent rh': 1 },
  stored_temperature_c: { c: 1, '°c': 1, 'deg c': 1, celsius: 1 },
  date_from: { ad: 1, ce: 1, bc: -1, bce: -1 },
  date_to: { ad: 1, ce: 1, bc: -1, bce: -1 },
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

function checked(field: FieldName, value: number, asWritten: boolean): NumberRead {
  const entry = fields[field]
  if (entry.kind === 'whole' && !Number.isInteger(value))
    return { ok: false, code: 'not-whole', suggestion: String(Math.round(value)) }
  // A spreadsheet that shows 45 % holds 0.45.
  if (field === 'stored_rh_percent' && value > 0 && value < 1) {
    return { ok: false, code: 'ambiguous-number', suggestion: String(Number((value * 100).toPrecision(6))) }
  }
  const range = 'range' in entry ? entry.range : null
  if (range && !(value >= range[0] && value <= range[1])) {
    return { ok: false, code: 'out-of-range', suggestion: `${range[0]} to ${range[1]}` }
  }
  return { ok: true, value: value === 0 ? 0 : value, asWritten }
}

/** A number with or without its unit, with decimal point or comma; never a guess where it could be either of two. */
export function readNumber(field: FieldName, text: string): NumberRead {
  if (plain.test(text)) return checked(field, Number(text), true)
  const pieces = cut(text)
  const candidates = pieces ? digits(pieces.number.trim()) : []
  if (!pieces || candidates.length === 0) return { ok: false, code: 'not-a-number' }
  const factor = pieces.unit === '' ? 1 : units[field]?.[pieces.unit]
  if (factor === undefined) return { ok: false, code: 'wrong-unit' }
  const values = candidates.map((value) => Number((pieces.sign * value * factor).toPrecision(12)))
  const possible = fields[field].kind === 'whole' ? values.filter(Number.isInteger) : values
  if (possible.length > 1) return { ok: false, code: 'ambiguous-number', suggestion: possible.join(' or ') }
  return checked(field, possible[0] ?? values[0]!, false)
}
