import { eachRule, type Base } from './base.ts'
import type { Finding } from '../knowledge/flaw.ts'

/** Every rule has at least one source that supports it. */
export function withoutSource({ knowledge }: Base): Finding[] {
  return eachRule(knowledge)
    .filter(({ rule }) => !rule.sources.some(({ says }) => says === 'supports'))
    .map(({ name }) => ({
      code: 'without-source',
      severity: 'error',
      at: `rule ${name}`,
      about: { rule: name },
    }))
}
