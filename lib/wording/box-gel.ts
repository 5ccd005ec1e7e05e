import type { BoxGiven } from '../record/places.ts'
import { numberWords } from './band.ts'
import { dayWords } from './day.ts'

type Gel = Pick<BoxGiven, 'gel_kg' | 'gel_kind' | 'gel_conditioned_on' | 'gel_rh_percent'>

/** A mass as it is weighed out: grams below a kilogram. */
export function kilogramWords(kg: number): string {
  return kg < 1 ? `${Math.round(kg * 1000)} g` : `${numberWords(kg)} kg`
}

/** The gel of a box in the least words: `500 g of gel since 3 March 2026`. */
export function gelWords({ gel_kg, gel_kind, gel_conditioned_on }: Gel): string {
  if (gel_kg === undefined) return 'no gel written down'
  if (gel_kg === 0) return 'no gel'
  const kind = gel_kind === undefined || gel_kind === '' ? 'gel' : `gel (${gel_kind})`
  const since = gel_conditioned_on === undefined ? '' : ` since ${dayWords(gel_conditioned_on)}`
  return `${kilogramWords(gel_kg)} of ${kind}${since}`
}

/** Why nothing can be told of a box, and what would settle it. */
export const noOutlookWords = {
  tub: 'A tub of water: no gel, no forecast.',
  'no-gel': 'Nobody has written how much gel it holds, so its renewal cannot be told.',
  'no-volume': 'Nobody has written how large it is, so its renewal cannot be told.',
  'no-start':
    'Nobody has written when its gel was last renewed, and nobody has read it since: its renewal cannot be told.',
} as const
