import type { Series } from '../logger/series.ts'
import type { Surroundings } from './box.ts'

export interface KnownOfRoom {
  /** A logger that stood in the room itself. */
  readonly series: Series | null
  readonly rhLowPercent: number | null
  readonly rhHighPercent: number | null
}

/** What is assumed of a room of which nothing is known; figures. */
export interface AssumedRoom {
  readonly meanRhPercent: { readonly low: number; readonly nominal: number; readonly high: number }
  readonly swingRhPercent: number
  readonly swingErrorRhPercent: { readonly written: number; readonly assumed: number }
  readonly highestDayOfYear: number
  readonly weatherRhPercent: number
  readonly weatherDays: number
  /** Standard deviation of one year's mean from the next [%]. */
  readonly yearsDifferRhPercent: number
}

/** The yearly course of humidity around the boxes of a room, from the best that is known of it. */
export function surroundingsOf(_room: KnownOfRoom, _assumed: AssumedRoom): Surroundings {
  throw new Error('to follow')
}
