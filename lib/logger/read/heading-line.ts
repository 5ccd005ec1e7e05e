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

/** A blank between date and time parts what one heading names. */
function aligned(cells: readonly string[], width: number, splitAt: number | null): readonly string[] {
  const fitted =
    cells.length === width - 1 && splitAt !== null
      ? [...cells.slice(0, splitAt), cells[splitAt]!, ...cells.slice(splitAt)]
      : cells
  return Array.from({ length: width }, (_, at) => fitted[at] ?? '')
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

/** The headings of a table, looked for above its first reading. */
export function findHeadings(
  above: readonly TextLine[],
  delimiter: LogDelimiter,
  width: number,
  splitAt: number | null,
): HeadingsFound {
  const filled = above.filter(({ text }) => text.trim() !== '').slice(-searched)
  const rows = filled.map((line) => ({ line: line.line, cells: headingCells(line.text, delimiter, width) }))
  let best = -1
  let most = 0
  for (const [at, { cells }] of rows.entries()) {
    const score = cells.length < 2 || isUnits(cells) ? 0 : known(cells) + (cells.length === width ? 0.5 : 0)
    const words = cells.filter(isWord).length
    if (words * 2 > cells.length && score >= most && score >= 1) {
      best = at
      most = score
    }
  }
  const last = rows.at(-1)
  if (
    best === -1 &&
    last?.cells.length === width &&
    last.cells.every((cell) => isWord(cell)) &&
    !isUnits(last.cells)
  ) {
    best = rows.length - 1
  }
  if (best === -1) {
    const units = rows.findLast(({ cells }) => cells.length === width && isUnits(cells))
    return {
      headings: units ? aligned(units.cells, width, null) : Array.from({ length: width }, () => ''),
      line: units?.line ?? null,
      lastLine: units?.line ?? null,
      groups: [],
      known: units ? known(units.cells) : 0,
    }
  }
  const { line, cells } = rows[best]!
  const headings = aligned(cells, width, splitAt)
  const units = rows.slice(best + 1).find((row) => row.cells.length === cells.length && isUnits(row.cells))
  const withUnits = units
    ? headings.map((heading, at) => `${heading} ${units.cells[at] ?? ''}`.trim())
    : headings
  const over = rows[best - 1]
  const twice =
    new Set(headings.filter((heading) => heading !== '')).size <
    headings.filter((heading) => heading !== '').length
  return {
    headings: withUnits,
    line,
    lastLine: units?.line ?? line,
    groups: over && twice ? groupsOf(over.cells, width) : [],
    known: known(cells),
  }
}
