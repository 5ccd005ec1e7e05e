import { logProblem, type LogProblem } from '../log-problem.ts'
import type { Channel } from '../series.ts'
import type { LogAnswers, LogQuestion } from './log-answers.ts'
import type { LogForm } from './log-form.ts'
import { noRows, type LogRows } from './log-rows.ts'
import { openReading } from './open-reading.ts'
import { settle, type Settled } from './settle.ts'
import type { Survey } from './survey.ts'
import type { ReadingOptions, Walked } from './table-reading.ts'
import type { WalkState } from './walk-state.ts'

export type { LogAnswers, LogQuestion } from './log-answers.ts'

export interface LogRead {
  readonly channels: readonly Channel[]
  /** Null where no table was found. */
  readonly form: LogForm | null
  readonly asks: readonly LogQuestion[]
  readonly problems: readonly LogProblem[]
  readonly rows: LogRows
}

function formOf(survey: Survey, state: WalkState, settled: Settled): LogForm {
  const { layout } = survey
  return {
    encoding: state.decoder.encoding(),
    delimiter: layout.delimiter,
    decimalMark: layout.decimalMark,
    headingLine: layout.headingLine,
    firstLine: survey.rows[0]?.line ?? null,
    columns: layout.columns,
    heading: survey.entries,
    serial: survey.serial,
    model: survey.model,
    dates: settled.dates,
    clock: survey.twelveHours ? '12-hour' : '24-hour',
    timeZone: settled.timeZone,
    temperature: settled.units.temperature,
    humidity: settled.units.humidity,
  }
}

function result({ book, lines, outcome }: Walked): LogRead {
  if ('failure' in outcome) {
    const { failure, line, found } = outcome
    const code = failure === 'no-readings' && found.trim() === '' ? 'empty-file' : failure
    const problems = [logProblem(code, code === 'empty-file' ? null : line, found), ...book.list()]
    return { channels: [], form: null, asks: [], problems, rows: { ...noRows, lines } }
  }
  const { survey, state } = outcome
  const settled = settle(state, survey)
  const { encoding } = state.decoder
  if (encoding() === 'windows-1252') book.note('read-in-old-encoding', null, encoding())
  for (const [quantity, code] of [
    ['humidity', 'no-humidity'],
    ['temperature', 'no-temperature'],
  ] as const) {
    const held = state.tables.some(({ layout }) => layout.values.some((value) => value.quantity === quantity))
    if (!held) book.note(code, survey.layout.headingLine, survey.layout.headings.join(' | '))
  }
  if (settled.rows.read === 0) book.note('no-readings', survey.rows[0]!.line, survey.rows[0]!.text)
  if (settled.rows.read === 1 && book.count('all-in-one-moment') === 0)
    book.note('one-reading', survey.rows[0]!.line, survey.rows[0]!.text)
  return {
    channels: settled.channels,
    form: formOf(survey, state, settled),
    asks: [...(survey.question ? [survey.question] : []), ...settled.asks],
    problems: book.list(),
    rows: { ...settled.rows, lines },
  }
}

/** Reads the text of any logger. Whatever was not answered is read as proposed, and asked. */
export function readLog(bytes: Uint8Array, answers: LogAnswers, options: ReadingOptions = {}): LogRead {
  const reading = openReading(answers, { bytes: bytes.length, ...options })
  reading.feed(bytes)
  return result(reading.end())
}

/** The same for a file that need not be in memory at once; `bytes` is its size, where known. */
export async function readLogFile(
  chunks: AsyncIterable<Uint8Array>,
  answers: LogAnswers,
  bytes?: number,
): Promise<LogRead> {
  const reading = openReading(answers, { bytes })
  for await (const chunk of chunks) reading.feed(chunk)
  return result(reading.end())
}

/** The same for cells that another reader took out of a workbook; a line is a row of it. */
export function readLogRows(rows: readonly (readonly string[])[], answers: LogAnswers): LogRead {
  const lines = rows.map((cells) => cells.map((cell) => cell.replace(/\s+/g, ' ')).join('\t'))
  return readLog(new TextEncoder().encode(`${lines.join('\n')}\n`), answers, { only: ['cells'] })
}
