import type { IsoDate } from '../base/calendar.ts'
import type { RoundGiven } from './store-rounds.ts'

/** Everything that happens in a store after it was set up is an entry of its diary; none is ever changed. */
export interface DiaryGiven {
  readonly round: Omit<RoundGiven, 'box' | 'on'>
  /** Gel put in, and how much spent gel was taken out. */
  readonly 'gel-change': {
    readonly gel_kg: number
    readonly gel_kind?: string
    readonly gel_rh_percent?: number
    readonly removed_kg?: number
    readonly note?: string
  }
  /** A find taken out, brought back, or put in another box. */
  readonly moved: {
    readonly move: 'out' | 'back' | 'to-box'
    /** The box it left, where one is known. */
    readonly from?: string
    /** Whereto, in words, of what went out. */
    readonly where?: string
    readonly why?: string
  }
  readonly 'water-change': { readonly note?: string }
  readonly lid: { readonly lid: 'opened' | 'seated' | 'not-seated'; readonly minutes?: number; readonly why?: string }
  readonly coupon: Coupon
  /** Water came into a room: which boxes, and what came of it. */
  readonly flood: {
    readonly by: 'flood' | 'leak' | 'condensation' | 'rain'
    /** Boxes it reached; left out: every box of the room. */
    readonly boxes?: readonly string[]
    readonly note?: string
  }
  readonly 'logger-placed': { readonly serial: string; readonly from?: string }
}

/** A metal strip hung up to see what the air does. */
export interface Coupon {
  readonly metal: 'silver' | 'copper' | 'steel' | 'zinc' | 'lead'
  readonly area_cm2: number
  readonly hung_on: IsoDate
  readonly days: number
  readonly mass_change_mg: number
  /** Weighed as it came down (gain), or after the corrosion was taken off (loss). */
  readonly method: 'mass-gain' | 'mass-loss'
  readonly note?: string
}

export type DiaryKind = keyof DiaryGiven

export const diaryKinds = [
  'round',
  'gel-change',
  'moved',
  'water-change',
  'lid',
  'coupon',
  'flood',
  'logger-placed',
] as const satisfies readonly DiaryKind[]
