import type { Finding } from '../knowledge/flaw.ts'
import { standing, type Base } from './base.ts'

/**
 * A stop needs a recorded fact, so its decision is silent; a protective objection needs a proposal, or it would
 * speak of treatments that nobody has in mind.
 */
export function absentSide({ knowledge }: Base): Finding[] {
  return knowledge.decisions.flatMap((decision): Finding[] => {
    const at = `decision ${decision.id}`
    const { absent, calledForBy, fills, id } = decision
    if (absent === 'protective' && standing(decision).some(({ level }) => level === 'stop')) {
      return [{ code: 'stop-not-silent', severity: 'error', at, about: { decision: id } }]
    }
    if (fills === 'objections' && absent === 'protective' && !calledForBy.includes('proposed')) {
      return [{ code: 'objection-uncalled', severity: 'error', at, about: { decision: id } }]
    }
    return []
  })
}
