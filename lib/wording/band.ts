import type { Band } from '../engine/plan.ts'

/** A number as a person writes it: no trailing noughts, one decimal where it needs one. */
export function numberWords(value: number): string {
  return String(Math.round(value * 10) / 10)
}

/** A humidity band in words, with its unit: `12 % or below`, `35 to 55 %`, `no limit`. */
export function bandWords(band: Band): string {
  if (band.min <= 0 && band.max >= 100) return 'no limit'
  if (band.min <= 0) return `${numberWords(band.max)} % or below`
  if (band.max >= 100) return `${numberWords(band.min)} % or above`
  if (band.min === band.max) return `${numberWords(band.min)} %`
  return `${numberWords(band.min)} to ${numberWords(band.max)} %`
}

/** The same in the least room, for tables and labels: `≤ 12 %`, `35–55 %`, `any`. */
export function bandMark(band: Band): string {
  if (band.min <= 0 && band.max >= 100) return 'any'
  if (band.min <= 0) return `≤ ${numberWords(band.max)} %`
  if (band.max >= 100) return `≥ ${numberWords(band.min)} %`
  if (band.min === band.max) return `${numberWords(band.min)} %`
  return `${numberWords(band.min)}–${numberWords(band.max)} %`
}

export function temperatureWords(range: {
  readonly min: number | null
  readonly max: number | null
}): string {
  if (range.min === null && range.max === null) return 'no limit'
  if (range.min === null) return `${numberWords(range.max ?? 0)} °C or below`
  if (range.max === null) return `${numberWords(range.min)} °C or above`
  return `${numberWords(range.min)} to ${numberWords(range.max)} °C`
}
