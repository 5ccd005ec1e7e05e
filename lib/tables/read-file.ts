import { fieldOfHeading } from '../record/heading.ts'
import type { Names } from '../record/names.ts'
import { problem } from '../record/problem.ts'
import type { TextWord } from '../record/text-words.ts'
import { findHeadings } from './csv-dialect.ts'
import { frameOf, hearRows, readCsv, tableOf } from './csv-read.ts'
import type { Decoded } from './decode.ts'
import { detect } from './detect.ts'
import { decodingProblems, nothing, type FileRead } from './file-read.ts'
import { readJsonFile } from './read-json-file.ts'
import { readTable } from './read-table.ts'
import type { TableRow } from './table.ts'
import { readWorkbook } from './xlsx-read.ts'
import type { Sheet } from './xlsx-sheets.ts'

function readCsvFile(decoded: Decoded, names: Names, words: readonly TextWord[]): FileRead {
  const read = readCsv(decoded.text, names.fields)
  const frame = frameOf(read, words)
  const file = { kind: 'csv', encoding: decoded.encoding, delimiter: read.delimiter, sheet: null } as const
  const problems = [...decodingProblems(decoded), ...read.problems, ...frame.problems]
  return readTable(file, read.table, { ...frame, problems }, names, words)
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
  const framed = tableOf(rowsOf(chosen.sheet), chosen.heading.at)
  const frame = frameOf(framed, words)
  // Finds of a second sheet would go unplanned unseen, so that is a problem; notes beside the finds are not.
  const others = scored.filter((one) => one !== chosen)
  const unread = others.map((one) =>
    problem(
      isFinds(one) ? 'other-find-sheet' : 'other-sheet',
      { row: null },
      one.sheet.name,
      chosen.sheet.name,
    ),
  )
  const heard = others.flatMap(({ sheet }) => hearRows(rowsOf(sheet), `sheet ${sheet.name}`, words))
  const file = { kind: 'xlsx', encoding: null, delimiter: null, sheet: chosen.sheet.name } as const
  const all = { problems: [...unread, ...frame.problems], heard: [...heard, ...frame.heard] }
  return readTable(file, framed.table, all, names, words)
}

function rowsOf(sheet: Sheet): readonly TableRow[] {
  const formulas = Map.groupBy(sheet.formulas, ([row]) => row)
  return sheet.rows.map((cells, at) => {
    const live = formulas.get(at)
    return { row: at + 1, cells, ...(live ? { formulas: new Set(live.map(([, column]) => column)) } : {}) }
  })
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
