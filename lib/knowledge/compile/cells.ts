import type { Domain } from '../domains.ts'
import type { Place } from '../flaw.ts'
import type { Cell, Interval } from '../knowledge.ts'
import type { Path } from './document.ts'
import { nearest } from './nearest.ts'
import type { rule, Written } from './shapes.ts'
import { figureOf, unknownId, type Shelf } from './shelf.ts'
import { factUnits } from './units.ts'

type WrittenWhen = Written<typeof rule>['when']
type WrittenCell = WrittenWhen[string]

/** The facts that a decision's cells may name: those of the record, and the decisions that can be read. */
export type Domains = ReadonlyMap<string, Domain>

/** The cells in the order of their facts; a cell that names an unknown fact is reported and left out. */
export function linkCells(
  when: WrittenWhen,
  place: (...path: Path) => Place,
  domains: Domains,
  shelf: Shelf,
  named: Set<string>,
): Cell[] {
  return Object.keys(when)
    .toSorted()
    .flatMap((fact) => linkCell(fact, when[fact]!, place(fact), domains, shelf, named) ?? [])
}

function linkCell(
  fact: string,
  written: WrittenCell,
  place: Place,
  domains: Domains,
  shelf: Shelf,
  named: Set<string>,
): Cell | null {
  const domain = domains.get(fact)
  if (domain === undefined) {
    unknownId('fact', fact, domains.keys(), place, shelf.report)
    return null
  }
  if (Array.isArray(written)) {
    checkValues(fact, written, domain, place, shelf)
    return { fact, any: [...new Set(written)].toSorted() }
  }
  if ('none' in written) {
    checkValues(fact, written.none, domain, place, shelf)
    return { fact, none: [...new Set(written.none)].toSorted() }
  }
  if (domain.kind !== 'number') {
    shelf.report.add('cell-kind', place, { fact, wants: 'values' })
    return null
  }
  return { fact, interval: linkInterval(fact, written, place, shelf, named) }
}

function checkValues(
  fact: string,
  written: readonly string[],
  domain: Domain,
  place: Place,
  shelf: Shelf,
): void {
  if (domain.kind === 'number') {
    if (written.some((value) => value !== 'unknown'))
      shelf.report.add('cell-kind', place, { fact, wants: 'interval' })
    return
  }
  for (const value of written) {
    if (domain.values.includes(value) || domain.open || (value === 'unknown' && !domain.answered)) continue
    shelf.report.add('unknown-value', place, { fact, value, near: nearest(value, domain.values) })
  }
}

function linkInterval(
  fact: string,
  written: Exclude<WrittenCell, string[] | { none: string[] }>,
  place: Place,
  shelf: Shelf,
  named: Set<string>,
): Interval {
  const ends = (['from', 'above', 'to', 'below'] as const).flatMap((end) => {
    const id = written[end]
    if (id === undefined) return []
    const value = valueOf(id, factUnits(fact), place, shelf, named)
    return value === null ? [] : [{ end, id, value }]
  })
  const has = (end: string): boolean => written[end as 'from'] !== undefined
  const none = !has('from') && !has('above') && !has('to') && !has('below')
  if (none || (has('from') && has('above')) || (has('to') && has('below'))) {
    shelf.report.add('interval-ends', place, { fact })
  }
  const low = ends.find(({ end }) => end === 'from' || end === 'above')
  const high = ends.find(({ end }) => end === 'to' || end === 'below')
  if (low !== undefined && high !== undefined) {
    const point = low.end === 'from' && high.end === 'to'
    if (low.value > high.value || (low.value === high.value && !point)) {
      shelf.report.add('empty-range', place, { from: low.value, to: high.value })
    }
  }
  return {
    ...Object.fromEntries(ends.map(({ end, value }) => [end, value])),
    figures: ends.map(({ id }) => id).toSorted(),
  }
}

/** The figure's value where its unit is one of those wanted. */
export function valueOf(
  id: string,
  wants: readonly string[] | null,
  place: Place,
  shelf: Shelf,
  named: Set<string>,
): number | null {
  const figure = figureOf(id, place, shelf)
  if (figure === null) return null
  named.add(id)
  if (wants !== null && !wants.includes(figure.unit)) {
    shelf.report.add('wrong-unit', place, { figure: id, unit: figure.unit, wants })
  }
  return figure.value
}
