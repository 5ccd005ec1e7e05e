import { encode } from 'uqr'
import type { BoxGiven, RoomGiven } from '../record/places.ts'
import { gelWords } from '../wording/box-gel.ts'
import { boxKeepWords } from '../wording/box-label.ts'
import { countWords } from '../wording/list.ts'
import { narrows } from './ruler.ts'
import type { SalvageFind } from './salvage.ts'
import { heldBy } from './store.ts'

/** What goes on a box: its number large, how it is kept, what must be known before it is opened. */
export interface BoxLabel {
  readonly box: string
  readonly place: string
  readonly keep: string
  readonly gel: string
  readonly count: string
  readonly warnings: readonly string[]
  /** The number as a square code: rows of dark (true) and light modules. */
  readonly code: readonly (readonly boolean[])[]
}

export function boxLabel(
  box: BoxGiven,
  room: RoomGiven | undefined,
  finds: readonly SalvageFind[],
): BoxLabel {
  const isTub = box.kind === 'tub' || (finds.length > 0 && finds.every(({ keep }) => keep === 'wet'))
  const ceilings = finds.flatMap(({ keep, rhPercent }) =>
    keep !== 'wet' && rhPercent !== null && narrows(rhPercent) ? [rhPercent] : [],
  )
  const shared =
    ceilings.length === 0
      ? null
      : {
          min: Math.max(...ceilings.map(({ min }) => min)),
          max: Math.min(...ceilings.map(({ max }) => max)),
        }
  const stops = [...new Set(finds.flatMap((find) => find.stops.map(({ text }) => text)))]
  return {
    box: box.box,
    place: [box.room ?? '', box.shelf === undefined ? '' : `shelf ${box.shelf}`]
      .filter((text) => text !== '')
      .join(', '),
    keep: boxKeepWords({ isTub, asked: shared, held: heldBy(box, room) }),
    gel: isTub || box.gel_kg === undefined ? '' : gelWords(box),
    count: countWords(finds.length, 'find'),
    warnings: stops.map((text) => `STOP: ${text}`),
    code: encode(box.box, { ecc: 'M', border: 0 }).data,
  }
}
