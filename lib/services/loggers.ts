import type { IsoDate } from '../base/calendar.ts'
import type { LogAnswers } from '../logger/read/log-answers.ts'
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
  readonly answers: LogFileAnswers
  readonly brought: readonly Brought[]
  readonly by: Actor
}

export interface LogFileAnswers {
  readonly read: LogAnswers
  /** Which logger a channel is of, by the name of the channel, where a person had to say. */
  readonly serials: Readonly<Record<string, string>>
}

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
