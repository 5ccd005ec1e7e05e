import type { Range } from '../base/range.ts'

export type { Quantiles, Range } from '../base/range.ts'

/** Days since 1970-01-01 UTC, with fractions: the time the box model counts in. */
export type Day = number

/** A closed box with gel in a room, as the leak model sees it. */
export interface ClosedBox {
  readonly name: string
  /** Boxes of one model in one room share what is known of their leak. */
  readonly model: string | null
  readonly room: string | null
  readonly volumeL: number
  readonly gelKg: number
  /** Water the gel takes up [g per kg of dry gel and % of relative humidity]. */
  readonly reservoirGPerKgPercent: Range
  /** Written or measured; null where nobody knows, then the model's and the trade's range stand in. */
  readonly airChangesPerDay: Range | null
  readonly temperatureC: number
  /** When the gel was last renewed, and the relative humidity [%] the box began with. */
  readonly startedOn: Day
  readonly startRhPercent: Range
  /** The highest relative humidity [%] its finds bear; null where nothing limits it. */
  readonly limitRhPercent: number | null
}

/** The yearly course of relative humidity around the box: mean + swing · cos(2π (day − highestOn)/365.25). */
export interface Surroundings {
  readonly meanRhPercent: Range
  readonly swingRhPercent: number
  /** The day of highest humidity in any one year. */
  readonly highestOn: Day
  /** How it is known: the room's own logger, its written range, or nothing but a guess. */
  readonly from: 'logger' | 'written' | 'assumed'
}

/** What somebody or something saw of the humidity in a box. */
export type Sighting =
  | { readonly kind: 'logger'; readonly on: Day; readonly rhPercent: number; readonly errorRhPercent: number }
  /** An indicator strip read through the lid: somewhere in the interval [%]. */
  | {
      readonly kind: 'strip'
      readonly on: Day
      readonly lowRhPercent: number
      readonly highRhPercent: number
      readonly errorRhPercent: number
    }

/** Relative humidity ahead, a value a day: the middle line and the ribbons that hold half and eight in ten of the cases. */
export interface Fan {
  readonly days: readonly Day[]
  readonly p10: readonly number[]
  readonly p25: readonly number[]
  readonly p50: readonly number[]
  readonly p75: readonly number[]
  readonly p90: readonly number[]
}
