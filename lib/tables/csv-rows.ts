import { CsvError, parse } from 'csv-parse/browser/esm/sync'
import { problem, type Problem } from '../record/problem.ts'
import type { Delimiter } from './csv-dialect.ts'

/** What a row of this table looks like, to tell a quote that was never closed from a cell of several lines. */
export interface Shape {
  readonly delimiter: Delimiter
  readonly width: number
  /** Column of the find number; -1 where there is none. */
  readonly findAt: number
}

export interface CsvRows {
  readonly rows: readonly (readonly string[])[]
  readonly problems: readonly Problem[]
}

interface Parsed {
  readonly record: readonly string[]
  readonly info: { readonly lines: number }
}

const strict = (shape: Shape) =>
  ({ delimiter: shape.delimiter, relax_column_count: true, record_delimiter: '\n' }) as const
/** Lines parsed at a time, so that a row to be mended costs no second reading of the whole file. */
const stretch = 1000
const longestCell = 30

/**
 * Whether lines that stand inside of one cell hide a find: one of them is as wide as the table, begins a find and has no
 * quote of its own.
 */
export function hidesFind(inside: readonly string[], shape: Shape): boolean {
  if (shape.width < 3 || shape.findAt === -1) return false
  return inside.some((line) => {
    if (line.includes('"')) return false
    const cells = line.split(shape.delimiter)
    const number = cells[shape.findAt]?.trim() ?? ''
    return cells.length === shape.width && /\d/.test(number) && !/\s/.test(number)
  })
}

/** The lines of a row of several that belong to a cell as a whole; the last one does where the row ends with its quote. */
function insideLines(lines: readonly string[]): readonly string[] {
  const last = lines.at(-1)!
  return [...lines.slice(1, -1), ...(last.endsWith('"') ? [last.slice(0, -1)] : [])]
}

interface StrictRows {
  readonly rows: readonly (readonly string[])[]
  /** The line after the last sound row. */
  readonly next: number
  readonly broken: boolean
}

/** Strict rows of one stretch of lines, up to the first that breaks the rules of quoting. */
function strictRows(lines: readonly string[], from: number, shape: Shape): StrictRows {
  const rows: (readonly string[])[] = []
  const end = Math.min(from + stretch, lines.length)
  let next = from
  let broken = false
  const take = (record: readonly string[], lineCount: number) => {
    if (broken) return
    if (from + lineCount - next > 1 && hidesFind(insideLines(lines.slice(next, from + lineCount)), shape))
      broken = true
    else {
      rows.push(record)
      next = from + lineCount
    }
  }
  try {
    parse(lines.slice(from, end).join('\n'), {
      ...strict(shape),
      on_record: (record: readonly string[], { lines: lineCount }) => {
        take(record, lineCount)
        return null
      },
    })
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    // A cell may go on beyond the stretch; only one that fills a whole stretch is taken for a quote left open.
    broken = error.code !== 'CSV_QUOTE_NOT_CLOSED' || end === lines.length || next === from
  }
  return { rows, next, broken }
}

/** The row beginning at `at`, read with a blind eye for quotes: over several lines where that fits the table, else one line. */
function mended(
  lines: readonly string[],
  at: number,
  shape: Shape,
): { cells: readonly string[]; lines: number; closed: boolean } {
  const relaxed = { ...strict(shape), relax_quotes: true, info: true, to: 1 } as const
  const window = lines.slice(at, at + longestCell)
  for (const [text, longest] of [
    [lines[at]!, 1],
    [window.join('\n'), longestCell],
  ] as const) {
    try {
      const first = (parse(text, relaxed) as unknown as Parsed[])[0]
      if (!first || first.info.lines > longest) continue
      const fits =
        first.info.lines === 1 ||
        (first.record.length === shape.width &&
          !hidesFind(insideLines(window.slice(0, first.info.lines)), shape))
      if (fits) return { cells: first.record, lines: Math.max(1, first.info.lines), closed: true }
    } catch {
      continue
    }
  }
  return { cells: lines[at]!.split(shape.delimiter), lines: 1, closed: false }
}

/**
 * All rows of a text. Where the rules of quoting are broken the one line is taken as it stands, its quotes as letters, and
 * reading goes on with the next: a quote that was never closed does not eat the finds below it.
 */
export function csvRows(text: string, shape: Shape): CsvRows {
  const lines = text.split('\n')
  if (lines.at(-1) === '') lines.pop()
  const rows: (readonly string[])[] = []
  const problems: Problem[] = []
  for (let at = 0; at < lines.length;) {
    const sound = strictRows(lines, at, shape)
    rows.push(...sound.rows)
    at = sound.next
    if (!sound.broken) continue
    const { cells, lines: used, closed } = mended(lines, at, shape)
    rows.push(cells)
    const found = lines.slice(at, at + used).join('\n')
    problems.push(
      problem(
        closed ? 'stray-quote' : 'unbalanced-quote',
        { row: rows.length, line: at + 1 },
        found.slice(0, 200),
      ),
    )
    at += used
  }
  return { rows, problems }
}
