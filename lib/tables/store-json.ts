import { mendColumn, writeExtra } from '../record/extra-cell.ts'
import { cleanText } from '../record/clean-text.ts'
import { problem, type Problem } from '../record/problem.ts'
import { storeTableOf } from '../record/store-tables.ts'
import { readJson } from './json-read.ts'
import { headingKey, type StoreCell, type StoreFile, type StoreRow } from './store-file.ts'

/** Objects of one file may be of different tables: each is told by its own keys. */
export function jsonFile(text: string): StoreFile {
  const { items, broken, problems } = readJson(text)
  const refused: Problem[] = [...problems]
  const lost = broken.map(({ item, line, text: piece }) => ({ row: item, line, text: piece }))
  const sheets = new Map<string, { keys: Set<string>; rows: StoreRow[] }>()
  for (const { item, line, value } of items) {
    const raw = JSON.stringify(value)
    if (typeof value !== 'object' || value === null || Array.isArray(value)) {
      refused.push(problem('not-an-object', { row: item, line }, raw))
      lost.push({ row: item, line, text: raw })
      continue
    }
    const cells = new Map<string, StoreCell>()
    for (const [column, cell] of Object.entries(value)) {
      const written =
        typeof cell === 'object' && cell !== null ? writeExtra(cell) : cleanText(String(cell ?? ''))
      if (written !== '' && column !== mendColumn)
        cells.set(headingKey(column), { column, text: written, formula: false })
    }
    const keys = new Set(Object.keys(value).map(headingKey))
    const table = storeTableOf(keys) ?? ''
    const sheet = sheets.get(table) ?? { keys: new Set<string>(), rows: [] }
    sheets.set(table, sheet)
    for (const key of keys) sheet.keys.add(key)
    sheet.rows.push({ row: item, line, keys, cells, raw: [raw] })
  }
  return {
    kind: 'json',
    sheets: [...sheets.values()].map(({ keys, rows }) => ({
      name: null,
      headings: ['json'],
      headingRow: null,
      keys,
      rows,
    })),
    broken: lost,
    problems: refused,
  }
}
