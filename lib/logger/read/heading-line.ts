import { splitCells } from './cells.ts'
import type { TextLine } from './delimiter.ts'
import { readHeading } from './heading-words.ts'
import type { LogDelimiter } from './log-form.ts'
import { readCell } from './number.ts'
import { unitOf } from './units.ts'

export interface HeadingsFound {
  /** One for each column; empty texts where the file has none. */
  readonly headings: readonly string[]
  readonly line: number | null
  /** Last line of the headings: units may stand below them. */
  readonly lastLine: number | null
  /** Of a line above the headings that names groups of columns. */
  readonly groups: readonly string[]
  /** How many headings mean something to us. */
  readonly known: number
}

/** Headings stand at most so many filled lines above the first reading. */
const searched = 8

const isWord = (cell: string) => cell !== '' && readCell(cell).kind !== 'number'

/** Headings parted by blanks: two or more blanks part them where that gives the right number. */
function headingCells(text: string, delimiter: LogDelimiter, width: number): readonly string[] {
  // A sign that has a cell of its own heads the column of numbers; taken for a mark it would shift every heading.
  const ownCell = delimiter !== 'spaces' && text.replace(/^ *#+ */, '').startsWith(delimiter)
  if (ownCell && /^ *#/.test(text)) return splitCells(text, delimiter).cells
  // A mark of comment before the first heading is none of it; one in a cell of its own heads the count of readings.
  const bare = text.replace(/^\s*(?:#|\/\/)+\s*(?=[\p{L}"])/u, '')
  if (delimiter !== 'spaces') return splitCells(bare, delimiter).cells
  const wide = bare.trim().split(/\t+|\s{2,}/)
  return wide.length === width || wide.length === width - 1 ? wide : splitCells(bare, delimiter).cells
}

const known = (cells: readonly string[]) =>
  cells.filter((cell) => isWord(cell) && readHeading(cell).sense !== null).length

/** What is longer is cut: it is told with every problem of its column. */
const longestHeading = 120

/** What is known of the columns before their headings are. */
export interface UnderHeadings {
  readonly width: number
  /** First column that holds dates; null where moments are counted. */
  readonly momentAt: number | null
  /** A blank parts date and time in two columns, over which one heading may stand. */
  readonly dateParted: boolean
}

const cut = (cells: readonly string[], width: number) =>
  Array.from({ length: width }, (_, at) => (cells[at] ?? '').slice(0, longestHeading))

/**
 * Headings as they stand over the columns, from the left unless something over the dates speaks against it: fewer headings than
 * columns may begin further right. Null: temperature or humidity stands over the dates however they are put.
 */
function aligned(cells: readonly string[], under: UnderHeadings): readonly string[] | null {
  const { width, momentAt, dateParted } = under
  const spare = Math.max(0, width - cells.length)
  const shifted = Array.from({ length: spare }, (_, at) => [
    ...Array.from({ length: at + 1 }, () => ''),
    ...cells,
  ])
  const doubled =
    dateParted && spare === 1 && momentAt !== null
      ? [[...cells.slice(0, momentAt), cells[momentAt] ?? '', ...cells.slice(momentAt)]]
      : []
  const ways = [...doubled, cells, ...shifted].map((way) => cut(way, width))
  if (momentAt === null) return ways[0]!
  const over = ways.map((way) => readHeading(way[momentAt]!).sense)
  const telling = over.findIndex((sense) => sense === 'stamp' || sense === 'date' || sense === 'time')
  const silent = over.findIndex((sense) => sense !== 'temperature' && sense !== 'humidity')
  return ways[telling === -1 ? silent : telling] ?? null
}

/** A line of units, as they stand below headings. */
export const isUnits = (cells: readonly string[]) =>
  cells.some((cell) => unitOf(cell) !== null) &&
  cells.every(
    (cell) =>
      cell === '' || cell === '-' || unitOf(cell) !== null || /^[([]?[\p{L}/ :.-]{1,22}[)\]]?$/u.test(cell),
  ) &&
  cells.filter((cell) => readHeading(cell).sense !== null && unitOf(cell) === null).length < 2

/** Nothing but units, whatever it follows. */
export const isOnlyUnits = (cells: readonly string[]): boolean =>
  cells.some((cell) => unitOf(cell) !== null) &&
  cells.every((cell) => cell === '' || cell === '-' || unitOf(cell) !== null)

/** The groups of a line above (`Channel 1,,Channel 2,`), each carried on to the columns it stands over. */
function groupsOf(cells: readonly string[], width: number): readonly string[] {
  if (
    cells.filter((cell) => cell !== '').length < 2 ||
    cells.length > width + 1 ||
    cells.some((cell) => cell !== '' && !isWord(cell))
  ) {
    return []
  }
  let current = ''
  return Array.from({ length: width }, (_, at) => (current = cells[at] || current))
}

interface HeadingRow {
  readonly line: number
  readonly cells: readonly string[]
}

/** The row that has most of the words known to head columns, the nearest among equals. */
function headingRow(rows: readonly HeadingRow[], width: number): HeadingRow | null {
  let best: HeadingRow | null = null
  let most = 1
  for (const row of rows) {
    const { cells } = row
    if (cells.length < 2 || isUnits(cells) || cells.filter(isWord).length * 2 <= cells.length) continue
    const score = known(cells) + (cells.length === width ? 0.5 : 0)
    if (score < most) continue
    best = row
    most = score
  }
  const last = rows.at(-1)
  if (best || last?.cells.length !== width || isUnits(last.cells)) return best
  return last.cells.every((cell) => isWord(cell)) ? last : null
}

const isTwice = (headings: readonly string[]) => {
  const filled = headings.filter((heading) => heading !== '')
  return new Set(filled).size < filled.length
}

/** The headings of a table, looked for above its first reading. */
export function findHeadings(
  above: readonly TextLine[],
  delimiter: LogDelimiter,
  under: UnderHeadings,
): HeadingsFound {
  const { width } = under
  const filled = above.filter(({ text }) => text.trim() !== '').slice(-searched)
  const rows = filled.map((line) => ({ line: line.line, cells: headingCells(line.text, delimiter, width) }))
  const own =
    headingRow(rows, width) ?? rows.findLast(({ cells }) => cells.length === width && isUnits(cells))
  const none = Array.from({ length: width }, () => '')
  if (!own) return { headings: none, line: null, lastLine: null, groups: [], known: 0 }
  const { line, cells } = own
  const place = rows.findIndex((row) => row.line === line)
  const units = rows.slice(place + 1).find((row) => row.cells.length === cells.length && isUnits(row.cells))
  const lastLine = units?.line ?? line
  const headings = aligned(cells, under)
  if (!headings) return { headings: none, line, lastLine, groups: [], known: 0 }
  const over = rows[place - 1]
  return {
    headings: units ? headings.map((heading, at) => `${heading} ${units.cells[at] ?? ''}`.trim()) : headings,
    line,
    lastLine,
    groups: over && isTwice(headings) ? groupsOf(over.cells, width) : [],
    known: known(cells),
  }
}
