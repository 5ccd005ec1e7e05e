import type { Band } from '../engine/plan.ts'
import type { BoxGiven, RoomGiven } from '../record/places.ts'
import { narrows, type StorageLine } from './ruler.ts'

export interface StoredFind extends StorageLine {
  readonly findNumber: string
  readonly keep: 'dry' | 'wet' | 'as-found'
}

/** The humidity a box is meant to hold: its own target, else that of its room; null where neither is written. */
export function heldBy(box: BoxGiven, room: RoomGiven | undefined): Band | null {
  if (box.target_min !== undefined || box.target_max !== undefined) {
    return { min: box.target_min ?? 0, max: box.target_max ?? 100 }
  }
  if (room?.rh_low === undefined && room?.rh_high === undefined) return null
  return { min: room.rh_low ?? 0, max: room.rh_high ?? 100 }
}

export type Misfit = 'wet-in-dry' | 'no-one-band' | 'too-damp' | 'too-dry' | 'unknown-box'

/** Why a find does not belong in a box that holds this band; null where it does, or where nothing limits it. */
export function misfitOf(find: StoredFind, box: BoxGiven, held: Band | null): Misfit | null {
  if (find.keep === 'wet') return box.kind === 'tub' ? null : 'wet-in-dry'
  if (find.rhPercent === null) return 'no-one-band'
  if (!narrows(find.rhPercent)) return null
  if (held === null) return 'unknown-box'
  if (held.max > find.rhPercent.max) return 'too-damp'
  return held.min < find.rhPercent.min ? 'too-dry' : null
}
