import type { IsoDate } from '../base/calendar.ts'

/** The store's own tables of the contract: their columns, in its order and under its names; ours stand at the end. */
export type PlaceColumn = 'text' | 'number' | 'date'

export const roomColumns = {
  room: 'text',
  rh_low: 'number',
  rh_high: 'number',
  t_low: 'number',
  t_high: 'number',
} as const satisfies Columns

export const boxColumns = {
  box: 'text',
  room: 'text',
  shelf: 'text',
  kind: 'text',
  model: 'text',
  volume_l: 'number',
  air_changes_per_day: 'number',
  gel_kg: 'number',
  gel_kind: 'text',
  gel_conditioned_on: 'date',
  gel_rh_percent: 'number',
  target_min: 'number',
  target_max: 'number',
  opened_on: 'date',
  seal_note: 'text',
  length_mm: 'number',
  width_mm: 'number',
  height_mm: 'number',
  max_kg: 'number',
  filled_on: 'date',
  water_changed_on: 'date',
} as const satisfies Columns

export type Columns = Readonly<Record<string, PlaceColumn>>

type Value<Column extends PlaceColumn> = Column extends 'number'
  ? number
  : Column extends 'date'
    ? IsoDate
    : string

/** What a row gives: the columns named by `Key` always, the others where they are filled. */
export type Given<Of extends Columns, Key extends keyof Of> = {
  readonly [Name in Exclude<keyof Of, Key>]?: Value<Of[Name]>
} & { readonly [Name in Key]: Value<Of[Name]> } & {
  /** Columns of no meaning here, and cells that could not be read, kept as they came. */
  readonly extra?: Readonly<Record<string, string>>
}

export type RoomGiven = Given<typeof roomColumns, 'room'>
export type BoxGiven = Given<typeof boxColumns, 'box'>

/** A box may be a tub of water; what stands in no list is a box. */
export const boxKinds = ['box', 'tub', 'case', 'barrier-pack'] as const
export type BoxKind = (typeof boxKinds)[number]
