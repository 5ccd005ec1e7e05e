import type { Statement } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { shortCitation } from './citation.ts'
import { knownWords, strengthWords } from './marks.ts'

/** The works behind a line in the least words; what was not read in the work itself says so. */
export function sourceWords(sources: Statement['sources'], knowledge: Knowledge): string {
  const words = sources.map(({ work, known }) => {
    const full = knowledge.works[work]
    const name = full ? shortCitation(full) : work
    return known === 'memory' || known === 'second-hand' ? `${name}, ${knownWords[known].label}` : name
  })
  return [...new Set(words)].join('; ')
}

/** How firmly it is meant and what it rests on, for the brackets behind a line. */
export function weightWords(statement: Statement, knowledge: Knowledge): string {
  const parts = [
    strengthWords[statement.strength].toLowerCase(),
    statement.certainty === 'contested' || statement.certainty === 'opinion' ? statement.certainty : '',
    statement.precautionary ? 'to be safe, until you look' : '',
    sourceWords(statement.sources, knowledge),
  ]
  return parts.filter((part) => part !== '').join('; ')
}

/** A line of advice as it is printed: what to do, whose part it is, how firmly and on what it rests. */
export function lineWords(statement: Statement, knowledge: Knowledge, parts: number): string {
  const whose = parts > 1 && statement.components.length > 0 ? `${statement.components.join(', ')}: ` : ''
  return `${whose}${statement.text} (${weightWords(statement, knowledge)})`
}
