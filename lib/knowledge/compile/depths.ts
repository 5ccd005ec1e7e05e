import type { Depth } from '../evidence.ts'
import type { Place } from '../flaw.ts'
import { valueOf } from './cells.ts'
import type { failure } from './evidence-shapes.ts'
import type { Matters } from './physics.ts'
import type { Written } from './shapes.ts'
import { unknownId, type Shelf } from './shelf.ts'

const crustUnits = ['micrometre']

/** A line, a matrix and two figures that are there; null, and a flaw, where a figure is not. */
export function linkDepth(
  written: NonNullable<Written<typeof failure>['depth']>,
  place: Place,
  { elements, matrices }: Matters,
  shelf: Shelf,
  named: Set<string>,
): Depth | null {
  checkLine(written.line, place, elements, shelf)
  if (!matrices.has(written.through)) {
    unknownId('matrix', written.through, matrices.keys(), place, shelf.report)
  }
  const [from, to] = written['crust-um'].map((id) => valueOf(id, crustUnits, place, shelf, named))
  if (typeof from !== 'number' || typeof to !== 'number') return null
  if (from > to) shelf.report.add('empty-range', place, { from, to })
  return { line: written.line, through: written.through, crustUm: [from, to] }
}

/** `Ag Ka1`: an element and one of its lines. */
function checkLine(line: string, place: Place, elements: Matters['elements'], shelf: Shelf): void {
  const [symbol = '', name = ''] = line.split(' ')
  const element = [...elements.values()].find((one) => one.symbol === symbol)
  if (element === undefined) {
    const symbols = [...elements.values()].map((one) => one.symbol)
    unknownId('element', symbol, symbols, place, shelf.report)
  } else if (!Object.hasOwn(element.linesKev, name)) {
    unknownId('line', name, Object.keys(element.linesKev), place, shelf.report)
  }
}
