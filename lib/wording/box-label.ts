import type { Band } from '../engine/plan.ts'
import type { BoxGiven } from '../record/places.ts'
import { bandWords, numberWords } from './band.ts'
import { dayWords } from './day.ts'

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
  if (asked !== null && asked.min > asked.max) return 'Its finds ask for different humidities: ask the store.'
  if (asked !== null) return `Keep at ${bandWords(asked)} relative humidity.`
  return held === null ? 'No humidity is named for what it holds.' : `Kept at ${bandWords(held)}.`
}

/** `0.5 kg silica gel (plain), renewed 14 September 2026`. */
export function gelWords({ gel_kg, gel_kind, gel_conditioned_on }: BoxGiven): string {
  if (gel_kg === undefined) return ''
  const kind = gel_kind === undefined ? '' : ` (${gel_kind})`
  const renewed = gel_conditioned_on === undefined ? '' : `, renewed ${dayWords(gel_conditioned_on)}`
  const kilograms = gel_kg < 0.1 ? `${Math.round(gel_kg * 1000)} g` : `${numberWords(gel_kg)} kg`
  return `${kilograms} silica gel${kind}${renewed}`
}
