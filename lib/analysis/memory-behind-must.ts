import { eachRule, type Base } from './base.ts'
import type { Finding } from '../knowledge/flaw.ts'

/** A `must` needs a source that was read, quoted elsewhere or common practice; and so does the number it commands. */
export function memoryBehindMust({ knowledge }: Base): Finding[] {
  return eachRule(knowledge)
    .filter(({ rule }) => rule.strength === 'must')
    .flatMap(({ rule, name }): Finding[] => {
      const support = rule.sources.filter(({ says }) => says === 'supports')
      if (support.length > 0 && support.every(({ known }) => known === 'memory')) {
        return [{ code: 'memory-behind-must', severity: 'error', at: `rule ${name}`, about: { rule: name } }]
      }
      return []
    })
}
