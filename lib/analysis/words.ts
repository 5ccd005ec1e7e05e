import type { Finding } from '../knowledge/flaw.ts'
import type { Base } from './base.ts'
import { eachRule } from './base.ts'

/** Whatever a decision may answer or say has words in the vocabulary; a request's are those of its method. */
export function codesWithoutWords({ knowledge }: Base): Finding[] {
  const { codes } = knowledge.vocabulary
  const answers = knowledge.decisions.flatMap(({ id, policy, answers: given }) =>
    policy === 'collect' ? [] : given.map((code) => ({ code, decision: id, at: `decision ${id}` })),
  )
  const said = eachRule(knowledge).flatMap(({ decision, rule, name }) =>
    rule.then.kind === 'say' && rule.then.request === undefined
      ? [{ code: rule.then.code, decision: decision.id, at: `rule ${name}` }]
      : [],
  )
  const seen = new Set<string>()
  return [...answers, ...said]
    .filter(({ code }) => !Object.hasOwn(codes, code) && !seen.has(code) && seen.add(code))
    .map(({ code, decision, at }) => ({ code: 'code-without-words', severity: 'error', at, about: { code, decision } }))
}

/** A code in the vocabulary that nothing ever says is a slip of spelling or a rule that is missing. */
export function wordsWithoutCode({ knowledge }: Base): Finding[] {
  const said = new Set([
    ...knowledge.decisions.flatMap(({ answers }) => answers),
    ...Object.values(knowledge.methods).flatMap(({ cautions }) => cautions.map(({ code }) => code)),
  ])
  return Object.keys(knowledge.vocabulary.codes)
    .filter((code) => !said.has(code))
    .map((code) => ({ code: 'words-without-code', severity: 'warning', at: `code ${code}`, about: { code } }))
}
