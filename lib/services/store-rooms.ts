import type { Surroundings } from '../boxes/box.ts'
import { sortKey } from '../base/sort-key.ts'
import type { BoxLine, RoomShown } from './show-store.ts'
import type { StoreData } from './store-data.ts'

const inOrder = (a: string, b: string) => {
  const [one, other] = [sortKey(a), sortKey(b)]
  return one < other ? -1 : one > other ? 1 : 0
}

/** Shelves as one walks along them, and on each the boxes by name; boxes without a shelf last. */
function shelvesOf(lines: readonly BoxLine[]): RoomShown['shelves'] {
  const byShelf = Map.groupBy(lines, ({ box }) => box.given.shelf ?? '')
  return [...byShelf]
    .toSorted(([a], [b]) => (a === '' ? 1 : b === '' ? -1 : inOrder(a, b)))
    .map(([shelf, boxes]) => ({
      shelf,
      boxes: boxes.toSorted((a, b) => inOrder(a.box.given.box, b.box.given.box)),
    }))
}

/** Rooms as they are listed, then those that only boxes name, then boxes that name none. */
export function roomsShown(
  data: StoreData,
  lines: readonly BoxLine[],
  surroundings: (room: string) => Surroundings,
): readonly RoomShown[] {
  const byRoom = Map.groupBy(lines, ({ room }) => room)
  const listed = data.rooms.map((room) => ({ room, name: room.given.room }))
  const names = new Set(listed.map(({ name }) => name))
  const others = [...byRoom.keys()]
    .filter((name) => !names.has(name))
    .toSorted((a, b) => (a === '' ? 1 : b === '' ? -1 : inOrder(a, b)))
  return [...listed, ...others.map((name) => ({ room: null, name }))].map(({ room, name }) => ({
    room,
    name,
    surroundings: surroundings(name),
    shelves: shelvesOf(byRoom.get(name) ?? []),
  }))
}
