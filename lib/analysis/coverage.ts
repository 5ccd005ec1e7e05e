import { countsByKnown, knownOfRule, type CountsByKnown } from '../knowledge/known.ts'
import type { Decision, Knowledge, Strength } from '../knowledge/knowledge.ts'
import { standing } from './base.ts'

/** How much there is, and how well it is known. */
export interface Coverage {
  readonly knowledge: string
  readonly works: Counted
  readonly figures: Counted
  /** By the best support each rule has. */
  readonly rules: Counted
  readonly decisions: readonly DecisionCoverage[]
}

export interface Counted {
  readonly count: number
  readonly known: CountsByKnown
}

export interface DecisionCoverage extends Counted {
  readonly decision: string
  readonly strength: Readonly<Record<Strength, number>>
  readonly figures: number
  readonly works: number
  readonly contested: number
  readonly notCovered: number
}

export function coverage(knowledge: Knowledge): Coverage {
  const works = Object.values(knowledge.works)
  const figures = Object.values(knowledge.figures)
  return {
    knowledge: knowledge.hash,
    works: { count: works.length, known: countsByKnown(works) },
    figures: { count: figures.length, known: countsByKnown(figures) },
    rules: countedRules(knowledge.decisions),
    decisions: knowledge.decisions.map(decisionCoverage),
  }
}

function decisionCoverage(decision: Decision): DecisionCoverage {
  const rules = standing(decision)
  const strength: Record<Strength, number> = { must: 0, should: 0, consider: 0 }
  for (const rule of rules) strength[rule.strength] += 1
  return {
    decision: decision.id,
    ...countedRules([decision]),
    strength,
    figures: new Set(rules.flatMap((rule) => rule.figures)).size,
    works: new Set(rules.flatMap(({ sources }) => sources.map(({ work }) => work))).size,
    contested: rules.filter(({ contested }) => contested !== null).length,
    notCovered: decision.notCovered.length,
  }
}

/** A rule that nothing supports is in the count and under no mark; the check names it. */
function countedRules(decisions: readonly Decision[]): Counted {
  const rules = decisions.flatMap(standing)
  const known = rules.flatMap((rule) => {
    const best = knownOfRule(rule)
    return best === null ? [] : [{ known: best }]
  })
  return { count: rules.length, known: countsByKnown(known) }
}
