import type { WalkStop } from '../../../lib/papers/walk-list.ts'
import { bandMark } from '../../../lib/wording/band.ts'
import { capital } from '../../../lib/wording/capital.ts'
import { seenWords, wrongBrief } from '../../../lib/wording/store-wrong.ts'
import type { BoxSeen } from '../box-line.tsx'
import type { RoomSeen } from '../places-of.ts'
import { presses, stopsIn } from '../wrong-of.ts'

/** The boxes of the chosen room, or of all, in the order they stand. */
export function walkOf(rooms: readonly RoomSeen[], chosen: string | undefined): readonly WalkStop[] {
  return rooms
    .filter(({ room }) => chosen === undefined || room.name === chosen)
    .flatMap(({ shelves }) => shelves.flatMap(({ boxes }) => boxes.map(stopOf)))
}

function stopOf({ line, wrong }: BoxSeen): WalkStop {
  const { box, room, tub, needs, newest } = line
  const stops = stopsIn(wrong)
  const pressing = wrong.find(presses)
  return {
    box: box.given.box,
    room,
    shelf: box.given.shelf ?? '',
    tub: tub !== null,
    needs: tub !== null ? 'in water' : needs === null ? '' : `needs ${bandMark(needs)}`,
    lastSeen: newest === null ? null : seenWords(newest),
    wrong: pressing === undefined ? null : capital(wrongBrief(pressing)),
    stops,
    readOn: newest?.on ?? null,
  }
}
