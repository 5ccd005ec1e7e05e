import type { LogProblemCode } from '../log-problem.ts'
import { seeCell } from './cell-sense.ts'
import { splitCells } from './cells.ts'
import { channelsOf } from './channels.ts'
import { seeColumn } from './column-senses.ts'
import { findColumns } from './columns.ts'
import { findTable, type SeenLine, type TableFound, type TextLine } from './delimiter.ts'
import {
  headingEntries,
  modelIn,
  serialIn,
  zoneHintIn,
  type HeadingEntry,
  type ZoneHint,
} from './heading-block.ts'
import { findHeadings, type HeadingsFound } from './heading-line.ts'
import { readHeading } from './heading-words.ts'
import type { Layout } from './layout.ts'
import type { LogAnswers, LogQuestion } from './log-answers.ts'
import type { LogDelimiter } from './log-form.ts'
import { joinPairs, pairedFrom } from './pairs.ts'
import { stampPlace } from './stamp-place.ts'
import { whyNoTable, type NoTable } from './survey-failure.ts'
import { columnUsesOf, decimalMarkOf, sameDecimals, saysHalfDays } from './table-form.ts'

export interface SurveyRemark {
  readonly code: LogProblemCode
  readonly line: number | null
  readonly found: string
  readonly column: string | null
}

export interface Survey {
  readonly layout: Layout
  /** Line that the table begins with, below its headings. */
  readonly firstLine: number
  readonly rows: readonly SeenLine[]
  readonly entries: readonly HeadingEntry[]
  readonly serial: string | null
  readonly model: string | null
  readonly zoneHint: ZoneHint | null
  readonly twelveHours: boolean
  readonly question: LogQuestion | null
  readonly remarks: readonly SurveyRemark[]
}

export const isSurvey = (found: Survey | NoTable): found is Survey => 'layout' in found

interface Headed {
  readonly headings: HeadingsFound
  readonly rows: readonly SeenLine[]
  readonly pairedFrom: number | null
}

/** The headings over the rows, and the rows as the headings count their cells. */
function headed(table: TableFound, above: readonly TextLine[]): Headed {
  const { delimiter, rows } = table
  const first = rows[0]!
  const dated = first.seen.findIndex(({ sense }) => sense === 'stamp' || sense === 'date')
  const under = {
    width: first.cells.length,
    momentAt: dated === -1 ? null : dated,
    dateParted: delimiter === 'spaces' && first.seen[dated]?.sense === 'date',
  }
  const headings = findHeadings(above, delimiter, under)
  const own = above.find(({ line }) => line === headings.line)
  if (delimiter !== ',' || !own || headings.known === 0) return { headings, rows, pairedFrom: null }
  const count = splitCells(own.text, delimiter).cells.length
  const from = pairedFrom(rows, count)
  if (from === null) return { headings, rows, pairedFrom: null }
  const joined = rows.map((row) => {
    const cells = joinPairs(row.cells, from)
    return { ...row, cells, seen: cells.map(seeCell) }
  })
  const again = findHeadings(above, delimiter, { ...under, width: count })
  return { headings: again, rows: joined, pairedFrom: from }
}

const saysValues = ({ headings }: HeadingsFound) =>
  headings.some((heading) => ['temperature', 'humidity'].includes(readHeading(heading).sense ?? ''))

/**
 * The first table of the lines. The largest is found first; what looks like a table above it is one where its headings say so,
 * or where several of its lines hold nothing but moments and numbers.
 */
function firstTable(
  lines: readonly TextLine[],
  only: readonly LogDelimiter[] | undefined,
  depth = 0,
): TableFound | null {
  const table = findTable(lines, only)
  if (!table?.dated || depth > 4) return table
  const above = lines.filter(({ line }) => line < table.rows[0]!.line)
  const earlier = findTable(above, only)
  if (!earlier?.dated) return table
  const { headings } = headed(
    earlier,
    above.filter(({ line }) => line < earlier.rows[0]!.line),
  )
  const bare = earlier.rows.every(({ seen }) => seen.every(({ sense }) => sense !== 'text'))
  return saysValues(headings) || (bare && earlier.rows.length > 2)
    ? firstTable(above, only, depth + 1)
    : table
}

/** Learns from the beginning of a table how it is written; the content decides. */
export function surveyLines(
  lines: readonly TextLine[],
  answers: LogAnswers,
  only?: readonly LogDelimiter[],
): Survey | NoTable {
  const table = firstTable(lines, only)
  if (!table) return whyNoTable(lines)
  const above = lines.filter(({ line }) => line < table.rows[0]!.line)
  const { headings, rows, pairedFrom: paired } = headed(table, above)
  const first = rows[0]!
  const width = first.cells.length
  const said = (answers.columns ?? []).filter(({ column }) => column >= 0 && column < width)
  const columns = headings.headings.map((heading, column) => seeColumn(rows, column, heading))
  const stamp = stampPlace(columns, rows, said)
  if (stamp === null || stamp === 'time-only') {
    return {
      failure: stamp === null ? 'no-stamp-column' : 'dates-missing',
      line: first.line,
      found: first.text,
    }
  }
  const found = findColumns(columns, rows, stamp, headings.groups, said, headings.line !== null)
  if (found.values.length === 0) return { failure: 'no-value-column', line: first.line, found: first.text }
  const values = channelsOf(found.values)
  const entries = headingEntries(
    above.filter(({ line }) => line !== headings.line),
    table.delimiter,
  )
  const stampHeadings = [stamp.kind === 'split' ? [stamp.date, stamp.time] : [stamp.column]]
    .flat()
    .map((column) => headings.headings[column] ?? '')
  const layout: Layout = {
    delimiter: table.delimiter,
    width,
    decimalMark:
      paired !== null
        ? ','
        : decimalMarkOf(
            rows,
            values.map(({ column }) => column),
          ),
    pairedFrom: paired,
    headings: headings.headings,
    headingLine: headings.line,
    stamp,
    channelColumns: found.channelColumns,
    serialColumn: found.serialColumn,
    values,
    columns: columnUsesOf(headings.headings, values, found, stamp),
    lastDecimals: sameDecimals(rows, width - 1),
  }
  return {
    layout,
    firstLine: headings.lastLine === null ? first.line : headings.lastLine + 1,
    rows,
    entries,
    serial: serialIn(entries),
    model: modelIn(entries),
    zoneHint: zoneHintIn(entries, stampHeadings, headings.line),
    twelveHours: saysHalfDays(rows, stamp),
    question: found.question,
    remarks: [
      ...(paired === null
        ? []
        : [
            {
              code: 'decimal-comma-between-commas' as const,
              line: first.line,
              found: first.text,
              column: null,
            },
          ]),
      ...found.remarks.map(({ code, heading }) => ({
        code,
        line: headings.line,
        found: heading,
        column: heading,
      })),
    ],
  }
}
