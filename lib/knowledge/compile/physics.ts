import type { Element, Matrix } from '../evidence.ts'
import type { Entry } from './entries.ts'
import type * as forms from './evidence-shapes.ts'
import { fillSentence } from './sentence.ts'
import type { Written } from './shapes.ts'
import { checkSources, unknownId, type Shelf } from './shelf.ts'

/** What emission lines and matrices a depth may name. */
export interface Matters {
  readonly elements: ReadonlyMap<string, Element>
  readonly matrices: ReadonlyMap<string, Matrix>
}

export function linkElement({ written, place }: Entry<Written<typeof forms.element>>, shelf: Shelf): Element {
  checkSources(written.sources, (index) => place('sources', index), shelf)
  if (written.symbol.toLowerCase() !== written.id) {
    shelf.report.add('wrong-form', place('id'), {
      key: 'id',
      expected: 'the symbol in lower case',
      found: written.id,
    })
  }
  written.attenuation.forEach(([energy], index) => {
    const before = written.attenuation[index - 1]?.[0] ?? 0
    const third = written.attenuation[index - 2]?.[0]
    if (energy > before || (energy === before && third !== before)) return
    shelf.report.add('energies-fall', place('attenuation', index), {
      element: written.id,
      from: before,
      to: energy,
    })
  })
  return {
    id: written.id,
    symbol: written.symbol,
    label: fillSentence(written.label, 'label', place('label'), shelf, new Set()),
    densityGPerCm3: written['density-g-per-cm3'],
    linesKev: written['lines-kev'],
    edgesKev: written['edges-kev'],
    attenuation: written.attenuation,
    sources: written.sources,
  }
}

/** How far rounding in print may take the sum of mass fractions from one. */
const tolerance = 0.002

export function linkMatrix(
  { written, place }: Entry<Written<typeof forms.matrix>>,
  elements: ReadonlyMap<string, Element>,
  shelf: Shelf,
): Matrix {
  checkSources(written.sources, (index) => place('sources', index), shelf)
  const symbols = [...elements.values()].map(({ symbol }) => symbol)
  written.parts.forEach(([symbol], index) => {
    if (!symbols.includes(symbol)) unknownId('element', symbol, symbols, place('parts', index), shelf.report)
  })
  const sum = written.parts.reduce((total, [, share]) => total + share, 0)
  if (Math.abs(sum - 1) > tolerance) {
    shelf.report.add('fractions-sum', place('parts'), { matrix: written.id, sum: Number(sum.toFixed(4)) })
  }
  return {
    id: written.id,
    label: fillSentence(written.label, 'label', place('label'), shelf, new Set()),
    densityGPerCm3: written['density-g-per-cm3'],
    parts: written.parts,
    sources: written.sources,
  }
}
