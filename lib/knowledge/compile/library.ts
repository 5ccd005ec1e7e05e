import type { Contested, Figure, Work } from '../knowledge.ts'
import type { Entry } from './entries.ts'
import { fillSentence } from './sentence.ts'
import type * as shapes from './shapes.ts'
import { checkSources, figureOf, type Shelf } from './shelf.ts'

export function linkWork({ written }: Entry<shapes.Written<typeof shapes.work>>): Work {
  const { in: within, doi, address, note, ...rest } = written
  return {
    ...rest,
    ...(within === undefined ? {} : { in: within }),
    ...(doi === undefined ? {} : { doi }),
    ...(address === undefined ? {} : { address }),
    ...(note === undefined ? {} : { note }),
  }
}

export function linkFigure({ written }: Entry<shapes.Written<typeof shapes.figure>>): Figure {
  const { 'as-printed': asPrinted, 'valid-for': validFor, kept, ...rest } = written
  return { ...rest, asPrinted, validFor, ...(kept === undefined ? {} : { kept }) }
}

export function linkContested(
  { written, place }: Entry<shapes.Written<typeof shapes.contested>>,
  shelf: Shelf,
): Contested {
  const fill = (text: string, ...path: (string | number)[]): string =>
    fillSentence(text, path.join('.'), place(...path), shelf, new Set())
  return {
    id: written.id,
    question: fill(written.question, 'question'),
    sides: written.sides.map((side, index) => {
      checkSources(side.sources, (source) => place('sides', index, 'sources', source), shelf)
      side.figures.forEach((id, figure) => figureOf(id, place('sides', index, 'figures', figure), shelf))
      return { ...side, says: fill(side.says, 'sides', index, 'says') }
    }),
    follows: fill(written.follows, 'follows'),
    because: fill(written.because, 'because'),
  }
}
