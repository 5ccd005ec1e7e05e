import { unitOf, type Unit } from './units.ts'

export type CellRead =
  | {
      readonly kind: 'number'
      readonly value: number
      /** Null: a whole number, which says nothing of the mark used. */
      readonly mark: '.' | ',' | null
      readonly thousands: boolean
      readonly unit: Unit | null
    }
  | { readonly kind: 'empty' }
  | { readonly kind: 'formula' }
  | { readonly kind: 'text' }
  /** What a logger writes when the sensor gave nothing. */
  | { readonly kind: 'gap'; readonly word: string }
  | { readonly kind: 'unit-unknown'; readonly unit: string }

/** Longer cells hold no value. */
const longest = 80

const plain = /^([+-]?)(\d+)(?:([.,])(\d+))?$/
const general = /^([+-]?)\s*((?:\d[\d.,' ]*|[.,]\d+))(?:e([+-]?\d{1,3}))?\s*([^\d\s].*)?$/i
const gap = new RegExp(
  String.raw`^(?:-+|\*+|\?+|#+|_+|\.+|x+|n[./]?\s?a\.?|-?nan|null|none|nil|void|err(?:or)?[\s.:-]*\w{0,6}|e-?\d{1,3}|` +
    String.raw`fail(?:ed|ure)?|fault|fehler|erreur|errore|ofl|ufl|o\.?l\.?|ovf|ovl|udf|(?:over|under)(?:flow|range|load)?|` +
    String.raw`low?|hi(?:gh)?|n\.?c\.?|open|short|no[\s_-]?(?:data|value|sensor|signal|probe|link|reading)|missing|invalid|` +
    String.raw`bad|[+-]?inf(?:inity)?|lost|off(?:line)?|disconnected|kein\w*\s(?:wert|daten|sensor)|defekt|pas de donn\w*|` +
    String.raw`sin datos|#(?:n\/a|num!|div\/0!|value!|ref!|name\?|null!|n\/v|wert!|zahl!)|[<>]=?\s*[\d.,]+)$`,
  'i',
)

/** Digits with marks between them as a number's own text; null where the marks make no sense. */
function resolve(
  text: string,
): { readonly digits: string; readonly mark: '.' | ',' | null; readonly thousands: boolean } | null {
  const bare = text.replace(/[' ]+$/, '')
  const grouped = /^\d{1,3}(?:[' ]\d{3})+(?=[.,]|$)/.test(bare)
  if (/[' ]/.test(bare) && !grouped) return null
  const joined = bare.replace(/[' ]/g, '')
  const points = joined.split('.').length - 1
  const commas = joined.split(',').length - 1
  if (points + commas === 0) return { digits: joined, mark: null, thousands: grouped }
  if (points + commas === 1) {
    const mark = points === 1 ? '.' : ','
    return { digits: joined.replace(',', '.'), mark, thousands: grouped }
  }
  if (points > 0 && commas > 0) {
    const mark = joined.lastIndexOf('.') > joined.lastIndexOf(',') ? '.' : ','
    const groups = mark === '.' ? /^\d{1,3}(?:,\d{3})+\.\d*$/ : /^\d{1,3}(?:\.\d{3})+,\d*$/
    if (!groups.test(joined)) return null
    const other = mark === '.' ? ',' : '.'
    return { digits: joined.replaceAll(other, '').replace(',', '.'), mark, thousands: true }
  }
  if (!/^\d{1,3}(?:[.,]\d{3})+$/.test(joined)) return null
  return { digits: joined.replace(/[.,]/g, ''), mark: null, thousands: true }
}

const withoutUnit = (cell: string) => cell.replace(/\s*(?:%\s?r?\.?[hf]?\.?|°\s?[cfk])$/i, '')

/** What stands in a cell where a value is looked for. A single mark is a decimal mark, wherever it stands. */
export function readCell(cell: string): CellRead {
  const simple = plain.exec(cell)
  if (simple) {
    const mark = (simple[3] as '.' | ',' | undefined) ?? null
    const value = Number(mark === ',' ? cell.replace(',', '.') : cell)
    return { kind: 'number', value, mark, thousands: false, unit: null }
  }
  if (cell === '') return { kind: 'empty' }
  if (cell.length > longest) return { kind: 'text' }
  const found = general.exec(cell)
  const digits = found && resolve(found[2]!)
  if (found && digits) {
    const value = Number(`${found[1]}${digits.digits}${found[3] === undefined ? '' : `e${found[3]}`}`)
    const unit = found[4] === undefined ? null : unitOf(found[4])
    if (found[4] !== undefined && unit === null) {
      return gap.test(cell) ? { kind: 'gap', word: cell } : { kind: 'unit-unknown', unit: found[4] }
    }
    if (Number.isFinite(value)) {
      return { kind: 'number', value, mark: digits.mark, thousands: digits.thousands, unit }
    }
  }
  if (cell.startsWith('=') && cell.length > 1) return { kind: 'formula' }
  return gap.test(cell) || gap.test(withoutUnit(cell)) ? { kind: 'gap', word: cell } : { kind: 'text' }
}
