import type { FieldName } from '../record/fields.ts'
import type { Names } from '../record/names.ts'
import { problem, type Problem } from '../record/problem.ts'
import { dayOrderOf, type DayOrder } from '../record/read-date.ts'
import { dateFields } from '../record/read-record.ts'
import { readRow, type HazardSeen, type Reading } from '../record/read-row.ts'
import type { TextWord } from '../record/text-words.ts'
import { dialectOf, type Delimiter, type Dialect } from './csv-dialect.ts'
import { hearRows } from './csv-read.ts'
import { hidesFind } from './csv-rows.ts'
import { filledRows, headOf, type OpenFile } from './csv-walk.ts'
import { encodingOf, type Encoding } from './decode.ts'
import { givenRow } from './given-rows.ts'
import { matchHeadings, type Columns } from './headers.ts'

/** What the first reading learnt: enough to read every row by itself the second time. */
export interface CsvSurvey {
  readonly encoding: Encoding
  readonly delimiter: Delimiter
  readonly headings: readonly string[]
  readonly unknownColumns: readonly string[]
  readonly rows: number
  /** Of the file and its headings. */
  readonly problems: readonly Problem[]
  readonly dialect: Dialect
  readonly columns: Columns
  readonly dayOrders: ReadonlyMap<FieldName, DayOrder>
  readonly rowsOfFind: ReadonlyMap<string, number>
  /** Of every row: what is dangerous is told before the first plan. */
  readonly loudHazards: readonly HazardSeen[]
}

/** Lines that stand wholly within a cell; its last one does where the row ends with it. */
function insideLines(cell: string, endsRow: boolean): readonly string[] {
  if (!cell.includes('\n')) return []
  return cell.split('\n').slice(1, endsRow ? undefined : -1)
}

export const headingRow = (dialect: Dialect) => dialect.headingAt + 1

async function survey(
  open: OpenFile,
  encoding: Encoding,
  names: Names,
  words: readonly TextWord[],
): Promise<CsvSurvey | null> {
  const head = new TextDecoder(encoding).decode(await headOf(open), { stream: true }).replace(/\r\n?/g, '\n')
  const dialect = dialectOf(head, names.fields)
  const columns = matchHeadings(dialect.headings, names.fields, headingRow(dialect))
  const findAt = columns.columns.findIndex(({ use }) => use.kind === 'field' && use.field === 'find_number')
  if (findAt === -1) return null
  const shape = { delimiter: dialect.delimiter, width: dialect.headings.length, findAt }
  const dates = new Map(dateFields.map((field) => [field, new Set<string>()]))
  const rowsOfFind = new Map<string, number>()
  const loudHazards: HazardSeen[] = []
  const problems: Problem[] = []
  let rows = 0
  const reading: Reading = { names, words, dayOrders: new Map() }
  for await (const row of filledRows(open, encoding, dialect)) {
    if (row.row < headingRow(dialect)) {
      problems.push(problem('rows-above-heading', { row: row.row }, row.cells.join(' ').trim()))
      loudHazards.push(...hearRows([row], 'above the headings', words))
    }
    if (row.row <= headingRow(dialect)) continue
    if (row.cells.some((cell, at) => hidesFind(insideLines(cell, at === row.cells.length - 1), shape)))
      return null
    rows++
    const given = givenRow(row, columns.columns)
    for (const [field, seen] of dates) {
      const cell = given.cells.get(field)
      if (typeof cell?.value === 'string') seen.add(cell.value)
    }
    const read = readRow(given, reading)
    if (read.findNumber !== null) rowsOfFind.set(read.findNumber, (rowsOfFind.get(read.findNumber) ?? 0) + 1)
    loudHazards.push(...read.hazards)
    const beyond = row.cells.slice(dialect.headings.length).filter((cell) => cell.trim() !== '')
    if (beyond.length > 0) problems.push(problem('too-many-cells', { row: row.row }, beyond.join(' | ')))
  }
  if (rows === 0) return null
  const old = encoding === 'windows-1252' ? [problem('read-in-old-encoding', { row: null }, encoding)] : []
  return {
    encoding,
    delimiter: dialect.delimiter,
    headings: dialect.headings,
    unknownColumns: columns.unknown,
    rows,
    problems: [...old, ...columns.problems, ...problems],
    dialect,
    columns,
    dayOrders: new Map([...dates].map(([field, seen]) => [field, dayOrderOf(seen)])),
    rowsOfFind,
    loudHazards,
  }
}

/**
 * The first reading of a large CSV file. Null: it is not one that can be read row by row (no find number heading, no rows,
 * quoting broken, not UTF-8 though it seemed so) and must be read whole, where such things are mended.
 */
export async function surveyCsv(
  open: OpenFile,
  names: Names,
  words: readonly TextWord[],
): Promise<CsvSurvey | null> {
  const encoding = encodingOf((await headOf(open)).subarray(0, 4096))
  if (encoding === null) return null
  try {
    return await survey(open, encoding, names, words)
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : ''
    if (code.startsWith('CSV_') || code === 'ERR_ENCODING_INVALID_ENCODED_DATA') return null
    throw error
  }
}
