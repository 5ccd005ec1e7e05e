import type { IsoDate } from '../base/calendar.ts'
import type { Project } from './kept.ts'
import type { Logger, LogFile } from './loggers.ts'

/** A time outside of what the finds in the box bear. */
export interface ExcursionShown {
  readonly serial: string
  readonly channel: string
  readonly box: string
  readonly fromMs: number
  readonly toMs: number
  readonly limitRhPercent: number
  readonly side: 'above' | 'below'
  readonly hours: number
  readonly worstRhPercent: number
  /** Sum of what lay beyond the limit times how long [% h]. */
  readonly doseRhPercentHours: number
  /** Finds that lay in the box at the time. */
  readonly findIds: readonly string[]
}

export interface LoggerShown {
  readonly project: Project
  readonly today: IsoDate
  readonly logger: Logger
  readonly files: readonly LogFile[]
  readonly channels: readonly {
    readonly channel: string
    readonly fromMs: number
    readonly toMs: number
    readonly readings: number
  }[]
  readonly excursions: readonly ExcursionShown[]
}

/** A stretch of readings drawn: at most `buckets` columns, each with the lowest and highest it holds. */
export interface LogView {
  readonly fromMs: number
  readonly toMs: number
  /** All there is of this channel. */
  readonly firstMs: number
  readonly lastMs: number
  readonly buckets: readonly LogBucket[]
}

export interface LogBucket {
  readonly atMs: number
  readonly minRhPercent: number
  readonly maxRhPercent: number
  readonly minTemperatureC: number
  readonly maxTemperatureC: number
  readonly readings: number
}
