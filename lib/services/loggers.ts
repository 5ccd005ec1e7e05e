import type { IsoDate } from '../base/calendar.ts'
import type { LoggerGiven } from '../record/store-loggers.ts'
import type { Actor, Kept } from './kept.ts'

export interface Logger extends Kept {
  readonly projectId: string
  readonly given: LoggerGiven
}

/** A file from a logger as it came, kept whole, and what was answered where it left a question open. */
export interface LogFile extends Kept {
  readonly projectId: string
  readonly name: string
  readonly sha256: string
  readonly bytes: number
  readonly answers: LogAnswers
  readonly brought: readonly Brought[]
  readonly by: Actor
}

/** Whatever the reading of logger text may ask, by the name of the question. */
export type LogAnswers = Readonly<Record<string, string>>

/** Readings of one channel that a file brought to one logger. */
export interface Brought {
  readonly loggerId: string
  readonly serial: string
  readonly channel: string
  readonly readings: number
  readonly fromMs: number
  readonly toMs: number
}

/** One day [UTC] of one channel: its readings packed, and what is known of them without unpacking. */
export interface ReadingDay {
  readonly loggerId: string
  readonly channel: string
  readonly day: IsoDate
  readonly block: string
  readonly sketch: string
}
