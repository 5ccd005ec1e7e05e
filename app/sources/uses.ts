import type { Knowledge, Rule } from '../../lib/knowledge/knowledge.ts'

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
