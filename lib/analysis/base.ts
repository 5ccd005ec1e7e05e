import type { Finding } from '../knowledge/flaw.ts'
import type { Decision, Knowledge, Rule } from '../knowledge/knowledge.ts'

/** What a check looks at: compiled knowledge, and which works and figures anything in it refers to. */
export interface Base {
  readonly knowledge: Knowledge
  readonly used: { readonly works: ReadonlySet<string>; readonly figures: ReadonlySet<string> }
}

export type Check = (base: Base) => readonly Finding[]

export function ruleName(decision: Pick<Decision, 'id'>, rule: Pick<Rule, 'id'>): string {
  return `${decision.id}/${rule.id}`
}

/** Retired rules are kept for old plans only: nothing is proved of them. */
export function standing(decision: Decision): readonly Rule[] {
  return decision.rules.filter(({ retired }) => retired === null)
}

export function eachRule(
  knowledge: Knowledge,
): { readonly decision: Decision; readonly rule: Rule; readonly name: string }[] {
  return knowledge.decisions.flatMap((decision) =>
    standing(decision).map((rule) => ({ decision, rule, name: ruleName(decision, rule) })),
  )
}
