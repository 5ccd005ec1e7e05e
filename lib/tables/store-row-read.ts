import { hazardOfColumn, hazardsIn } from '../record/hazard-words.ts'
import { closest, nameKey } from '../record/likeness.ts'
import { problem, type Problem, type ProblemCode } from '../record/problem.ts'
import { dayOrderOf, type DayOrder } from '../record/read-date.ts'
import type { HazardSeen } from '../record/read-row.ts'
import { eventColumns, type TabledKind } from '../record/store-diary.ts'
import { storeEnds } from '../record/store-quantities.ts'
import { storeColumns, storeKeys, type StoreTable } from '../record/store-tables.ts'
import type { TextWord } from '../record/text-words.ts'
import type { UnreadableRow } from './file-read.ts'
import { readStoreCell } from './store-cell.ts'
import type { StoreRow, StoreSheet } from './store-file.ts'
import type { Told } from './place-table.ts'

interface RowsRead {
  readonly told: readonly Told<unknown>[]
  readonly problems: readonly Problem[]
  readonly unreadable: readonly UnreadableRow[]
  readonly heard: readonly HazardSeen[]
}

/** Misspelled headings of a table by what they were probably meant for; each said aloud. */
function guessed(table: StoreTable, sheet: StoreSheet) {
  const columns = Object.keys(storeColumns[table])
  const free = columns.filter((column) => !sheet.keys.has(column))
  const meant = new Map<string, string>()
  const unknown: string[] = []
  for (const key of sheet.keys) {
    if (columns.includes(key)) continue
    const near = closest(
      nameKey(key),
      free.filter((column) => !meant.has(column)).map((column) => ({ key: nameKey(column), column })),
    )
    // A unit at the end must be the right one: `gel_g` is no slip of `gel_kg`.
    const unit = near !== null && storeColumns[table][near.column] === 'number'
    const fits = near !== null && (!unit || near.key.split('-').at(-1) === nameKey(key).split('-').at(-1))
    if (fits && key.length >= 5) meant.set(key, near.column)
    else unknown.push(key)
  }
  return { meant, unknown }
}

function dayOrder(table: StoreTable, rows: readonly StoreRow[]): DayOrder {
  const dates = Object.entries(storeColumns[table]).flatMap(([column, kind]) =>
    kind === 'date' ? [column] : [],
  )
  return dayOrderOf(rows.flatMap(({ cells }) => dates.flatMap((column) => cells.get(column)?.text ?? [])))
}

/** What the columns of one row say; `extra` holds what has no column here and what was not understood. */
interface Cells {
  readonly values: Record<string, string | number>
  readonly extra: Record<string, string>
}

function hear(row: StoreRow, words: readonly TextWord[]): readonly HazardSeen[] {
  const { row: at, line } = row
  return [...row.cells.values()].flatMap(({ column, text }) =>
    [...hazardsIn(text, words), ...(words.length === 0 ? [] : hazardOfColumn(column, text))].map(
      (hazard) => ({
        row: at,
        ...(line === undefined ? {} : { line }),
        find: null,
        ...hazard,
        column,
      }),
    ),
  )
}

