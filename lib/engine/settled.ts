import { cellHolds } from '../knowledge/cell-holds.ts'
import type { Cell, Rule } from '../knowledge/knowledge.ts'
import type { Decided } from './decide.ts'
import { lookupIn, type Conclusion, type Reasoning } from './reasoning.ts'

/** What of a decided answer meets a cell: the rules that gave it. */
function givers({ index }: Conclusion, { holding, taken }: Decided, cell: Cell): readonly Rule[] {
  if (!('any' in cell)) return []
  return holding
    .map((number) => index.decision.rules[number]!)
    .filter(({ then }) =>
      then.kind === 'answer'
        ? then.answer === taken && cell.any.includes(then.answer)
        : then.kind === 'say' && cell.any.includes(then.code),
    )
}

/** Whether a cell would hold whatever the answers still open before it turn out to be. */
function cellSettled(cell: Cell, reasoning: Reasoning, part: number | null): boolean {
  const conclusion = reasoning.conclusions.get(cell.fact)
  if (!conclusion) return true
  if (conclusion.index.decision.absent === 'protective') {
    // Of several parts one is enough, whatever the others turn out to be.
    if (part === null && !conclusion.find && 'any' in cell)
      return conclusion.derived.some(({ possible }) => cellHolds(cell, possible) === 'yes')
    return cellHolds(cell, lookupIn(reasoning, part, true)(cell.fact)) === 'yes'
  }
  const places: readonly (number | null)[] = conclusion.find
    ? [null]
    : part !== null
      ? [part]
      : conclusion.components.keys().toArray()
  const reasons = places.flatMap((place) => {
    const decided = place === null ? conclusion.find! : conclusion.components[place]!
    return givers(conclusion, decided, cell).map((rule) => ({ rule, place }))
  })
  return reasons.length === 0 || reasons.some(({ rule, place }) => settled(rule, reasoning, place))
}

/**
 * Whether a rule that holds rests on what is recorded alone. A silent decision reads the answers that the plan takes, and
 * those may be the protective side of something nobody has looked at; then what it says is a precaution too.
 */
export function settled({ when }: Rule, reasoning: Reasoning, part: number | null): boolean {
  return when.every((cell) => cellSettled(cell, reasoning, part))
}
