import type { Place } from '../flaw.ts'
import { figureOf, type Shelf, type Unit } from './shelf.ts'

const slot = /\{figure:([a-z0-9-]+)\}/g

/** A sentence with its figures printed in; the ids it named are added to `named`. */
export function fillSentence(
  text: string,
  key: string,
  place: Place,
  shelf: Shelf,
  named: Set<string>,
): string {
  const bare = text.replaceAll(slot, '')
  const digits = /\d+/.exec(bare)
  if (digits !== null) shelf.report.add('digits', place, { key, digits: around(bare, digits.index) })
  const brace = /[{}]/.exec(bare)
  if (brace !== null) shelf.report.add('stray-brace', place, { key, found: around(bare, brace.index) })
  return text
    .replaceAll(slot, (whole, id: string) => {
      const figure = figureOf(id, place, shelf)
      if (figure === null) return whole
      named.add(id)
      return printed(figure.value, shelf.units.get(figure.unit))
    })
    .trim()
}

const grouped = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 12, useGrouping: 'min2' })

/** The value as people write it, followed by its unit. */
function printed(value: number, unit: Unit | undefined): string {
  const number = grouped.format(value).replace('-', '−')
  const after = value === 1 ? (unit?.one ?? unit?.printed) : unit?.printed
  return after === undefined || after === '' ? number : `${number} ${after}`
}

function around(text: string, index: number): string {
  return text
    .slice(Math.max(0, index - 12), index + 16)
    .replaceAll(/\s+/g, ' ')
    .trim()
}
