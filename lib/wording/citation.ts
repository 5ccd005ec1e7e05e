import { folded } from '../base/fold.ts'
import type { Statement } from '../engine/plan.ts'
import type { Knowledge, Work } from '../knowledge/knowledge.ts'
import { knownWords } from './marks.ts'

const hyphened = (words: readonly string[]) => folded(words.join(' ')).replaceAll(/[^a-z0-9]+/g, '-')

/** Words that stand in no person's name. */
const institution = /\s(of|for|and|für|on)\s|^(A|The)\s/

/**
 * A person's family name, an institution's name whole. The work's id is made of family names, so the longest end of the
 * name that stands in it is the family name, of however many words.
 */
function shortName(author: string, id: string): string {
  if (institution.test(author)) return author
  const words = author.trim().split(/\s+/)
  const tails = words.map((_, at) => words.slice(at))
  return tails.find((tail) => `-${id}-`.includes(`-${hyphened(tail)}-`))?.join(' ') ?? author
}

/** `Watkinson and Lewis 2005`, `Rimmer and others 2013`; for the standing entries their title. */
export function shortCitation(work: Work): string {
  const named = work.authors.filter((author) => author !== 'and others')
  const many = work.authors.length > 2 || named.length < work.authors.length
  const names = named.slice(0, many ? 1 : 2).map((author) => shortName(author, work.id))
  const who = names.length === 0 ? work.title : many ? `${names[0]} and others` : names.join(' and ')
  return work.year === null ? who : `${who} ${work.year}`
}

/** The work in full, as a list of works prints it. */
export function longCitation(work: Work): string {
  const who = work.authors.join(', ')
  const parts = [who, work.year === null ? '' : `(${work.year})`].filter((part) => part !== '').join(' ')
  const where = work.in === undefined ? '' : `. ${work.in}`
  return parts === '' ? `${work.title}${where}` : `${parts}. ${work.title}${where}`
}

/** The works behind a line with their places, in one line for paper; what was not read in the work itself says so. */
export function sourceWords(sources: Statement['sources'], knowledge: Knowledge): string {
  const words = sources.map(({ work, place, known }) => {
    const full = knowledge.works[work]
    const name = full === undefined ? work : shortCitation(full)
    const how = known === 'read' || known === 'common-practice' ? '' : ` (${knownWords[known].label})`
    return `${[name, place].filter((part) => part !== null).join(', ')}${how}`
  })
  return [...new Set(words)].join('; ')
}
