import type { Band } from '../../lib/engine/plan.ts'
import { heldBy, misfitOf, type Misfit } from '../../lib/papers/store.ts'
import type { Places } from '../../lib/services/list-places.ts'
import type { Standing } from '../../lib/services/standing.ts'

export interface BoxShown {
  readonly name: string
  readonly kind: string
  readonly shelf: string
  readonly held: Band | null
  readonly finds: readonly Standing[]
  readonly total: number
  readonly misfits: number
}

export interface RoomShown {
  readonly name: string
  readonly held: Band | null
  readonly boxes: readonly BoxShown[]
}

export interface MisfitShown {
  readonly find: Standing
  readonly box: string
  readonly room: string
  readonly held: Band | null
  readonly misfit: Misfit
}

/** Rooms with their boxes, and every find whose box does not suit it. */
export function storeOf(places: Places): {
  readonly rooms: readonly RoomShown[]
  readonly misfits: readonly MisfitShown[]
} {
  const misfits: MisfitShown[] = []
  const rooms = new Map<string, { name: string; held: Band | null; boxes: BoxShown[] }>()
  for (const { given } of places.rooms)
    rooms.set(given.room, { name: given.room, held: heldBy({ box: '' }, given), boxes: [] })
  for (const { box, finds, total } of places.boxes) {
    const name = box.given.room ?? ''
    const room = places.rooms.find(({ given }) => given.room === name)?.given
    const held = heldBy(box.given, room)
    const wrong = finds.flatMap((find): MisfitShown[] => {
      const misfit = misfitOf(find.line, box.given, held)
      return misfit === null ? [] : [{ find, box: box.given.box, room: name, held, misfit }]
    })
    misfits.push(...wrong)
    const group = rooms.get(name) ?? { name, held: null, boxes: [] }
    rooms.set(name, group)
    const { kind = '', shelf = '' } = box.given
    group.boxes.push({ name: box.given.box, kind, shelf, held, finds, total, misfits: wrong.length })
  }
  return {
    rooms: [...rooms.values()],
    misfits: misfits.toSorted((a, b) => rank(a) - rank(b) || excess(b) - excess(a)),
  }
}

const order: readonly Misfit[] = ['wet-in-dry', 'too-damp', 'too-dry', 'no-one-band', 'unknown-box']

function rank({ misfit }: MisfitShown): number {
  return order.indexOf(misfit)
}

/** By how much [%] the box leaves what the find bears: the worst first. */
function excess({ held, find }: MisfitShown): number {
  const { rhPercent } = find.line
  if (held === null || rhPercent === null) return 0
  return Math.max(held.max - rhPercent.max, rhPercent.min - held.min)
}
