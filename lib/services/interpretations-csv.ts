import type { IsoDate } from '../base/calendar.ts'
import type { Interpretation } from '../engine/plan.ts'
import { csvLine } from '../tables/csv-write.ts'

const columns: readonly (readonly [string, (one: Interpretation) => string])[] = [
  ['part', ({ component }) => component],
  ['about', ({ about }) => about],
  ['matter', ({ matter }) => matter],
  ['interpretation', ({ interpretation }) => interpretation],
  ['probability', ({ probability }) => probability.toFixed(3)],
  ['probability_low', ({ range }) => range[0].toFixed(3)],
  ['probability_high', ({ range }) => range[1].toFixed(3)],
  ['standing', ({ standing }) => standing],
]

/** One row an interpretation. */
export const interpretationsCsvHead = csvLine(['find', 'as_of', ...columns.map(([heading]) => heading)])

export const interpretationsCsvRows = (
  find: string,
  asOf: IsoDate,
  interpretations: readonly Interpretation[],
): string =>
  interpretations.map((one) => csvLine([find, asOf, ...columns.map(([, cell]) => cell(one))])).join('')
