import { cleanText } from '../record/clean-text.ts'
import { findColumn, mendColumn, partColumn } from '../record/extra-cell.ts'
import { fields, type FieldName } from '../record/fields.ts'
import { fieldOfHeading } from '../record/heading.ts'
import { closest, nameKey } from '../record/likeness.ts'
import type { FieldNames } from '../record/names.ts'
import { problem, type Problem } from '../record/problem.ts'

/** What a column of a table is read as. */
export type ColumnUse =
  | { readonly kind: 'field'; readonly field: FieldName }
  | { readonly kind: 'left-out' }
  | { readonly kind: 'extra'; readonly level: 'find' | 'component'; readonly key: string }

export interface Column {
  readonly heading: string
  readonly use: ColumnUse
}

export interface Columns {
  readonly columns: readonly Column[]
  /** Headings that are no field; what stands under them is kept. */
  readonly unknown: readonly string[]
  readonly problems: readonly Problem[]
}

const fieldNames = Object.keys(fields) as FieldName[]

/** The field a misspelled heading was probably meant for. A unit at its end must be the right one: `mass_kg` is no slip. */
function likelyField(heading: string, free: readonly FieldName[]): FieldName | null {
  const key = nameKey(heading)
  const last = key.split('-').at(-1)
  const fitting = free.filter((field) => {
    const { kind } = fields[field]
    return (kind !== 'number' && kind !== 'whole') || nameKey(field).split('-').at(-1) === last
  })
  return key.length < 5
    ? null
    : (closest(
        key,
        fitting.map((field) => ({ key: nameKey(field), field })),
      )?.field ?? null)
}

/** The letters a spreadsheet shows over the column. */
export function columnLetters(at: number): string {
  const rest = Math.floor(at / 26)
  return `${rest === 0 ? '' : columnLetters(rest - 1)}${String.fromCharCode(65 + (at % 26))}`
}

function extraUse(heading: string): ColumnUse & { readonly kind: 'extra' } {
  if (heading.startsWith(findColumn))
    return { kind: 'extra', level: 'find', key: heading.slice(findColumn.length) }
  if (heading.startsWith(partColumn))
    return { kind: 'extra', level: 'component', key: heading.slice(partColumn.length) }
  return { kind: 'extra', level: 'component', key: heading }
}

export function matchHeadings(headings: readonly string[], names: FieldNames, row: number): Columns {
  const problems: Problem[] = []
  const shown = headings.map((text, at) => cleanText(text) || `column ${columnLetters(at)}`)
  const exact = shown.map((heading) => fieldOfHeading(heading, names))
  const taken = new Set<FieldName>()
  const keys = new Set<string>()
  const unknown: string[] = []
  const columns = shown.map((heading, at): Column => {
    if (heading === mendColumn) return { heading, use: { kind: 'left-out' } }
    const where = { row, column: heading }
    const meant = exact[at] ?? null
    if (meant !== null && !taken.has(meant)) {
      taken.add(meant)
      return { heading, use: { kind: 'field', field: meant } }
    }
    if (meant !== null)
      problems.push(problem('duplicate-heading', { ...where, field: meant }, heading, meant))
    const marked = heading.startsWith(findColumn) || heading.startsWith(partColumn)
    const likely =
      meant !== null || marked
        ? null
        : likelyField(
            heading,
            fieldNames.filter((field) => !exact.includes(field) && !taken.has(field)),
          )
    if (likely !== null) {
      taken.add(likely)
      problems.push(problem('guessed-heading', { ...where, field: likely }, heading, likely))
      return { heading, use: { kind: 'field', field: likely } }
    }
    const use = extraUse(heading)
    let key = use.key
    for (let count = 2; keys.has(`${use.level} ${key}`); count++) key = `${use.key} (${count})`
    keys.add(`${use.level} ${key}`)
    if (cleanText(headings[at]!) !== '') unknown.push(heading)
    return { heading, use: { ...use, key } }
  })
  const strange = unknown.filter(
    (heading) => !heading.startsWith(findColumn) && !heading.startsWith(partColumn),
  )
  return {
    columns,
    unknown,
    problems: [
      ...problems,
      ...strange.map((heading) => problem('unknown-column', { row, column: heading }, heading)),
    ],
  }
}
