import { mendColumn } from '../record/extra-cell.ts'
import { cleanText } from '../record/clean-text.ts'
import { problem } from '../record/problem.ts'
import { storeColumns, storeTables } from '../record/store-tables.ts'
import { csvRow } from './csv-read.ts'
import { delimiters, type Delimiter } from './csv-dialect.ts'
import { csvRows } from './csv-rows.ts'
import { detect } from './detect.ts'
import { decodingProblems } from './file-read.ts'
import { columnLetters } from './headers.ts'
import {
  failed,
  headingKey,
  nothing,
  type StoreCell,
  type StoreFile,
  type StoreRow,
  type StoreSheet,
} from './store-file.ts'
import { jsonFile } from './store-json.ts'
import type { TableRow } from './table.ts'
import { readWorkbook } from './xlsx-read.ts'
import type { Sheet } from './xlsx-sheets.ts'

const known = new Set(storeTables.flatMap((table) => Object.keys(storeColumns[table])))
const searched = 20

/** Place of the row that is most of all made of headings; -1 where none is known. */
function headingAt(rows: readonly TableRow[]): number {
  let best = { at: -1, score: 0 }
  for (const [at, { cells }] of rows.slice(0, searched).entries()) {
    const score = new Set(cells.map(headingKey).filter((key) => known.has(key))).size
    if (score > best.score) best = { at, score }
  }
  return best.at
}

function sheetOf(name: string | null, rows: readonly TableRow[]): StoreSheet | null {
  const at = headingAt(rows)
  if (at === -1) return null
  const headings = rows[at]!.cells.map(cleanText)
  const keys = headings.map((heading, place) =>
    heading === '' ? `column_${columnLetters(place).toLowerCase()}` : headingKey(heading),
  )
  const all = new Set(keys)
  const below = rows.slice(at + 1).flatMap((row): StoreRow[] => {
    const cells = new Map<string, StoreCell>()
    for (const [place, value] of row.cells.entries()) {
      const text = cleanText(value)
      const heading = headings[place] ?? ''
      if (text === '' || heading === mendColumn) continue
      const column = heading === '' ? `column ${columnLetters(place)}` : heading
      const key = keys[place] ?? headingKey(column)
      // A second column of the same heading is kept beside the first, under a name of its own.
      const again = cells.has(key)
      cells.set(again ? `${key}_2` : key, {
        column: again ? `${column} (2)` : column,
        text,
        formula: row.formulas?.has(place) ?? false,
      })
    }
    if (cells.size === 0) return []
    return [{ row: row.row, ...(name === null ? {} : { sheet: name }), keys: all, cells, raw: row.cells }]
  })
  return { name, headings, headingRow: rows[at]!.row, keys: all, rows: below }
}

const noTable = (rows: readonly TableRow[]): string =>
  rows.find(({ cells }) => cells.filter((cell) => cell.trim() !== '').length > 1)?.cells.join(', ') ?? ''

function csvFile(text: string): StoreFile {
  const lines = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n')
  const said = /^sep=([,;\t|])\n/i.exec(lines)
  const body = said ? lines.slice(said[0].length) : lines
  const tried = (said ? [said[1] as Delimiter] : delimiters).map((delimiter) => {
    const top = body.split('\n', searched).map((line, at) => ({ row: at + 1, cells: line.split(delimiter) }))
    const at = headingAt(top)
    const score = at === -1 ? 0 : top[at]!.cells.filter((cell) => known.has(headingKey(cell))).length
    return { delimiter, score, width: at === -1 ? 0 : top[at]!.cells.length, cells: top[at]?.cells ?? [] }
  })
  const best = tried.toSorted((a, b) => b.score - a.score || b.width - a.width)[0]!
  // The name of a row tells a quote that was never closed from a cell of several lines.
  const findAt = best.cells.findIndex((cell) => ['box', 'room', 'serial'].includes(headingKey(cell)))
  const { rows, problems } = csvRows(body, { delimiter: best.delimiter, width: best.width, findAt })
  const table = rows.map((cells, at) => csvRow(at + 1, cells))
  const sheet = sheetOf(null, table)
  if (!sheet) {
    const found = noTable(table)
    return failed(found === '' ? 'not-a-table' : 'not-of-the-store', found || 'text', 'csv')
  }
  return { ...nothing, kind: 'csv', sheets: [sheet], problems }
}

function sheetRows({ rows, formulas }: Sheet): readonly TableRow[] {
  const live = Map.groupBy(formulas, ([row]) => row)
  return rows.map((cells, at) => {
    const here = live.get(at)
    return { row: at + 1, cells, ...(here ? { formulas: new Set(here.map(([, column]) => column)) } : {}) }
  })
}

async function workbookFile(bytes: Uint8Array): Promise<StoreFile> {
  const workbook = await readWorkbook(bytes)
  if (!workbook.ok) return failed(workbook.code, workbook.found, 'xlsx')
  const filled = workbook.sheets.filter(({ rows }) =>
    rows.some((row) => row.some((cell) => cell.trim() !== '')),
  )
  const read = filled.map((sheet) => ({ sheet, table: sheetOf(sheet.name, sheetRows(sheet)) }))
  const tables = read.flatMap(({ sheet, table }) => (table ? [{ sheet, table }] : []))
  if (tables.length === 0) {
    const found = noTable(filled.flatMap(sheetRows))
    return failed(filled.length === 0 ? 'empty-file' : 'not-of-the-store', found || 'xlsx', 'xlsx')
  }
  // The rows of an only sheet need no name beside them.
  const only = tables.length === 1 ? sheetOf(null, sheetRows(tables[0]!.sheet)) : null
  const names = tables.map(({ sheet }) => sheet.name).join(', ')
  return {
    ...nothing,
    kind: 'xlsx',
    sheets: only ? [only] : tables.map(({ table }) => table),
    problems: read.flatMap(({ sheet, table }) =>
      table === null ? [problem('other-sheet', { row: null }, sheet.name, names)] : [],
    ),
  }
}

/** A file of the store's tables as rows under headings, whatever kind of file it is. */
export async function readStoreFile(bytes: Uint8Array): Promise<StoreFile> {
  const content = detect(bytes)
  switch (content.kind) {
    case 'empty':
      return failed('empty-file', '')
    case 'other':
      return failed('not-a-table', content.what)
    case 'xlsx':
      return workbookFile(bytes)
    case 'json':
      return jsonFile(content.decoded.text)
    case 'text': {
      const file = csvFile(content.decoded.text)
      return { ...file, problems: [...decodingProblems(content.decoded), ...file.problems] }
    }
  }
}
