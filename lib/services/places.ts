import type { BoxGiven, RoomGiven } from '../record/places.ts'
import type { Kept } from './kept.ts'

/** A room of the store and the climate it is run at. */
export interface Room extends Kept {
  readonly projectId: string
  readonly given: RoomGiven
}

/** A box, tub, case or pack, and where it stands. */
export interface Box extends Kept {
  readonly projectId: string
  readonly given: BoxGiven
}

/** `version` null: new, or the newest whatever it is (a whole table read in); a number: the version it was read at. */
export interface ToKeep<Given> {
  readonly given: Given
  readonly version: number | null
}
