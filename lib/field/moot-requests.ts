import type { Request, Statement } from '../engine/plan.ts'
import type { Raised } from '../evidence/raised.ts'
import type { Cell, Knowledge } from '../knowledge/knowledge.ts'
import type { RecordFacts } from '../record/fact.ts'

const observed: readonly string[] = ['evidence', 'seen']

const whenOf = (rule: string, { decisions }: Knowledge): readonly Cell[] => {
  const [decision, id] = rule.split('/')
  return decisions.find((one) => one.id === decision)?.rules.find((one) => one.id === id)?.when ?? []
}

/** What the rule was called for by, of all that was seen on the parts it speaks of. */
function sightsOf(
  { rule, components }: Statement,
  facts: RecordFacts,
  knowledge: Knowledge,
): readonly { readonly component: string; readonly value: string }[] {
  return whenOf(rule, knowledge).flatMap((cell) => {
    if (!observed.includes(cell.fact) || !('any' in cell)) return []
    return facts.components
      .filter(({ name }) => components.length === 0 || components.includes(name))
      .flatMap(({ name, facts: own }) =>
        (own[cell.fact]?.has ?? [])
          .filter((value) => cell.any.includes(value))
          .map((value) => ({ component: name, value })),
      )
  })
}

/** Whether all that a rule asks about has been found out: each thing seen raises something, and nothing of it is open. */
function isFoundOut(
  statement: Statement,
  raised: readonly Raised[],
  facts: RecordFacts,
  knowledge: Knowledge,
): boolean {
  const sights = sightsOf(statement, facts, knowledge)
  return (
    statement.strength !== 'must' &&
    sights.length > 0 &&
    sights.every(({ component, value }) => {
      const about = raised.filter(
        (one) => one.component === component && one.matter.about.some((sight) => sight.value === value),
      )
      return about.length > 0 && about.every(({ settled }) => settled !== null)
    })
  )
}

/**
 * Analyses that rules ask for without those whose every reason has been found out. Pictures, looking and what must be asked
 * stay: they record as much as they answer.
 */
export const stillAsked = (
  requests: readonly Request[],
  raised: readonly Raised[],
  facts: RecordFacts,
  knowledge: Knowledge,
): readonly Request[] =>
  requests.filter(
    ({ method, basis }) =>
      knowledge.methods[method]?.kind !== 'analysis' ||
      !basis.every((statement) => isFoundOut(statement, raised, facts, knowledge)),
  )
