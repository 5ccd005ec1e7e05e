import type { Band } from '../engine/plan.ts'
import { heldBy, misfitOf, type Misfit } from '../papers/store.ts'
import { narrows } from '../papers/ruler.ts'
import type { BoxGiven, RoomGiven } from '../record/places.ts'
import type { Standing } from './standing.ts'

/** What the finds of a box ask of it, and what it is meant to hold. */
export interface BoxNeeds {
  readonly needs: Band | null
  readonly disagree: boolean
  readonly held: Band | null
  readonly misfits: readonly { readonly find: Standing; readonly misfit: Misfit }[]
}

/** The band that all dry finds with limits bear; null where nothing is asked, or where they do not agree. */
function shared(finds: readonly Standing[]): Pick<BoxNeeds, 'needs' | 'disagree'> {
  const asked = finds.flatMap(({ line }) =>
    line.keep !== 'wet' && line.rhPercent !== null && narrows(line.rhPercent) ? [line.rhPercent] : [],
  )
  if (asked.length === 0) return { needs: null, disagree: false }
  const needs = {
    min: Math.max(...asked.map(({ min }) => min)),
    max: Math.min(...asked.map(({ max }) => max)),
  }
  // Limits that only touch do not meet: no box holds a single figure.
  return needs.min >= needs.max ? { needs: null, disagree: true } : { needs, disagree: false }
}

export function boxNeeds(box: BoxGiven, room: RoomGiven | undefined, finds: readonly Standing[]): BoxNeeds {
  const held = heldBy(box, room)
  const misfits = finds.flatMap((find) => {
    const misfit = misfitOf(find.line, box, held)
    return misfit === null ? [] : [{ find, misfit }]
  })
  return { ...shared(finds), held, misfits }
}

/**
 * The highest humidity [%] the box is kept to: what its driest find bears, or the target somebody wrote where that is lower;
 * finds that disagree are kept to the driest of them until somebody parts them. Null: nothing limits it.
 */
export function limitOf(box: BoxGiven, finds: readonly Standing[]): number | null {
  const highest = finds.flatMap(({ line }) =>
    line.keep !== 'wet' && line.rhPercent !== null && line.rhPercent.max < 100 ? [line.rhPercent.max] : [],
  )
  const all = [...highest, ...(box.target_max === undefined || box.target_max >= 100 ? [] : [box.target_max])]
  return all.length === 0 ? null : Math.min(...all)
}
