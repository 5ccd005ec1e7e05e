import type { BoxLine, RoomShown, StoreShown } from '../../lib/services/show-store.ts'
import type { BoxSeen } from './box-line.tsx'
import { presses, wrongOf } from './wrong-of.ts'

export interface ShelfSeen {
  readonly shelf: string
  readonly boxes: readonly BoxSeen[]
}

export interface RoomSeen {
  readonly room: RoomShown
  readonly shelves: readonly ShelfSeen[]
  readonly counts: Counts
}

export interface Counts {
  readonly boxes: number
  readonly finds: number
  readonly tubs: number
  readonly tubsPast: number
  readonly pressing: number
  readonly unread: number
}

/** Every room with what is wrong in each of its boxes. */
export function roomsSeen(
  { rooms, today }: Pick<StoreShown, 'rooms' | 'today'>,
  roundEveryDays: number,
  stops: ReadonlyMap<string, readonly string[]>,
): readonly RoomSeen[] {
  return rooms.map((room) => {
    const shelves = room.shelves.map(({ shelf, boxes }) => {
      const seen = boxes.map((line) => {
        const own = stops.get(line.box.given.box) ?? []
        return { line, wrong: wrongOf(line, { today, roundEveryDays, stops: own }) }
      })
      return { shelf, boxes: seen }
    })
    return { room, shelves, counts: countsOf(shelves.flatMap(({ boxes }) => boxes)) }
  })
}

export function countsOf(boxes: readonly BoxSeen[]): Counts {
  const tubs = boxes.filter(({ line }) => line.tub !== null)
  return {
    boxes: boxes.length - tubs.length,
    finds: boxes.reduce((sum, { line }) => sum + line.finds, 0),
    tubs: tubs.length,
    tubsPast: tubs.filter(({ line }) => line.tub?.pastItsDays === true).length,
    pressing: boxes.filter(({ wrong }) => wrong.some(presses)).length,
    unread: boxes.filter(({ wrong }) => wrong.some(({ code }) => code === 'unread')).length,
  }
}

export const allBoxes = (rooms: readonly RoomSeen[]): readonly BoxSeen[] =>
  rooms.flatMap(({ shelves }) => shelves.flatMap(({ boxes }) => boxes))

/** Every box of the store as it comes, in the order they stand. */
export const allBoxesOf = ({ rooms }: Pick<StoreShown, 'rooms'>): readonly BoxLine[] =>
  rooms.flatMap(({ shelves }) => shelves.flatMap(({ boxes }) => boxes))
