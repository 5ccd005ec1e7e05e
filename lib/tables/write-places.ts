import { readExtra } from '../record/extra-cell.ts'
import { storeColumns, storeKeys, storeTables, type StoreTable } from '../record/store-tables.ts'
import { csvText } from './csv-write.ts'
import { writeSheets, writeWorkbook } from './xlsx-write.ts'

/** Rows of the store's tables as they were given: the same columns, the same words, what was not understood too. */
export type StoreRows = { readonly [Table in StoreTable]: readonly StoreGiven[] }

export type StoreGiven = Readonly<Record<string, unknown>> & {
  readonly extra?: Readonly<Record<string, string>>
}

const written = (value: unknown) => (value === undefined ? '' : String(value))

/** The columns that any row fills, in the order of the contract; then those that have no meaning here. */
function headingsOf(table: StoreTable, rows: readonly StoreGiven[]): readonly string[] {
  const columns = Object.keys(storeColumns[table])
  const used = new Set(
    rows.flatMap(({ extra, ...row }) => [...Object.keys(row), ...Object.keys(extra ?? {})]),
  )
  const own = columns.filter((column) => used.has(column) || storeKeys[table].includes(column))
  return [...own, ...[...used].filter((column) => !columns.includes(column))]
}

/** A table with its headings first. What was not understood stands under the column it came from. */
export function storeTable(table: StoreTable, rows: readonly StoreGiven[]): readonly (readonly string[])[] {
  const headings = headingsOf(table, rows)
  return [
    headings,
    ...rows.map(({ extra, ...row }) => headings.map((heading) => written(row[heading] ?? extra?.[heading]))),
  ]
}

export const storeTableCsv = (table: StoreTable, rows: readonly StoreGiven[]): string =>
  csvText(storeTable(table, rows))

/** One sheet a table that has rows; of one table alone, one sheet. */
export function storeWorkbook(rows: StoreRows): Promise<Uint8Array> {
  const filled = storeTables.filter((table) => rows[table].length > 0)
  const [only = 'boxes'] = filled
  if (filled.length < 2) return writeWorkbook(only, storeTable(only, rows[only]))
  return writeSheets(filled.map((table) => ({ sheet: table, rows: storeTable(table, rows[table]) })))
}

/** One object a line; which table it is of is told by its keys. */
export function storeJsonLines(rows: readonly StoreGiven[]): string {
  return rows
    .map(({ extra, ...row }) => {
      const more = Object.fromEntries(
        Object.entries(extra ?? {}).map(([key, text]) => [key, readExtra(text)]),
      )
      return `${JSON.stringify({ ...more, ...row })}\n`
    })
    .join('')
}
