import type { FieldName } from '../record/fields.ts'
import type { GivenRow } from '../record/given.ts'
import { fieldOfHeading } from '../record/heading.ts'
import type { Names } from '../record/names.ts'
import { inFileOrder, problem, type Problem } from '../record/problem.ts'
import { givenOfJson } from '../record/read-json.ts'
import { readRecords, type RecordsRead } from '../record/read-record.ts'
import type { HazardSeen } from '../record/read-row.ts'
import type { ConditionRecord } from '../record/record.ts'
import type { TextWord } from '../record/text-words.ts'
import { hazardsIn } from '../record/hazard-words.ts'
import { findHeadings, type Delimiter } from './csv-dialect.ts'
import { frameProblems, readCsv, tableOf } from './csv-read.ts'
import type { Decoded, Encoding } from './decode.ts'
import { detect } from './detect.ts'
import { givenRow, isBlank } from './given-rows.ts'
import { matchHeadings } from './headers.ts'
import { readJson } from './json-read.ts'
import type { Table, TableRow } from './table.ts'
import { readWorkbook } from './xlsx-read.ts'

/** A row that gave no record, as it stood, to be saved and mended. */
export interface UnreadableRow {
  readonly row: number
  readonly line: number | null
  readonly cells: readonly string[]
  readonly problems: readonly Problem[]
}

export interface FileRead {
  readonly kind: 'csv' | 'xlsx' | 'json' | 'none'
  readonly encoding: Encoding | null
  readonly delimiter: Delimiter | null
  /** Name of the sheet that was read. */
  readonly sheet: string | null
  /** As they stand in the file; for JSON the one heading `json`. */
  readonly headings: readonly string[]
  readonly unknownColumns: readonly string[]
  readonly records: readonly ConditionRecord[]
  readonly problems: readonly Problem[]
  readonly unreadableRows: readonly UnreadableRow[]
  readonly loudHazards: readonly HazardSeen[]
}

const nothing: FileRead = {
  kind: 'none',
  encoding: null,
  delimiter: null,
  sheet: null,
  headings: [],
  unknownColumns: [],
  records: [],
  problems: [],
  unreadableRows: [],
  loudHazards: [],
}

function decodingProblems({ encoding, undecodable }: Decoded): readonly Problem[] {
  const old = encoding === 'windows-1252' ? [problem('read-in-old-encoding', { row: null }, encoding)] : []
  return undecodable > 0 ? [...old, problem('undecodable-text', { row: null }, String(undecodable))] : old
}

/** Rows that gave nothing, each with why. */
function unreadableOf(
  read: RecordsRead,
  problems: readonly Problem[],
  cellsOf: ReadonlyMap<number, readonly string[]>,
): readonly UnreadableRow[] {
  const byRow = Map.groupBy(problems, (one) => one.row)
  return [...read.unreadable]
    .toSorted((a, b) => a - b)
    .map((row) => {
      const own = byRow.get(row) ?? []
      return { row, line: own[0]?.line ?? null, cells: cellsOf.get(row) ?? [], problems: own }
    })
}

/** Without a find number heading all rows fail for the one same reason, which is said once. */
function saidOnce(problems: readonly Problem[], hasNumber: boolean): readonly Problem[] {
  return hasNumber ? problems : problems.filter((one) => one.code !== 'no-find-number')
}

type TableFile = Pick<FileRead, 'kind' | 'encoding' | 'delimiter' | 'sheet'>

function readTable(
  file: TableFile,
  table: Table,
  framing: readonly Problem[],
  names: Names,
  words: readonly TextWord[],
): FileRead {
  const columns = matchHeadings(table.headings, names.fields, table.headingRow)
  const filled = table.rows.filter((row) => !isBlank(row))
  const found = { ...nothing, ...file, headings: table.headings, unknownColumns: columns.unknown }
  if (filled.length === 0) {
    return {
      ...found,
      problems: [...framing, problem('header-only', { row: table.headingRow }, table.headings.join(', '))],
    }
  }
  const hasNumber = columns.columns.some(({ use }) => use.kind === 'field' && use.field === 'find_number')
  const missing = hasNumber
    ? []
    : [problem('no-find-number-column', { row: table.headingRow || null }, table.headings.join(', '))]
  const read = readRecords(
    filled.map((row) => givenRow(row, columns.columns)),
    names,
    words,
  )
  return {
    ...found,
    records: read.records,
    problems: inFileOrder([
      ...framing,
      ...missing,
      ...columns.problems,
      ...saidOnce(read.problems, hasNumber),
    ]),
    unreadableRows: unreadableOf(
      read,
      [...missing, ...read.problems],
      new Map(filled.map((row) => [row.row, row.cells])),
    ),
    loudHazards: read.loudHazards,
  }
}

