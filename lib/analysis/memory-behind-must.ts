import type { Finding } from '../knowledge/flaw.ts'
import { eachRule, type Base } from './base.ts'

/** A `must` needs a source that was read, quoted elsewhere or is common practice; memory alone never stands behind one. */
export function memoryBehindMust({ knowledge }: Base): Finding[] {
  return eachRule(knowledge)
    .filter(({ rule }) => rule.strength === 'must')
    .filter(({ rule }) => {
      const support = rule.sources.filter(({ says }) => says === 'supports')
      return support.length > 0 && support.every(({ known }) => known === 'memory')
    })
    .map(({ name }) => ({
      code: 'memory-behind-must',
      severity: 'error',
      at: `rule ${name}`,
      about: { rule: name },
    }))
}
