/**
 * Spreadsheets run a cell that begins with one of these as a formula, whoever wrote it. Written texts of that kind get one
 * single quote in front; reading takes exactly one away again. Numbers are left alone, or `-5` would become a text.
 */
const runs = /^'*[=+\-@\t\r\n]/
const guarded = /^''*[=+\-@\t\r\n]/
const number = /^[+-]?\d+(?:[.,]\d+)?$/
/** The spreadsheet habit that keeps leading zeros: `="00123"`. */
const asText = /^="((?:[^"]|"")*)"$/

export const guard = (cell: string): string => (runs.test(cell) && !number.test(cell) ? `'${cell}` : cell)

export function unguard(cell: string): { readonly text: string; readonly formula: boolean } {
  if (guarded.test(cell)) return { text: cell.slice(1), formula: false }
  const kept = asText.exec(cell)
  if (kept) return { text: kept[1]!.replaceAll('""', '"'), formula: false }
  return { text: cell, formula: cell.startsWith('=') }
}
