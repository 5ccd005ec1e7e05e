import { parse } from 'csv-parse/browser/esm/sync'
import { cleanText } from '../record/clean-text.ts'
import { nameKey } from '../record/likeness.ts'
import { boxColumns, roomColumns, type BoxGiven, type PlaceColumn, type RoomGiven } from '../record/places.ts'
import { problem, type Problem } from '../record/problem.ts'
import { readDate } from '../record/read-date.ts'
import { unguard } from './csv-cell.ts'
import { delimiters } from './csv-dialect.ts'
import { detect } from './detect.ts'
import { readWorkbook } from './xlsx-read.ts'

/** The rooms or the boxes of a store, as a file gives them; which of the two is told by its headings. */
export interface PlacesRead {
  readonly rooms: readonly RoomGiven[]
  readonly boxes: readonly BoxGiven[]
  readonly problems: readonly Problem[]
}

type Cells = Readonly<Record<string, string>>

interface Rows {
  readonly rows: readonly { readonly row: number; readonly cells: Cells }[]
  readonly problems: readonly Problem[]
}

const failed = (code: Problem['code'], found: string): Rows => ({
  rows: [],
  problems: [problem(code, { row: null }, found)],
})

/** Headings over cells; `Gel kg` and `gel_kg` are one heading. */
function underHeadings(table: readonly (readonly string[])[]): Rows {
  const at = table.findIndex((cells) => cells.filter((cell) => cell.trim() !== '').length > 1)
  if (at === -1) return failed('not-a-table', 'text')
  const headings = table[at]!.map((heading) => nameKey(heading).replaceAll('-', '_'))
  const rows = table.slice(at + 1).flatMap((values, below) => {
    const filled = headings.flatMap((heading, place) => {
      const text = cleanText(unguard(values[place] ?? '').text)
      return heading === '' || text === '' ? [] : [[heading, text] as const]
    })
    return filled.length === 0 ? [] : [{ row: at + below + 2, cells: Object.fromEntries(filled) }]
  })
  return rows.length === 0 ? failed('header-only', headings.join(', ')) : { rows, problems: [] }
}

function csvTable(text: string): readonly (readonly string[])[] {
  const top = text.slice(0, text.indexOf('\n') + 1 || text.length)
  const delimiter = delimiters.toSorted((a, b) => top.split(b).length - top.split(a).length)[0]!
  return parse(text, { delimiter, relax_column_count: true, relax_quotes: true, bom: true })
}

function jsonRows(text: string): Rows {
  try {
    const value: unknown = JSON.parse(text)
    const items = Array.isArray(value) ? (value as readonly unknown[]) : [value]
    const rows = items.map((item, at) => {
      const entries = Object.entries((item ?? {}) as Readonly<Record<string, unknown>>).filter(
        ([, cell]) => cell !== null,
      )
      return {
        row: at + 1,
        cells: Object.fromEntries(
          entries.map(([key, cell]) => [nameKey(key).replaceAll('-', '_'), cleanText(String(cell))]),
        ),
      }
    })
    return { rows, problems: [] }
  } catch {
    return failed('broken-json', text.slice(0, 40))
  }
}

async function rowsOf(bytes: Uint8Array): Promise<Rows> {
  const content = detect(bytes)
  switch (content.kind) {
    case 'empty':
      return failed('empty-file', '')
    case 'other':
      return failed('not-a-table', content.what)
    case 'json':
      return jsonRows(content.decoded.text)
    case 'text':
      return underHeadings(csvTable(content.decoded.text))
    case 'xlsx': {
      const workbook = await readWorkbook(bytes)
      return workbook.ok
        ? underHeadings(workbook.sheets[0]?.rows ?? [])
        : failed(workbook.code, workbook.found)
    }
  }
}

type Read =
  | { readonly ok: true; readonly value: string | number }
  | { readonly ok: false; readonly code: Problem['code'] }

function readCell(kind: PlaceColumn, text: string): Read {
  if (kind === 'text') return { ok: true, value: text }
  if (kind === 'date') {
    const date = readDate(text, 'undecided')
    return date.ok ? { ok: true, value: date.date } : { ok: false, code: date.code }
  }
  const plain = /^-?\d+(?:[.,]\d+)?$/.exec(text.replace(/\s*(?:%|°c|l|kg)$/i, ''))
  return plain ? { ok: true, value: Number(plain[0].replace(',', '.')) } : { ok: false, code: 'not-a-number' }
}

function place(
  columns: Readonly<Record<string, PlaceColumn>>,
  row: number,
  cells: Cells,
  problems: Problem[],
): Record<string, unknown> {
  const read: Record<string, unknown> = {}
  const extra: Record<string, string> = {}
  for (const [heading, text] of Object.entries(cells)) {
    const kind = columns[heading]
    const value = kind === undefined ? null : readCell(kind, text)
    if (value?.ok === true) read[heading] = value.value
    else extra[heading] = text
    if (value?.ok === false) problems.push(problem(value.code, { row, column: heading }, text))
  }
  return Object.keys(extra).length === 0 ? read : { ...read, extra }
}

/** Rooms or boxes from CSV, XLSX or JSON. A row without its name is a problem and left out; the others are read. */
export async function readPlaces(bytes: Uint8Array): Promise<PlacesRead> {
  const { rows, problems: framing } = await rowsOf(bytes)
  const problems = [...framing]
  const areBoxes = rows.some(({ cells }) => cells['box'] !== undefined)
  const [name, columns] = areBoxes ? ['box', boxColumns] : ['room', roomColumns]
  const read = rows.flatMap(({ row, cells }) => {
    if (cells[name] !== undefined) return [place(columns, row, cells, problems)]
    problems.push(problem('no-place-name', { row, column: name }, Object.values(cells).join(' | ')))
    return []
  })
  return areBoxes
    ? { rooms: [], boxes: read as unknown as readonly BoxGiven[], problems }
    : { rooms: read as unknown as readonly RoomGiven[], boxes: [], problems }
}
