import type { Columns, Given } from './places.ts'

/** What a round through the store reads of one box: a strip through the lid lies in an interval. */
export const roundColumns = {
  box: 'text',
  on: 'date',
  strip_low: 'number',
  strip_high: 'number',
  gel_colour: 'text',
  lid: 'text',
  by: 'text',
} as const satisfies Columns

export type RoundGiven = Given<typeof roundColumns, 'box' | 'on'>

export const lidStates = ['seated', 'not-seated'] as const
export type LidState = (typeof lidStates)[number]
