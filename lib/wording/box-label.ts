import type { Band } from '../engine/plan.ts'
import { bandWords } from './band.ts'

/** How a box is kept: by what its finds ask for; what the box is set to only where nothing in it asks. */
export function boxKeepWords({
  isTub,
  asked,
  held,
}: {
  readonly isTub: boolean
  readonly asked: Band | null
  readonly held: Band | null
}): string {
  if (isTub) return 'Keep wet, cool and dark. Lid on.'
  if (asked !== null && asked.min >= asked.max)
    return 'Its finds ask for different humidities: ask the store.'
  if (asked !== null) return `Keep at ${bandWords(asked)} relative humidity.`
  return held === null ? 'No humidity is named for what it holds.' : `Kept at ${bandWords(held)}.`
}
