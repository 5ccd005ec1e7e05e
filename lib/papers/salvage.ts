import { sortKey } from '../base/sort-key.ts'
import type { BoxGiven } from '../record/places.ts'
import { salvageReasons, type SalvageReason } from '../wording/salvage.ts'
import { narrows, type StorageLine } from './ruler.ts'

export interface SalvageFind extends StorageLine {
  readonly findNumber: string
  readonly keep: 'dry' | 'wet' | 'as-found'
  readonly parts: readonly { readonly material: string }[]
  readonly stops: readonly { readonly code: string; readonly text: string; readonly who: string }[]
}

export interface SalvageBox {
  readonly box: string
  readonly shelf: string
  readonly kind: string
  readonly reason: SalvageReason
  /** The lowest humidity [%] any of its finds may be kept under; null where none names one. */
  readonly lowestCeiling: number | null
  readonly ironFinds: number
  readonly finds: readonly string[]
}

export interface SalvageRoom {
  readonly room: string
  /** Stays where it is until the one named has come. */
  readonly stops: readonly {
    readonly find: string
    readonly box: string
    readonly text: string
    readonly who: string
  }[]
  readonly boxes: readonly SalvageBox[]
}

const ironIds: ReadonlySet<string> = new Set(['iron', 'cast-iron', 'steel'])

const isIron = ({ parts }: SalvageFind) => parts.some(({ material }) => ironIds.has(material))

function reasonOf(find: SalvageFind): SalvageReason {
  if (find.keep === 'wet') return 'in-water'
  if (isIron(find)) return 'iron'
  if (find.conflict !== null) return 'parts-disagree'
  return narrows(find.rhPercent) ? 'dry' : 'other'
}

function salvageBox({ box, shelf = '', kind = '' }: BoxGiven, finds: readonly SalvageFind[]): SalvageBox {
  const reasons = new Set(finds.map(reasonOf))
  const ceilings = finds.flatMap(({ keep, rhPercent }) =>
    keep !== 'wet' && rhPercent !== null && rhPercent.max < 100 ? [rhPercent.max] : [],
  )
  return {
    box,
    shelf,
    kind,
    reason: salvageReasons.find((reason) => reasons.has(reason)) ?? 'other',
    lowestCeiling: ceilings.length === 0 ? null : Math.min(...ceilings),
    ironFinds: finds.filter((find) => find.keep !== 'wet' && isIron(find)).length,
    finds: finds.map(({ findNumber }) => findNumber),
  }
}

/** Boxes of each room in the order they are carried out: by reason, then the driest, then as they stand on the shelves. */
export function salvageRooms(
  boxes: readonly { readonly given: BoxGiven; readonly finds: readonly SalvageFind[] }[],
): readonly SalvageRoom[] {
  const byRoom = Map.groupBy(boxes, ({ given }) => given.room ?? '')
  return [...byRoom]
    .map(([room, inIt]) => ({
      room,
      stops: inIt.flatMap(({ given, finds }) =>
        finds.flatMap((find) =>
          find.stops.map(({ text, who }) => ({ find: find.findNumber, box: given.box, text, who })),
        ),
      ),
      boxes: inIt
        .filter(({ finds }) => finds.length > 0)
        .map(({ given, finds }) => salvageBox(given, finds))
        .toSorted(
          (a, b) =>
            salvageReasons.indexOf(a.reason) - salvageReasons.indexOf(b.reason) ||
            (a.lowestCeiling ?? 100) - (b.lowestCeiling ?? 100) ||
            compare(sortKey(`${a.shelf} ${a.box}`), sortKey(`${b.shelf} ${b.box}`)),
        ),
    }))
    .filter(({ boxes: listed }) => listed.length > 0)
    .toSorted((a, b) => compare(sortKey(a.room), sortKey(b.room)))
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)
