import { logProblem, type LogProblem } from '../log-problem.ts'
import type { Channel } from '../series.ts'
import type { LogAnswers, LogQuestion } from './log-answers.ts'
import type { LogForm } from './log-form.ts'

export type { LogAnswers, LogQuestion } from './log-answers.ts'

/** Lines and readings, counted. */
export interface LogRows {
  readonly lines: number
  /** Readings that stand in the series, over all channels together. */
  readonly read: number
  /** Readings with a moment and no value at all: the sensor gave none. */
  readonly empty: number
  /** Lines of the table that gave no reading. */
  readonly unreadable: number
  /** Readings that stood there twice with the same values; left out once. */
  readonly repeated: number
  /** Readings of a moment that another reading tells otherwise; the first was kept. */
  readonly disagreeing: number
  /** How often a reading is earlier than the one before it. */
  readonly backward: number
}

export interface LogRead {
  readonly channels: readonly Channel[]
  /** Null where no table was found. */
  readonly form: LogForm | null
  readonly asks: readonly LogQuestion[]
  readonly problems: readonly LogProblem[]
  readonly rows: LogRows
}

/** Reads the text of any logger. Whatever was not answered is read as proposed, and asked. */
export function readLog(_bytes: Uint8Array, _answers: LogAnswers): LogRead {
  const rows = { lines: 0, read: 0, empty: 0, unreadable: 0, repeated: 0, disagreeing: 0, backward: 0 }
  return { channels: [], form: null, asks: [], problems: [logProblem('no-readings', null, '')], rows }
}

/** The same for a file that need not be in memory at once; `bytes` is its size, where known. */
export async function readLogFile(
  _chunks: AsyncIterable<Uint8Array>,
  answers: LogAnswers,
  _bytes?: number,
): Promise<LogRead> {
  return readLog(new Uint8Array(), answers)
}

/** The same for cells that another reader took out of a workbook. */
export function readLogRows(_rows: readonly (readonly string[])[], answers: LogAnswers): LogRead {
  return readLog(new Uint8Array(), answers)
}
