import type { Band } from '../engine/plan.ts'
import { bandWords } from './band.ts'

/** Things a bag may need; their names say no more than the packing advice itself does. */
const things = {
  'perforated-bag': 'Bags with holes',
  'bulk-bag': 'Large bags with holes, one a kind and context',
  'dry-box': 'Tight plastic boxes with lids',
  'dry-gel': 'Charges of dry silica gel',
  'humidity-strip': 'Humidity strips, one a box',
  'water-tub': 'Tubs with lids, and water to cover the find',
  'inert-foam': 'Firm polyethylene foam, to cut a bed from',
  'dark-cover': 'Covers that keep light out',
  gloves: 'Gloves',
  label: 'Labels',
} as const

export type SupplyId = keyof typeof things

export function supplyWords({ id, band }: { readonly id: SupplyId; readonly band: Band | null }): string {
  return band === null ? things[id] : `${things[id]}, for ${bandWords(band)}`
}

export function supplyCount({
  atLeast,
  id,
}: {
  readonly id: SupplyId
  readonly atLeast: number | null
}): string {
  if (atLeast === null) return 'as needed'
  const exact = id === 'perforated-bag' || id === 'label'
  return exact ? String(atLeast) : `at least ${atLeast}`
}
