import type { FieldNames } from '../record/names.ts'
import { hazardsIn } from '../record/hazard-words.ts'
import { problem, type Problem } from '../record/problem.ts'
import type { HazardSeen } from '../record/read-row.ts'
import type { TextWord } from '../record/text-words.ts'
import { unguard } from './csv-cell.ts'
import { dialectOf, type Delimiter } from './csv-dialect.ts'
import { csvRows } from './csv-rows.ts'
import { fieldOfHeading } from '../record/heading.ts'
import type { Table, TableRow } from './table.ts'

/** A table, and what stands above its headings. */
export interface FramedTable {
  readonly table: Table
  readonly above: readonly TableRow[]
}

export interface CsvRead extends FramedTable {
  readonly delimiter: Delimiter
  readonly problems: readonly Problem[]
}

/** A row's texts with the guard against formulas taken off, and where live formulas stand. */
export function csvRow(row: number, cells: readonly string[]): TableRow {
  const read = cells.map(unguard)
  const formulas = new Set(read.flatMap((cell, at) => (cell.formula ? [at] : [])))
  return { row, cells: read.map((cell) => cell.text), ...(formulas.size === 0 ? {} : { formulas }) }
}

/** A whole CSV text as a table: delimiter and headings found by what is in it, every row kept. */
export function readCsv(text: string, names: FieldNames): CsvRead {
  const lines = text.replace(/\r\n?/g, '\n')
  const dialect = dialectOf(lines, names)
  const body = dialect.delimiterLine ? lines.slice(lines.indexOf('\n') + 1) : lines
  const findAt = dialect.headings.findIndex((heading) => fieldOfHeading(heading, names) === 'find_number')
  const { rows, problems } = csvRows(body, {
    delimiter: dialect.delimiter,
    width: dialect.headings.length,
    findAt,
  })
  return {
    ...tableOf(
      rows.map((cells, at) => csvRow(at + 1, cells)),
      dialect.headingAt,
    ),
    delimiter: dialect.delimiter,
    problems,
  }
}

/** Rows under their headings; without known headings every row is data. */
export function tableOf(rows: readonly TableRow[], headingAt: number): FramedTable {
  const headings = rows[headingAt]
  return {
    table: {
      headings: headings?.cells ?? [],
      headingRow: headings?.row ?? 0,
      rows: rows.slice(headingAt + 1),
    },
    above: rows.slice(0, Math.max(headingAt, 0)),
  }
}

/** What is odd about a table whatever it holds, and what is dangerous in rows that are not read as finds. */
export interface Frame {
  readonly problems: readonly Problem[]
  readonly heard: readonly HazardSeen[]
}

/** Hazards named in rows that no find is read from, under the name of where they stand. */
export function hearRows(
  rows: readonly TableRow[],
  column: string,
  words: readonly TextWord[],
): readonly HazardSeen[] {
  return rows.flatMap(({ row, cells }) =>
    cells.flatMap((cell) => hazardsIn(cell, words).map((hazard) => ({ row, find: null, ...hazard, column }))),
  )
}

export function frameOf({ table, above }: FramedTable, words: readonly TextWord[]): Frame {
  const filled = above.filter((row) => row.cells.some((cell) => cell.trim() !== ''))
  const problems = filled.map((row) =>
    problem('rows-above-heading', { row: row.row }, row.cells.join(' ').trim()),
  )
  for (const { row, cells } of table.rows) {
    const beyond = cells.slice(table.headings.length).filter((cell) => cell.trim() !== '')
    if (table.headingRow > 0 && beyond.length > 0)
      problems.push(problem('too-many-cells', { row }, beyond.join(' | ')))
  }
  return { problems, heard: hearRows(filled, 'above the headings', words) }
}
