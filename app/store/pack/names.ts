import type { ProposedBox } from '../../../lib/boxes/pack-proposal.ts'
import type { StorePacking } from '../../../lib/services/pack-store.ts'

/** A box by its name; one that is to be had by its make and a number. */
export function boxName({ box, number }: Pick<ProposedBox, 'box' | 'number'>): string {
  return box.name ?? `new ${box.model === '' ? box.kind : box.model} ${number}`
}

/** `, Metal store, shelf C6` of a box that stands in the list. */
export function placeOf({ places }: Pick<StorePacking, 'places'>, name: string): string {
  const place = places.get(name)
  if (place === undefined) return ''
  return [place.room, place.shelf === '' ? '' : `shelf ${place.shelf}`]
    .filter((word) => word !== '')
    .map((word) => `, ${word}`)
    .join('')
}
