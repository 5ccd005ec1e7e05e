import { parse } from 'csv-parse/browser/esm/sync'
import type { FieldName } from '../record/fields.ts'
import type { FieldNames } from '../record/names.ts'
import { fieldOfHeading } from '../record/heading.ts'

export const delimiters = [',', ';', '\t', '|'] as const
export type Delimiter = (typeof delimiters)[number]

export interface Dialect {
  readonly delimiter: Delimiter
  /** The first line only says which delimiter is used (`sep=;`); spreadsheets do not count it. */
  readonly delimiterLine: boolean
  /** Place of the headings among the rows, from 0; -1 where no row has a heading that is known. */
  readonly headingAt: number
  readonly headings: readonly string[]
}

const searched = 20
const sampled = 60

function sampleRows(lines: readonly string[], delimiter: Delimiter): readonly (readonly string[])[] {
  const options = { delimiter, relax_column_count: true, relax_quotes: true, record_delimiter: '\n' }
  try {
    return parse(lines.join('\n'), options)
  } catch {
    return lines.map((line) => line.split(delimiter))
  }
}

const known = (row: readonly string[], names: FieldNames) =>
  new Set(
    row.map((cell) => fieldOfHeading(cell, names)).filter((field): field is FieldName => field !== null),
  )

/** The row that is most of all made of headings; the find number weighs more than others, but not more than all of them. */
export function findHeadings(
  rows: readonly (readonly string[])[],
  names: FieldNames,
): { readonly at: number; readonly score: number } {
  let best = { at: -1, score: 0 }
  for (const [at, row] of rows.slice(0, searched).entries()) {
    const fields = known(row, names)
    const score = fields.size + (fields.has('find_number') ? 2 : 0)
    if (score > best.score) best = { at, score }
  }
  return best
}

const widths = (rows: readonly (readonly string[])[]) =>
  rows.filter((row) => row.some((cell) => cell !== '')).map((row) => row.length)

/** How many rows are as wide as the widest heading row would have it; one-column tables say nothing. */
function evenness(rows: readonly (readonly string[])[]): number {
  const all = widths(rows)
  const counts = Map.groupBy(all, (width) => width)
  const [width, same] = [...counts].toSorted((a, b) => b[1].length - a[1].length)[0] ?? [1, []]
  return width < 2 ? 0 : same.length / all.length + Math.min(width, 50) / 1000
}

/** Which delimiter makes the most of the first lines into headings and rows of one width. */
export function dialectOf(text: string, names: FieldNames): Dialect {
  const said = /^sep=([,;\t|])\n/i.exec(text)
  const body = said ? text.slice(said[0].length) : text
  const lines = body.split('\n', sampled)
  const candidates = (said ? [said[1] as Delimiter] : delimiters).map((delimiter) => {
    const rows = sampleRows(lines, delimiter)
    return { delimiter, rows, heading: findHeadings(rows, names), even: evenness(rows) }
  })
  const best = candidates.toSorted((a, b) => b.heading.score - a.heading.score || b.even - a.even)[0]!
  const { at } = best.heading
  return {
    delimiter: best.delimiter,
    delimiterLine: said !== null,
    headingAt: at,
    headings: at === -1 ? [] : best.rows[at]!,
  }
}
