import { fields, type FieldName } from './fields.ts'
import { textsWithin } from './free-text.ts'
import type { GivenCell, GivenRow } from './given.ts'
import { hazardOfColumn, hazardsIn } from './hazard-words.ts'
import type { Names } from './names.ts'
import { problem, type Problem, type Where } from './problem.ts'
import type { CellRead, FieldValue } from './cell-read.ts'
import { readCell } from './read-cell.ts'
import type { DayOrder } from './read-date.ts'
import type { TextWord } from './text-words.ts'

/** What the reader needs to know beside the rows. */
export interface Reading {
  readonly names: Names
  /** Null where the hazards of these rows have been heard before. */
  readonly words: readonly TextWord[] | null
  /** For each date field, which order its column has settled on. */
  readonly dayOrders: ReadonlyMap<FieldName, DayOrder>
}

/** A hazard named anywhere in a row; said aloud whether or not the row gives a record. */
export interface HazardSeen {
  readonly row: number
  readonly line?: number
  readonly find: string | null
  readonly hazard: string
  readonly word: string
  readonly column: string
}

export interface PartRead {
  readonly values: ReadonlyMap<FieldName, FieldValue>
  readonly unread: ReadonlyMap<FieldName, string>
  readonly extra: Readonly<Record<string, unknown>>
}

/** One row with every cell read by itself, before rows of one find are put together. */
export interface RowRead {
  readonly row: number
  readonly line?: number
  readonly findNumber: string | null
  readonly values: ReadonlyMap<FieldName, FieldValue>
  readonly unread: ReadonlyMap<FieldName, string>
  readonly extra: Readonly<Record<string, unknown>>
  /** Null where the row tells nothing of a component; what stood under unknown headings is then `loose`. */
  readonly part: PartRead | null
  readonly loose: Readonly<Record<string, unknown>>
  /** The heading that each field stood under. */
  readonly columns: ReadonlyMap<FieldName, string>
  readonly problems: readonly Problem[]
  readonly hazards: readonly HazardSeen[]
}

/** Where a problem of this row, or of one field of it, stands. */
export const whereOf = (row: RowRead, field?: FieldName): Where => ({
  row: row.row,
  ...(row.line === undefined ? {} : { line: row.line }),
  ...(field === undefined ? {} : { field, column: row.columns.get(field) ?? null }),
  ...(row.findNumber === null ? {} : { find: row.findNumber }),
})

const worded: readonly string[] = ['text', 'texts', 'open-choice', 'treatments']

/** The texts of a cell that may name a hazard. A choice that was understood means only what its id says. */
function spoken(field: FieldName, cell: GivenCell, read: CellRead): readonly string[] {
  const loud = worded.includes(fields[field].kind) || field === 'hazards_noticed' || read.unread !== undefined
  return loud ? textsWithin(cell.value) : []
}

export function readRow(given: GivenRow, reading: Reading): RowRead {
  const { row } = given
  const line = given.line === undefined ? {} : { line: given.line }
  const reads = [...given.cells].map(([field, cell]) => ({
    field,
    cell,
    read: readCell(field, cell, reading.names, reading.dayOrders.get(field) ?? 'undecided'),
  }))
  const number = reads.find(({ field }) => field === 'find_number')?.read.value
  const find = typeof number === 'string' ? number : null
  const problems: Problem[] = []
  const hazards: HazardSeen[] = []
  const { words } = reading
  const hear = (texts: readonly string[], column: string, ticked: boolean) => {
    for (const text of words === null ? [] : texts) {
      for (const hazard of hazardsIn(text, words!, ticked))
        hazards.push({ row, ...line, find, ...hazard, column })
    }
  }
  const own = { values: new Map<FieldName, FieldValue>(), unread: new Map<FieldName, string>() }
  const part = { values: new Map<FieldName, FieldValue>(), unread: new Map<FieldName, string>() }
  const where = { row, ...line, ...(find === null ? {} : { find }) }
  for (const { field, cell, read } of reads) {
    const level = fields[field].level === 'find' ? own : part
    if (read.value !== undefined) level.values.set(field, read.value)
    if (read.unread !== undefined) level.unread.set(field, read.unread)
    for (const { code, found, suggestion } of read.problems) {
      problems.push(problem(code, { ...where, column: cell.column, field }, found, suggestion))
    }
    hear(spoken(field, cell, read), cell.column, field === 'hazards_noticed')
  }
  for (const extra of [given.findExtra, given.partExtra]) {
    for (const [column, value] of Object.entries(extra)) {
      hear(textsWithin(value), column, false)
      const ticked = words === null ? [] : hazardOfColumn(column, value)
      hazards.push(...ticked.map((hazard) => ({ row, ...line, find, ...hazard, column })))
    }
  }
  const told = part.values.size + part.unread.size > 0
  return {
    row,
    ...line,
    findNumber: find,
    ...own,
    extra: given.findExtra,
    part: told ? { ...part, extra: given.partExtra } : null,
    loose: told ? {} : given.partExtra,
    columns: new Map(reads.map(({ field, cell }) => [field, cell.column])),
    problems,
    hazards,
  }
}
