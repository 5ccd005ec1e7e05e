import type { OrderSeen } from './date-order.ts'
import type { TextLine } from './delimiter.ts'
import type { LineDecoder } from './encoding.ts'
import type { LogAnswers } from './log-answers.ts'
import type { ProblemBook } from './problem-book.ts'
import type { Table, Templates } from './tables.ts'
import type { WaitingText } from './waiting-text.ts'

export interface LineGiven extends TextLine {
  /** The bytes of the line as letters; null where they are not what was read. */
  readonly bytes: string | null
  readonly isLast: boolean
}

/** What is known while the lines of a file go by. */
export interface WalkState {
  readonly book: ProblemBook
  readonly answers: LogAnswers
  readonly decoder: LineDecoder
  readonly waiting: WaitingText
  readonly order: OrderSeen
  readonly twelveHours: boolean
  /** Readings that the whole file may hold, as far as its size tells. */
  readonly capacity: number
  table: Table
  readonly tables: Table[]
  /** Tables by the line of their headings: columns that change to and fro are surveyed once. */
  readonly byHeading: Map<string, Table>
  /** Headings that are new, and the lines below them that tell how they are written. */
  collecting: LineGiven[] | null
  templates: Templates
  /** Lines gone by. */
  line: number
  /** Lines of tables that gave no reading. */
  unreadable: number
  /** False: every line is read with care. */
  readonly quick: boolean
  /** Lines that were read by a template. */
  quickLines: number
  /** Lines read with care and templates tried: what the reading costs, whatever the machine. */
  steps: number
}