function readCsvFile(decoded: Decoded, names: Names, words: readonly TextWord[]): FileRead {
  const { table, above, delimiter, problems } = readCsv(decoded.text, names.fields)
  const framing = [...decodingProblems(decoded), ...problems, ...frameProblems(table, above)]
  return readTable(
    { kind: 'csv', encoding: decoded.encoding, delimiter, sheet: null },
    table,
    framing,
    names,
    words,
  )
}

async function readWorkbookFile(
  bytes: Uint8Array,
  names: Names,
  words: readonly TextWord[],
): Promise<FileRead> {
  const workbook = await readWorkbook(bytes)
  if (!workbook.ok)
    return { ...nothing, kind: 'xlsx', problems: [problem(workbook.code, { row: null }, workbook.found)] }
  const sheets = workbook.sheets.filter((sheet) => sheet.rows.some((row) => row.some((cell) => cell !== '')))
  const scored = sheets.map((sheet) => ({ sheet, heading: findHeadings(sheet.rows, names.fields) }))
  const isFinds = ({ sheet, heading }: (typeof scored)[number]) =>
    (sheet.rows[heading.at] ?? []).some((cell) => fieldOfHeading(cell, names.fields) === 'find_number')
  const chosen = scored.find(isFinds) ?? scored[0]
  if (!chosen) return { ...nothing, kind: 'xlsx', problems: [problem('empty-file', { row: null }, 'xlsx')] }
  const formulas = Map.groupBy(chosen.sheet.formulas, ([row]) => row)
  const rows = chosen.sheet.rows.map((cells, at): TableRow => {
    const live = formulas.get(at)
    return { row: at + 1, cells, ...(live ? { formulas: new Set(live.map(([, column]) => column)) } : {}) }
  })
  const { table, above } = tableOf(rows, chosen.heading.at)
  const others = sheets
    .filter((sheet) => sheet !== chosen.sheet)
    .map((sheet) => problem('other-sheet', { row: null }, sheet.name, chosen.sheet.name))
  const file = { kind: 'xlsx', encoding: null, delimiter: null, sheet: chosen.sheet.name } as const
  return readTable(file, table, [...others, ...frameProblems(table, above)], names, words)
}

function readJsonFile(decoded: Decoded, names: Names, words: readonly TextWord[]): FileRead {
  const { items, broken, problems } = readJson(decoded.text)
  const fieldOf = (key: string): FieldName | null => fieldOfHeading(key, names.fields)
  const given = items.map(({ value, item, line }) => ({
    item,
    line,
    value,
    ...givenOfJson(value, item, line, fieldOf),
  }))
  const rows: readonly GivenRow[] = given.flatMap((one) => one.rows)
  const read = readRecords(rows, names, words)
  const refused = [...problems, ...given.flatMap((one) => one.problems)]
  const lost = [
    ...broken,
    ...given
      .filter((one) => one.rows.length === 0)
      .map((one) => ({ ...one, text: JSON.stringify(one.value) })),
  ]
  const heard = lost.flatMap(({ item, line, text }): HazardSeen[] =>
    hazardsIn(text.replace(/[{}[\]":]/g, ' , '), words).map((hazard) => ({
      row: item,
      line,
      find: null,
      ...hazard,
      column: 'json',
    })),
  )
  const texts = new Map([
    ...items.map((one) => [one.item, [JSON.stringify(one.value)]] as const),
    ...lost.map((one) => [one.item, [one.text]] as const),
  ])
  const unreadable = { ...read, unreadable: new Set([...read.unreadable, ...lost.map((one) => one.item)]) }
  const all = inFileOrder([...decodingProblems(decoded), ...refused, ...read.problems])
  const extras = new Set(
    rows.flatMap((row) => [...Object.keys(row.findExtra), ...Object.keys(row.partExtra)]),
  )
  return {
    ...nothing,
    kind: 'json',
    encoding: decoded.encoding,
    headings: ['json'],
    unknownColumns: [...extras],
    records: read.records,
    problems: items.length + broken.length === 0 ? [problem('empty-file', { row: null }, 'json')] : all,
    unreadableRows: unreadableOf(unreadable, all, texts),
    loudHazards: [...read.loudHazards, ...heard],
  }
}

/** Any file a person gives: what it is is told by its content, what is in it is read as far as it can be. */
export async function readFile(
  bytes: Uint8Array,
  names: Names,
  words: readonly TextWord[],
): Promise<FileRead> {
  const content = detect(bytes)
  switch (content.kind) {
    case 'empty':
      return { ...nothing, problems: [problem('empty-file', { row: null }, '')] }
    case 'other':
      return { ...nothing, problems: [problem('not-a-table', { row: null }, content.what)] }
    case 'xlsx':
      return readWorkbookFile(bytes, names, words)
    case 'json':
      return readJsonFile(content.decoded, names, words)
    case 'text':
      return readCsvFile(content.decoded, names, words)
  }
}
