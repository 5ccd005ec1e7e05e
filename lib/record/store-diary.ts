import type { IsoDate } from '../base/calendar.ts'
import type { Columns, Given } from './places.ts'
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
    readonly move: Move
    /** The box it left, where one is known. */
    readonly from_box?: string
    /** Whereto, in words, of what went out. */
    readonly where?: string
    readonly why?: string
  }
  readonly 'water-change': { readonly note?: string }
  readonly lid: { readonly lid: LidSeen; readonly minutes?: number; readonly why?: string }
  readonly coupon: Coupon
  /** Water came into a room: by what, and which boxes it reached. */
  readonly flood: {
    readonly cause: FloodCause
    /** Left out: every box of the room. */
    readonly boxes?: readonly string[]
    readonly note?: string
  }
  /** Where a logger was put; what stands in its register is made from this. */
  readonly 'logger-placed': { readonly serial: string }
}

export const moves = ['out', 'back', 'to-box'] as const
export type Move = (typeof moves)[number]

export const lidsSeen = ['opened', 'seated', 'not-seated'] as const
export type LidSeen = (typeof lidsSeen)[number]

export const floodCauses = ['flood', 'leak', 'condensation', 'rain'] as const
export type FloodCause = (typeof floodCauses)[number]

export const couponMetals = ['silver', 'copper', 'steel', 'zinc', 'lead'] as const
export const couponMethods = ['mass-gain', 'mass-loss'] as const

/** A metal strip hung up to see what the air does, taken down on the day of the entry. */
export interface Coupon {
  readonly metal: (typeof couponMetals)[number]
  readonly area_cm2: number
  readonly days: number
  readonly mass_change_mg: number
  /** ± of that difference, both weighings together, where somebody wrote it down. */
  readonly weighing_error_mg?: number
  /** Weighed as it came down (gain), or after the corrosion was taken off (loss). */
  readonly method: (typeof couponMethods)[number]
  readonly hung_on?: IsoDate
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

/** The diary as a table, ours: rounds have one of their own. */
export const diaryColumns = {
  event: 'text',
  on: 'date',
  at: 'text',
  box: 'text',
  room: 'text',
  site_code: 'text',
  find_number: 'text',
  gel_kg: 'number',
  gel_kind: 'text',
  gel_rh_percent: 'number',
  removed_kg: 'number',
  move: 'text',
  from_box: 'text',
  where: 'text',
  why: 'text',
  lid: 'text',
  minutes: 'number',
  metal: 'text',
  area_cm2: 'number',
  hung_on: 'date',
  days: 'number',
  mass_change_mg: 'number',
  weighing_error_mg: 'number',
  method: 'text',
  cause: 'text',
  boxes: 'text',
  serial: 'text',
  note: 'text',
} as const satisfies Columns

export type DiaryRow = Given<typeof diaryColumns, 'event' | 'on'>

export type TabledKind = Exclude<DiaryKind, 'round'>

/** Which columns an event fills, and which of them it cannot do without. */
export const eventColumns: Readonly<
  Record<TabledKind, { readonly must: readonly Column[]; readonly may: readonly Column[] }>
> = {
  'gel-change': { must: ['box', 'gel_kg'], may: ['gel_kind', 'gel_rh_percent', 'removed_kg', 'note'] },
  moved: { must: ['find_number', 'move'], may: ['box', 'from_box', 'where', 'why'] },
  'water-change': { must: ['box'], may: ['note'] },
  lid: { must: ['box', 'lid'], may: ['minutes', 'why'] },
  coupon: {
    must: ['metal', 'area_cm2', 'days', 'mass_change_mg', 'method'],
    may: ['box', 'room', 'hung_on', 'weighing_error_mg', 'note'],
  },
  flood: { must: ['room', 'cause'], may: ['boxes', 'note'] },
  'logger-placed': { must: ['serial'], may: ['box', 'room'] },
}

type Column = keyof typeof diaryColumns