/** Rows of one table of the store, each cell by itself and then what the row must have. */
export function readStoreRows(table: StoreTable, sheet: StoreSheet, words: readonly TextWord[]): RowsRead {
  const columns = storeColumns[table]
  const { meant, unknown } = guessed(table, sheet)
  const order = dayOrder(table, sheet.rows)
  const problems: Problem[] = []
  const unreadable: UnreadableRow[] = []
  const told: Told<unknown>[] = []
  const heading = (key: string) => sheet.headings.find((one) => nameKey(one) === nameKey(key)) ?? key
  const atTop = { row: sheet.headingRow, ...(sheet.name === null ? {} : { sheet: sheet.name }) }
  for (const [key, column] of meant)
    problems.push(
      problem('guessed-heading', { ...atTop, column: heading(key), field: column }, heading(key), column),
    )
  for (const key of unknown)
    problems.push(problem('unknown-column', { ...atTop, column: heading(key) }, heading(key)))

  for (const again of sheet.headings.filter((one, at) => one !== '' && repeats(sheet.headings, one, at)))
    problems.push(problem('duplicate-heading', { ...atTop, column: again }, again))

  for (const row of sheet.rows) {
    const place = placeOf(row)
    const own: Problem[] = []
    const say = (code: ProblemCode, column: string, found: string, suggestion?: string) => {
      own.push(
        problem(code, { ...place, column: row.cells.get(column)?.column ?? column }, found, suggestion),
      )
    }
    const { values, extra }: Cells = { values: {}, extra: {} }
    for (const [key, cell] of row.cells) {
      const column = meant.get(key) ?? key
      const kind = columns[column]
      const read = kind === undefined ? {} : readStoreCell(table, column, kind, cell, order)
      if (read.problem) say(read.problem.code, key, cell.text, read.problem.suggestion)
      if (read.value === undefined) extra[kind === undefined ? cell.column : column] = cell.text
      else values[column] = read.value
    }
    swapped(values, extra, say)
    const must = [...storeKeys[table], ...mustOf(table, values)]
    const lacking = must.filter((column) => values[column] === undefined)
    for (const column of lacking) {
      // A cell that was not understood has been told of already.
      if (extra[column] !== undefined) continue
      const code = column === 'on' ? 'no-day' : column === must[0] ? 'no-place-name' : 'cell-needed'
      say(code, column, code === 'cell-needed' ? String(values['event'] ?? '') : [...row.raw].join(' | '))
    }
    if (lacking.length > 0) {
      const { line } = row
      unreadable.push({ row: row.row, line: line ?? null, cells: row.raw, problems: own })
    } else {
      told.push({
        ...place,
        headed: headedOf(row, sheet, meant),
        given: Object.keys(extra).length === 0 ? values : { ...values, extra },
      })
    }
    problems.push(...own)
  }
  problems.push(...repeated(table, told))
  return { told, problems, unreadable, heard: sheet.rows.flatMap((row) => hear(row, words)) }
}

/** A room or a box that the table names twice: alike it does no harm, otherwise the later row counts. */
function repeated(table: StoreTable, told: readonly Told<unknown>[]): readonly Problem[] {
  if (table !== 'rooms' && table !== 'boxes') return []
  const [name] = storeKeys[table] as readonly [string]
  const first = new Map<string, Told<unknown>>()
  return told.flatMap((row): Problem[] => {
    const own = String((row.given as Readonly<Record<string, unknown>>)[name])
    const known = first.get(own)
    first.set(own, row)
    if (!known || JSON.stringify(known.given) === JSON.stringify(row.given)) return []
    return [problem('place-repeated', { ...placeOf(row), column: name }, own, String(known.row))]
  })
}

const placeOf = ({
  row,
  line,
  sheet,
}: {
  readonly row: number
  readonly line?: number
  readonly sheet?: string
}) => ({
  row,
  ...(line === undefined ? {} : { line }),
  ...(sheet === undefined ? {} : { sheet }),
})

const repeats = (headings: readonly string[], heading: string, at: number) =>
  headings.findIndex((one) => nameKey(one) === nameKey(heading)) < at

/** The columns a row speaks of, filled or not; an object only of those it has. */
function headedOf(row: StoreRow, sheet: StoreSheet, meant: ReadonlyMap<string, string>): ReadonlySet<string> {
  const keys = sheet.headingRow === null ? row.keys : sheet.keys
  return new Set([...keys].map((key) => meant.get(key) ?? key))
}

function mustOf(table: StoreTable, values: Cells['values']): readonly string[] {
  const event = values['event']
  return table === 'diary' && typeof event === 'string' ? eventColumns[event as TabledKind].must : []
}

/** A lower end above its upper one: which of the two is wrong nobody can tell, so neither is used. */
function swapped(
  values: Cells['values'],
  extra: Cells['extra'],
  say: (code: ProblemCode, column: string, found: string, suggestion: string) => void,
): void {
  for (const [low, high] of storeEnds) {
    const [from, to] = [values[low], values[high]]
    if (from === undefined || to === undefined || from <= to) continue
    say('ends-swapped', low, String(from), String(to))
    extra[low] = String(from)
    extra[high] = String(to)
    delete values[low]
    delete values[high]
  }
}
