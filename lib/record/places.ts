import type { IsoDate } from '../base/calendar.ts'

/** The store's own tables of the contract: their columns, in its order and under its names. */
export type PlaceColumn = 'text' | 'number' | 'date'

export const roomColumns = {
  room: 'text',
  rh_low: 'number',
  rh_high: 'number',
  t_low: 'number',
  t_high: 'number',
} as const satisfies Record<string, PlaceColumn>

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
} as const satisfies Record<string, PlaceColumn>

type Value<Column extends PlaceColumn> = Column extends 'number'
  ? number
  : Column extends 'date'
    ? IsoDate
    : string

type Given<Columns extends Readonly<Record<string, PlaceColumn>>, Key extends keyof Columns> = {
  readonly [Name in Exclude<keyof Columns, Key>]?: Value<Columns[Name]>
} & { readonly [Name in Key]: Value<Columns[Name]> } & {
  /** Columns of no meaning here, kept as they came. */
  readonly extra?: Readonly<Record<string, string>>
}

export type RoomGiven = Given<typeof roomColumns, 'room'>
export type BoxGiven = Given<typeof boxColumns, 'box'>
