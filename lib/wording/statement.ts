import type { Statement } from '../engine/plan.ts'
import { strengthWords } from './marks.ts'

/** Works numbered in the order in which they are first cited, for one list at the end of what is printed. */
export interface Citing {
  readonly numberOf: (work: string) => number
  readonly cited: () => readonly string[]
}

export function citing(): Citing {
  const numbers = new Map<string, number>()
  return {
    numberOf(work) {
      const known = numbers.get(work)
      if (known !== undefined) return known
      numbers.set(work, numbers.size + 1)
      return numbers.size
    },
    cited: () => [...numbers.keys()],
  }
}

/** The numbers of the works behind a line; what was not read in the work itself says so. */
function sourceMarks(sources: Statement['sources'], cite: Citing): string {
  const marks = new Map<number, string>()
  for (const { work, known } of sources) {
    const number = cite.numberOf(work)
    const mark =
      known === 'memory'
        ? `${number} from memory`
        : known === 'second-hand'
          ? `${number} second-hand`
          : String(number)
    if (!marks.has(number) || known === 'read') marks.set(number, mark)
  }
  return [...marks]
    .toSorted(([a], [b]) => a - b)
    .map(([, mark]) => mark)
    .join(', ')
}

/** The works behind several lines at once: `[3, 14]`. */
export function workMarks(statements: readonly Statement[], cite: Citing): string {
  const marks = sourceMarks(
    statements.flatMap(({ sources }) => sources),
    cite,
  )
  return marks === '' ? '' : `[${marks}]`
}

/** How firmly it is meant and what it rests on, for the brackets behind a line. */
export function weightWords(statement: Statement, cite: Citing): string {
  const parts = [
    strengthWords[statement.strength].toLowerCase(),
    statement.certainty === 'contested' || statement.certainty === 'opinion' ? statement.certainty : '',
    statement.precautionary ? 'to be safe, until you look' : '',
  ]
  return `(${parts.filter((part) => part !== '').join('; ')}) [${sourceMarks(statement.sources, cite)}]`
}

/** A line of advice as it is printed: what to do, whose part it is, how firmly and on what it rests. */
export function lineWords(statement: Statement, cite: Citing, parts: number): string {
  const some = statement.components.length > 0 && statement.components.length < parts
  return `${some ? `${statement.components.join(', ')}: ` : ''}${statement.text} ${weightWords(statement, cite)}`
}
