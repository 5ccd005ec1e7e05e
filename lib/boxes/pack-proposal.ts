import type { Band } from '../engine/plan.ts'
import type { PackBox } from './pack-find.ts'

/** Why a find goes into none of the boxes there are. */
export type Nowhere =
  /** Nobody moves it until the competent body has cleared it. */
  | { readonly code: 'stopped' }
  /** No one humidity suits its parts; a conservator decides. */
  | { readonly code: 'no-one-band'; readonly holdingRhPercent: Band | null }
  | { readonly code: 'band-narrower'; readonly widthPercent: number; readonly narrowestPercent: number }
  /** It wants drier air than gel gives. */
  | { readonly code: 'drier-than-gel'; readonly maxPercent: number; readonly driestPercent: number }
  | { readonly code: 'too-long'; readonly byMm: number; readonly sideMm: number }
  | { readonly code: 'too-big'; readonly volumeL: number; readonly mostL: number }
  | { readonly code: 'too-heavy'; readonly massKg: number; readonly mostKg: number }
  /** Kept wet, and there is no tub. */
  | { readonly code: 'no-tub' }
  /** No room is as cold, or as mild, as it must be. */
  | { readonly code: 'no-room-for-temperature'; readonly min: number | null; readonly max: number | null }
  /** No room has its humidity, and every box that would take it leaks too fast to hold any. */
  | { readonly code: 'no-tight-box' }
  /** It would go into a box of its own, and none is empty. */
  | { readonly code: 'no-box-alone' }
  /** It would go in, and every box that suits it is full. */
  | { readonly code: 'no-box-left' }
  /** There is no box at all whose size is written. */
  | { readonly code: 'no-box' }

/** What to see to as a find is put into a box. */
export type Heed =
  /** Its plan says: ask before it is moved. */
  | 'ask-first'
  /** It is wet or damp, or comes out of a tub: it dries in the open before it is closed in. */
  | 'dry-first'
  /** Its size was not measured and was supposed. */
  | 'size-supposed'
  /** Nobody has written the inner sides of the box: try whether it goes in. */
  | 'try-size'
  /** The room is at times colder or warmer than it bears. */
  | 'room-temperature'

export interface ProposedBox {
  /** The box as it stands, or the model it is one of. */
  readonly box: PackBox
  /** Numbers boxes of a model that are to be had: 1, 2, …; null for one that stands in the store. */
  readonly number: number | null
  readonly findIds: readonly string[]
  /** What all its finds bear; null for a tub. */
  readonly band: Band | null
  /** The find whose band decides the upper and the lower end; null where nothing limits it. */
  readonly decidedBy: { readonly high: string | null; readonly low: string | null }
  readonly dark: boolean
  /** Parts of what its room and its weight allow, 0 to 1. */
  readonly filled: number
  readonly massKg: number
  readonly gelKg: number
}

export interface ProposedMove {
  readonly findId: string
  readonly from: string | null
  /** Index into `boxes`. */
  readonly to: number
  readonly heed: readonly Heed[]
}

/** Where a find stays as it is, because nobody may touch it or its box, or a conservator has to decide first. */
export interface Stays {
  readonly findId: string
  readonly box: string
  readonly why: 'stopped' | 'beside-a-stop' | 'no-one-band' | 'well-there'
}

/** A find for which there is no box. */
export interface NoBox {
  readonly findId: string
  /** The box of the list it lies in still; nothing is put beside it there. */
  readonly still: string | null
  readonly why: readonly Nowhere[]
}

export interface PackProposal {
  readonly boxes: readonly ProposedBox[]
  /** In the order one walks: shelf by shelf of where things come from. */
  readonly moves: readonly ProposedMove[]
  readonly nowhere: readonly NoBox[]
  readonly stays: readonly Stays[]
  /** Boxes in use by the proposal, and how few there could be at the least. */
  readonly used: number
  readonly atLeast: number
  readonly gelKg: number
}
