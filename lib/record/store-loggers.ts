import type { IsoDate } from '../base/calendar.ts'
import type { Columns, Given } from './places.ts'

/** The register of loggers; several rows of one serial say where it stood one after the other. */
export const loggerColumns = {
  serial: 'text',
  model: 'text',
  floor_rh_percent: 'number',
  calibration_due: 'date',
  box: 'text',
  from: 'date',
  to: 'date',
  room: 'text',
  error_rh_percent: 'number',
  salts: 'text',
} as const satisfies Columns

export type LoggerRow = Given<typeof loggerColumns, 'serial'>

/**
 * Where a logger stood, both days included; a day on which it was carried on belongs to where it was carried to. No first
 * day: ever since it is known; no last day: it stands there still.
 */
export interface Stand {
  readonly box?: string
  readonly room?: string
  readonly from?: IsoDate
  readonly to?: IsoDate
  /** Columns of no meaning here in the row that told it. */
  readonly extra?: Readonly<Record<string, string>>
}

/** What the logger read over a saturated salt, and what it should have read. */
export interface SaltPoint {
  readonly salt: string
  readonly trueRhPercent: number
  readonly readRhPercent: number
  readonly on?: IsoDate
}

export interface LoggerGiven {
  readonly serial: string
  readonly model?: string
  /** The least it can report: a flat run at it is no reading. */
  readonly floor_rh_percent?: number
  readonly calibration_due?: IsoDate
  /** ± [%], as its maker or its calibration says. */
  readonly error_rh_percent?: number
  readonly salts?: readonly SaltPoint[]
  /** In the order of their first days. */
  readonly stood: readonly Stand[]
  readonly extra?: Readonly<Record<string, string>>
}
