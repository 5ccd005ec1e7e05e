import type { Plan, Statement } from '../../lib/engine/plan.ts'
import type { Rule } from '../../lib/knowledge/knowledge.ts'
import { knowledge } from '../knowledge-at-hand.ts'

/** A statement and all that is folded under it. */
export function unfolded(statement: Statement): readonly Statement[] {
  return [statement, ...statement.also.flatMap(unfolded)]
}

/** Every statement of a plan, wherever it stands and however deep it is folded. */
export function everyStatement(plan: Plan): readonly Statement[] {
  const { storage } = plan
  return [
    ...plan.urgencyBasis,
    ...storage.basis,
    ...storage.components.flatMap(({ basis }) => basis),
    ...storage.act.map(({ says }) => says),
    ...(storage.interim ? [storage.interim.says] : []),
    ...(storage.conflict?.waysOut ?? []),
    ...plan.steps,
    ...plan.inspection.basis,
    ...plan.handling,
    ...plan.packing,
    ...plan.cautions,
    ...plan.objections,
    ...plan.requests.flatMap(({ basis }) => basis),
    ...plan.referrals,
    ...plan.selection,
  ].flatMap(unfolded)
}

const rules: ReadonlyMap<string, Rule> = new Map(
  knowledge.decisions.flatMap((decision) =>
    decision.rules.map((rule) => [`${decision.id}/${rule.id}`, rule] as const),
  ),
)

/** The rule behind a statement. */
export const ruleOf = ({ rule }: Pick<Statement, 'rule'>): Rule | undefined => rules.get(rule)

export const codesOf = (lines: readonly Statement[]): ReadonlySet<string> =>
  new Set(lines.flatMap(unfolded).map(({ code }) => code))

/** The stops a plan prints, by rule. */
export const stopsOf = (plan: Plan): ReadonlySet<string> =>
  new Set(plan.cautions.flatMap(({ level, rule }) => (level === 'stop' ? [rule] : [])))
