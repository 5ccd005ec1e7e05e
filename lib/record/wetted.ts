import { daysBetween, type IsoDate } from '../base/calendar.ts'
import type { ConditionRecord } from './record.ts'

export interface Wetting {
  readonly on: IsoDate
  readonly how: NonNullable<ConditionRecord['wetted_by']> & ('flood' | 'leak' | 'condensation' | 'rain')
  readonly by: string
  /** Said in the notes, so that a later reader knows who looked at what. */
  readonly note: string
}

/**
 * A find's newest record carried on to the day it got wet: only that it is wet, and how, is new. What a wetting makes
 * untrue is left out: the humidity it was kept at, and the days it was watched without change.
 */
export function wetted(record: ConditionRecord, { on, how, by, note }: Wetting): ConditionRecord {
  const { stored_rh_percent: _keptAt, watched_days: _watched, days_since_lifting, ...kept } = record
  const since =
    typeof days_since_lifting === 'number' && record.recorded_on !== undefined
      ? { days_since_lifting: days_since_lifting + daysBetween(record.recorded_on, on) }
      : {}
  return {
    ...kept,
    ...since,
    state_now: 'wet',
    wetted_by: how,
    recorded_on: on,
    recorded_by: by,
    notes: [record.notes, note].filter((text) => text !== undefined && text !== '').join('\n'),
  }
}
