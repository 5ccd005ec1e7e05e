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
  /** How far the swing may be off, both in size and in time [%, two standard deviations]; left out: by how it is known. */
  readonly swingErrorRhPercent?: number
  /** The day of highest humidity in any one year. */
  readonly highestOn: Day
  /** How it is known: the room's own logger, its written range, or nothing but a guess. */
  readonly from: 'logger' | 'written' | 'assumed'
}

/**
 * What somebody or something saw of the humidity in a box. An error [%] is the ± of a maker or a calibration; what two
 * standard deviations hold.
 */
export type Sighting =
  | {
      readonly kind: 'logger'
      readonly on: Day
      readonly rhPercent: number
      /** Mostly one and the same offset in every reading of the logger, not chance. */
      readonly errorRhPercent: number
      /** Which logger: each has an offset of its own. Left out: one and the same for all of the box. */
      readonly serial?: string
    }
  /** A flat run at the least the logger can report: drier than that, nobody knows how much. */
  | {
      readonly kind: 'below-range'
      readonly on: Day
      readonly floorRhPercent: number
      readonly errorRhPercent: number
      readonly serial?: string
    }
  /** An indicator strip read through the lid: somewhere in the interval [%]. */
  | {
      readonly kind: 'strip'
      readonly on: Day
      readonly lowRhPercent: number
      readonly highRhPercent: number
      readonly errorRhPercent: number
    }
  /** The gel shows the colour of spent gel. Its other colour says nothing. */
  | { readonly kind: 'gel-spent'; readonly on: Day }
  /** The lid was found not seated, and is taken to have been seated then. */
  | { readonly kind: 'lid-loose'; readonly on: Day }

/** Relative humidity ahead, a value a day: the middle line and the ribbons that hold half and eight in ten of the cases. */
export interface Fan {
  readonly days: readonly Day[]
  readonly p10: readonly number[]
  readonly p25: readonly number[]
  readonly p50: readonly number[]
  readonly p75: readonly number[]
  readonly p90: readonly number[]
}
