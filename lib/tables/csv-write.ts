import { guard } from './csv-cell.ts'

/** Spreadsheets take a CSV file for UTF-8 only when this stands first. */
export const byteOrderMark = '\ufeff'

function quoted(text: string): string {
  const safe = guard(text)
  return /[",;\t\r\n|]/.test(safe) || safe !== safe.trim() ? `"${safe.replaceAll('"', '""')}"` : safe
}

/** One row of a CSV file with its line end (RFC 4180), no cell of which a spreadsheet would run as a formula. */
export function csvLine(cells: readonly string[]): string {
  // A row of one empty cell would be an empty line, which is no row.
  const line = cells.length === 1 && cells[0] === '' ? '""' : cells.map(quoted).join(',')
  return `${line}\r\n`
}

export function csvText(rows: Iterable<readonly string[]>): string {
  return Array.from(rows, csvLine).join('')
}
