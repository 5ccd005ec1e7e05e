import type { Work } from '../knowledge/knowledge.ts'

/** `Watkinson and Lewis 2005`, `Rimmer and others 2013`; for the standing entries their title. */
export function shortCitation(work: Work): string {
  const names = work.authors.map((author) => author.trim().split(/\s+/).at(-1) ?? author)
  const who = names.length === 0 ? work.title : names.length > 2 ? `${names[0]} and others` : names.join(' and ')
  return work.year === null ? who : `${who} ${work.year}`
}

/** The work in full, as a list of works prints it. */
export function longCitation(work: Work): string {
  const who = work.authors.join(', ')
  const parts = [who, work.year === null ? '' : `(${work.year})`].filter((part) => part !== '').join(' ')
  const where = work.in === undefined ? '' : `. ${work.in}`
  return parts === '' ? `${work.title}${where}` : `${parts}. ${work.title}${where}`
}
