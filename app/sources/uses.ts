import type { Matter } from '../../lib/knowledge/evidence.ts'
import type { Knowledge, Rule, SourceRef } from '../../lib/knowledge/knowledge.ts'

export interface Use {
  readonly decision: string
  readonly rule: Rule
}

/** Every rule that passes the test, with the decision it stands in. */
export function rulesWhere(knowledge: Knowledge, test: (rule: Rule) => boolean): readonly Use[] {
  return knowledge.decisions.flatMap(({ id, rules }) =>
    rules.filter(test).map((rule) => ({ decision: id, rule })),
  )
}

/** What one word of the evidence base rests on. */
interface Grounds {
  readonly sources: readonly SourceRef[]
  readonly figures: readonly string[]
}

/** Every matter of which some odds, state or failure passes the test. */
export function mattersWhere(knowledge: Knowledge, test: (grounds: Grounds) => boolean): readonly Matter[] {
  return Object.values(knowledge.matters).filter(
    ({ rivals, groups }) =>
      rivals.some(({ priors }) => priors.some(test)) ||
      groups.some(({ states, failures }) => states.some(test) || failures.some(test)),
  )
}
