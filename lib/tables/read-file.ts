import { fieldOfHeading } from '../record/heading.ts'
import type { Names } from '../record/names.ts'
import { problem } from '../record/problem.ts'
import type { TextWord } from '../record/text-words.ts'
import { findHeadings } from './csv-dialect.ts'
import { frameProblems, readCsv, tableOf } from './csv-read.ts'
import type { Decoded } from './decode.ts'
import { detect } from './detect.ts'
import { decodingProblems, nothing, type FileRead } from './file-read.ts'
import { readJsonFile } from './read-json-file.ts'
import { readTable } from './read-table.ts'
import type { TableRow } from './table.ts'
import { readWorkbook } from './xlsx-read.ts'

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
