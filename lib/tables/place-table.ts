import type { BoxGiven, RoomGiven } from '../record/places.ts'
import { inFileOrder, problem, type Problem } from '../record/problem.ts'
import type { HazardSeen } from '../record/read-row.ts'
import type { DiaryRow } from '../record/store-diary.ts'
import type { LoggerRow } from '../record/store-loggers.ts'
import type { RoundGiven } from '../record/store-rounds.ts'
import { storeTableOf, storeTables, type StoreTable } from '../record/store-tables.ts'
import type { TextWord } from '../record/text-words.ts'
import type { UnreadableRow } from './file-read.ts'
import { readStoreFile } from './store-sheets.ts'
import { readStoreRows } from './store-row-read.ts'
import type { StoreFile, StoreSheet } from './store-file.ts'

/** What a row told, and where it stands. */
export interface Told<Given> {
  readonly row: number
  readonly line?: number
  readonly sheet?: string
  /** Columns that the row speaks of, filled or not: what is not among them stays as it is kept. */
  readonly headed: ReadonlySet<string>
  readonly given: Given
}

/** The tables of a store as a file gives them; which is which is told by the headings. */
export interface PlacesRead {
  readonly kind: StoreFile['kind']
  readonly rooms: readonly Told<RoomGiven>[]
  readonly boxes: readonly Told<BoxGiven>[]
  readonly loggers: readonly Told<LoggerRow>[]
  readonly rounds: readonly Told<RoundGiven>[]
  readonly diary: readonly Told<DiaryRow>[]
  readonly problems: readonly Problem[]
  /** Rows that gave nothing, under the headings they came with: to be mended and read again. */
  readonly unreadable: readonly Unreadable[]
  /** Hazards named in any cell of any row, read or not. */
  readonly heard: readonly HazardSeen[]
}

export interface Unreadable {
  readonly sheet: string | null
  readonly headings: readonly string[]
  readonly rows: readonly UnreadableRow[]
}

type Rows = { readonly [Table in StoreTable]: readonly Told<unknown>[] }

/** Rooms, boxes, rounds, loggers and the diary from CSV, XLSX or JSON; what cannot be kept is said, the rest is read. */
export async function readPlaces(bytes: Uint8Array, words: readonly TextWord[] = []): Promise<PlacesRead> {
  const file = await readStoreFile(bytes)
  const read = file.sheets.map((sheet) => readSheet(sheet, file.kind, words))
  const rows = Object.fromEntries(
    storeTables.map((table) => [table, read.flatMap((one) => (one.table === table ? one.told : []))]),
  ) as unknown as Rows
  const problems = inFileOrder([...file.problems, ...read.flatMap((one) => one.problems)])
  const broken = file.broken.map(({ row, line, text }) => ({
    row,
    line,
    cells: [text],
    problems: problems.filter((one) => one.row === row),
  }))
  const lost = read.flatMap(({ sheet, unreadable }) =>
    unreadable.length === 0 ? [] : [{ sheet: sheet.name, headings: sheet.headings, rows: unreadable }],
  )
  return {
    ...(rows as Omit<PlacesRead, 'kind' | 'problems' | 'unreadable' | 'heard'>),
    kind: file.kind,
    problems,
    unreadable: broken.length === 0 ? lost : [...lost, { sheet: null, headings: ['json'], rows: broken }],
    heard: read.flatMap(({ heard }) => heard),
  }
}

function readSheet(sheet: StoreSheet, kind: StoreFile['kind'], words: readonly TextWord[]) {
  const table = storeTableOf(sheet.keys)
  if (sheet.rows.length === 0) {
    const empty = problem(
      'header-only',
      { row: sheet.headingRow, ...named(sheet) },
      sheet.headings.join(', '),
    )
    return { sheet, table, told: [], problems: [{ ...empty, row: null }], unreadable: [], heard: [] }
  }
  if (table === null) {
    const found = kind === 'json' ? [...sheet.keys].join(', ') : sheet.headings.join(', ')
    const row = kind === 'json' ? sheet.rows[0]!.row : sheet.headingRow
    const told = problem('not-of-the-store', { row, ...named(sheet) }, found)
    const rows = sheet.rows.map(({ row: at, line, raw }) => ({
      row: at,
      line: line ?? null,
      cells: raw,
      problems: [told],
    }))
    return { sheet, table, told: [], problems: [told], unreadable: rows, heard: [] }
  }
  return { sheet, table, ...readStoreRows(table, sheet, words) }
}

const named = ({ name }: StoreSheet) => (name === null ? {} : { sheet: name })
