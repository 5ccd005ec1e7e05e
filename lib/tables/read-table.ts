import type { Names } from '../record/names.ts'
import { inFileOrder, problem, type Problem } from '../record/problem.ts'
import { readRecords } from '../record/read-record.ts'
import type { TextWord } from '../record/text-words.ts'
import type { Frame } from './csv-read.ts'
import { nothing, unreadableOf, type FileRead } from './file-read.ts'
import { givenRow, isBlank } from './given-rows.ts'
import { matchHeadings } from './headers.ts'
import type { Table } from './table.ts'

/** Without a find number heading all rows fail for the one same reason, which is said once. */
function saidOnce(problems: readonly Problem[], hasNumber: boolean): readonly Problem[] {
  return hasNumber ? problems : problems.filter((one) => one.code !== 'no-find-number')
}

type TableFile = Pick<FileRead, 'kind' | 'encoding' | 'delimiter' | 'sheet'>

/** A table of any kind as records, with everything that is odd about it. */
export function readTable(
  file: TableFile,
  table: Table,
  frame: Frame,
  names: Names,
  words: readonly TextWord[],
): FileRead {
  const columns = matchHeadings(table.headings, names.fields, table.headingRow)
  const filled = table.rows.filter((row) => !isBlank(row))
  const found = {
    ...nothing,
    ...file,
    headings: table.headings,
    unknownColumns: columns.unknown,
    loudHazards: frame.heard,
  }
  if (filled.length === 0) {
    return {
      ...found,
      problems: [
        ...frame.problems,
        problem('header-only', { row: table.headingRow }, table.headings.join(', ')),
      ],
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
      ...frame.problems,
      ...missing,
      ...columns.problems,
      ...saidOnce(read.problems, hasNumber),
    ]),
    unreadableRows: unreadableOf(
      read,
      [...missing, ...read.problems],
      new Map(filled.map((row) => [row.row, row.cells])),
    ),
    loudHazards: [...frame.heard, ...read.loudHazards],
  }
}
