import { isAllNumbers, isMoment, looksLikeReading, seeCell, type CellSeen } from './cell-sense.ts'
import { splitCells } from './cells.ts'
import type { LogDelimiter } from './log-form.ts'

/** One line of the part that is surveyed, as plain text. */
export interface TextLine {
  readonly line: number
  readonly text: string
}

export interface SeenLine extends TextLine {
  readonly cells: readonly string[]
  readonly seen: readonly CellSeen[]
}

export interface TableFound {
  readonly delimiter: LogDelimiter
  /** Lines of the commonest form: as many cells, moments in the same columns. */
  readonly rows: readonly SeenLine[]
  readonly dated: boolean
}

/** Where two part the lines equally well the earlier one is meant: a blank within a stamp parts it too. */
const candidates: readonly LogDelimiter[] = ['\t', ';', '|', ',', 'spaces']
/** So many lines of a table tell its form, or fewer where they are wide. */
const sampled = 300
const mostCells = 20_000
/** Wider tables are none of a logger. */
export const widest = 1000

const formOf = (row: SeenLine) =>
  `${row.cells.length}:${row.seen.map((cell) => (isMoment(cell) ? '1' : '0')).join('')}`

function commonest(rows: readonly SeenLine[]): readonly SeenLine[] {
  const groups = [...Map.groupBy(rows, formOf).values()]
  // Of forms equally common the later one: what stands above a table may look like a line of it.
  return groups.reduce<readonly SeenLine[]>((best, group) => (group.length >= best.length ? group : best), [])
}

function rowsUnder(
  lines: readonly TextLine[],
  delimiter: LogDelimiter,
  isRow: (seen: readonly CellSeen[]) => boolean,
): readonly SeenLine[] {
  const rows: SeenLine[] = []
  let looked = 0
  for (const line of lines) {
    if (rows.length >= sampled || looked > mostCells) break
    if (!/\d/.test(line.text)) continue
    const { cells } = splitCells(line.text, delimiter)
    if (cells.length < 2 || cells.length > widest) continue
    looked += cells.length
    const seen = cells.map(seeCell)
    if (isRow(seen)) rows.push({ ...line, cells, seen })
  }
  return rows
}

/** Which mark parts the most lines into readings of one form; null where no line looks like a reading under any. */
export function findTable(
  lines: readonly TextLine[],
  only: readonly LogDelimiter[] = candidates,
): TableFound | null {
  for (const [isRow, dated] of [
    [looksLikeReading, true],
    [isAllNumbers, false],
  ] as const) {
    let best: TableFound | null = null
    for (const delimiter of only) {
      const rows = commonest(rowsUnder(lines, delimiter, isRow))
      // Blanks part a stamp, too: they are meant only where no mark parts half as many lines.
      const weight = delimiter === 'spaces' ? 0.5 : 1
      if (rows.length * weight > (best?.rows.length ?? 0)) best = { delimiter, rows, dated }
    }
    if (best) return best
  }
  return null
}
