import type { Finding } from '../knowledge/flaw.ts'
import type { Base } from './base.ts'

/** A code in the vocabulary that nothing ever says is a slip of spelling or a rule that is missing. */
export function wordsWithoutCode({ knowledge }: Base): Finding[] {
  const said = new Set([
    ...knowledge.decisions.flatMap(({ answers }) => answers),
    ...Object.values(knowledge.matters).flatMap(({ rivals }) => rivals.map(({ id }) => id)),
    ...[...Object.values(knowledge.methods), ...Object.values(knowledge.tasks)].flatMap(({ cautions }) =>
      cautions.map(({ code }) => code),
    ),
  ])
  return Object.keys(knowledge.vocabulary.codes)
    .filter((code) => !said.has(code))
    .map((code) => ({ code: 'words-without-code', severity: 'warning', at: `code ${code}`, about: { code } }))
}
