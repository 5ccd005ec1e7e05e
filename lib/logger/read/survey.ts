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
  const date = first.seen.findIndex(({ sense }) => sense === 'date')
  const splitAt = delimiter === 'spaces' && date !== -1 ? date : null
  const headings = findHeadings(above, delimiter, first.cells.length, splitAt)
  const own = above.find(({ line }) => line === headings.line)
  if (delimiter !== ',' || !own || headings.known === 0) return { headings, rows, pairedFrom: null }
  const count = splitCells(own.text, delimiter).cells.length
  const from = pairedFrom(rows, count)
  if (from === null) return { headings, rows, pairedFrom: null }
  const joined = rows.map((row) => {
    const cells = joinPairs(row.cells, from)
    return { ...row, cells, seen: cells.map(seeCell) }
  })
  return { headings: findHeadings(above, delimiter, count, splitAt), rows: joined, pairedFrom: from }
}

/** Learns from the beginning of a table how it is written; the content decides. */
export function surveyLines(
  lines: readonly TextLine[],
  answers: LogAnswers,
  only?: readonly LogDelimiter[],
): Survey | NoTable {
  const table = findTable(lines, only)
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
