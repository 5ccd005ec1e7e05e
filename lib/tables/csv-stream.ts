import { parse } from 'csv-parse'
import { Readable } from 'node:stream'
import type { FieldName } from '../record/fields.ts'
import { gathering } from '../record/gather.ts'
import type { Names } from '../record/names.ts'
import { problem, type Problem } from '../record/problem.ts'
import { dayOrderOf, type DayOrder } from '../record/read-date.ts'
import { dateFields, withoutNumber } from '../record/read-record.ts'
import { readRow, type HazardSeen, type Reading } from '../record/read-row.ts'
import type { ConditionRecord } from '../record/record.ts'
import type { TextWord } from '../record/text-words.ts'
import { dialectOf, type Delimiter, type Dialect } from './csv-dialect.ts'
import { csvRow } from './csv-read.ts'
import { hidesFind } from './csv-rows.ts'
import { encodingOf, type Encoding } from './decode.ts'
import { givenRow, isBlank } from './given-rows.ts'
import { matchHeadings, type Columns } from './headers.ts'
import type { UnreadableRow } from './read-file.ts'
import type { TableRow } from './table.ts'

/** Opens the file anew from its beginning; it is read twice. */
export type OpenFile = () => AsyncIterable<Uint8Array>

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

/** What a stretch of rows gave, in file order. */
export interface CsvBatch {
  readonly records: readonly ConditionRecord[]
  readonly problems: readonly Problem[]
  readonly unreadableRows: readonly UnreadableRow[]
}

const headBytes = 256 * 1024
const rowsAtOnce = 500

async function headOf(open: OpenFile): Promise<Uint8Array> {
  const pieces: Uint8Array[] = []
  let size = 0
  for await (const piece of open()) {
    pieces.push(piece)
    size += piece.length
    if (size >= headBytes) break
  }
  return Buffer.concat(pieces).subarray(0, headBytes)
}

async function* texts(open: OpenFile, encoding: Encoding): AsyncGenerator<string> {
  const decoder = new TextDecoder(encoding, { fatal: encoding === 'utf-8' })
  // A carriage return at the end of a piece may belong to the line feed that opens the next.
  let held = ''
  for await (const piece of open()) {
    const text = held + decoder.decode(piece, { stream: true })
    held = text.endsWith('\r') ? '\r' : ''
    yield text.slice(0, text.length - held.length).replace(/\r\n?/g, '\n')
  }
  yield (held + decoder.decode()).replace(/\r\n?/g, '\n')
}

/** Rows as csv-parse gives them; it throws where quoting is broken. */
function rowsOf(open: OpenFile, encoding: Encoding, dialect: Dialect): AsyncIterable<readonly string[]> {
  const parser = parse({
    delimiter: dialect.delimiter,
    relax_column_count: true,
    record_delimiter: '\n',
    from_line: dialect.delimiterLine ? 2 : 1,
  })
  const source = Readable.from(texts(open, encoding))
  source.on('error', (error) => parser.destroy(error))
  return source.pipe(parser) as AsyncIterable<readonly string[]>
}

/** Both readings walk the same rows, numbered as a spreadsheet shows them; blank ones are left out. */
async function* filledRows(open: OpenFile, encoding: Encoding, dialect: Dialect): AsyncGenerator<TableRow> {
  let row = 0
  for await (const cells of rowsOf(open, encoding, dialect)) {
    const read = csvRow(++row, cells)
    if (!isBlank(read)) yield read
  }
}

/** Lines that stand wholly within a cell; its last one does where the row ends with it. */
function insideLines(cell: string, endsRow: boolean): readonly string[] {
  if (!cell.includes('\n')) return []
  return cell.split('\n').slice(1, endsRow ? undefined : -1)
}

const headingRow = (dialect: Dialect) => dialect.headingAt + 1

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
    if (row.row < headingRow(dialect))
      problems.push(problem('rows-above-heading', { row: row.row }, row.cells.join(' ').trim()))
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

/** The second reading: records as they are complete, in the order in which they begin, holding only finds still open. */
export async function* streamCsv(
  open: OpenFile,
  surveyed: CsvSurvey,
  names: Names,
): AsyncGenerator<CsvBatch> {
  const reading: Reading = { names, words: null, dayOrders: surveyed.dayOrders }
  const gather = gathering(surveyed.rowsOfFind)
  let batch = {
    records: [] as ConditionRecord[],
    problems: [] as Problem[],
    unreadableRows: [] as UnreadableRow[],
  }
  const lost = (row: number, cells: readonly string[], problems: readonly Problem[]) =>
    batch.unreadableRows.push({ row, line: null, cells, problems })
  // Only rows of finds that are still open: those whose material may yet turn out to be missing.
  const held = new Map<number, readonly string[]>()
  let rows = 0
  for await (const row of filledRows(open, surveyed.encoding, surveyed.dialect)) {
    if (row.row <= headingRow(surveyed.dialect)) continue
    const read = readRow(givenRow(row, surveyed.columns.columns), reading)
    batch.problems.push(...read.problems)
    if (read.findNumber === null) {
      const missing = withoutNumber(read)
      batch.problems.push(missing)
      lost(row.row, row.cells, [missing, ...read.problems])
    } else if (read.part === null) held.set(row.row, row.cells)
    for (const one of gather.add(read)) {
      batch.problems.push(...one.problems)
      if (one.record) batch.records.push(one.record)
      for (const member of one.rows) {
        const cells = held.get(member.row)
        if (one.record === null && cells)
          lost(member.row, cells, [
            ...one.problems.filter((each) => each.row === member.row),
            ...member.problems,
          ])
        held.delete(member.row)
      }
    }
    if (++rows % rowsAtOnce === 0) {
      yield batch
      batch = { records: [], problems: [], unreadableRows: [] }
    }
  }
  yield batch
}
