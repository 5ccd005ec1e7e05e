import { cleanText } from '../record/clean-text.ts'
import { readExtra } from '../record/extra-cell.ts'
import type { FieldName } from '../record/fields.ts'
import type { GivenCell, GivenRow } from '../record/given.ts'
import { columnLetters, type Column } from './headers.ts'
import type { TableRow } from './table.ts'

export const isBlank = (row: TableRow) => row.cells.every((cell) => cell.trim() === '')

/** One row under its columns. Cells beyond the last heading are kept under the letters of their place. */
export function givenRow(row: TableRow, columns: readonly Column[]): GivenRow {
  const cells = new Map<FieldName, GivenCell>()
  const findExtra: [string, unknown][] = []
  const partExtra: [string, unknown][] = []
  for (const [at, value] of row.cells.entries()) {
    const text = cleanText(value)
    if (text === '') continue
    const column = columns[at]
    if (column?.use.kind === 'left-out') continue
    if (!column) partExtra.push([`column ${columnLetters(at)}`, text])
    else if (column.use.kind === 'extra') {
      const extra = column.use.level === 'find' ? findExtra : partExtra
      extra.push([column.use.key, readExtra(text)])
    } else {
      const formula = row.formulas?.has(at) ? { formula: true as const } : {}
      cells.set(column.use.field, { column: column.heading, value: text, ...formula })
    }
  }
  return {
    row: row.row,
    cells,
    findExtra: Object.fromEntries(findExtra),
    partExtra: Object.fromEntries(partExtra),
  }
}
