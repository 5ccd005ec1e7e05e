import { countsByKnown, knownOfRule, type CountsByKnown } from '../knowledge/known.ts'
import type { Matter } from '../knowledge/evidence.ts'
import type { Decision, Knowledge, Rule, Strength } from '../knowledge/knowledge.ts'
import { standing } from './base.ts'
import { eachMatter } from './evidence-parts.ts'

/** How much there is, and how well it is known. */
export interface Coverage {
  readonly knowledge: string
  readonly works: Counted
  readonly figures: Counted
  /** By the best support each rule has. */
  readonly rules: Counted
  readonly decisions: readonly DecisionCoverage[]
  /** How well each explanation fits each state, by the best support the state has. */
  readonly grades: Counted
  /** How common each explanation is before anybody has looked closer. */
  readonly odds: Counted
  readonly matters: readonly MatterCoverage[]
}

export interface Counted {
  readonly count: number
  readonly known: CountsByKnown
}

/** Counts the grades of the matter. */
export interface MatterCoverage extends Counted {
  readonly matter: string
  readonly rivals: number
  readonly groups: number
  readonly states: number
  readonly failures: number
  readonly works: number
  readonly contested: boolean
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
    grades: countedGrades(eachMatter(knowledge)),
    odds: counted(eachMatter(knowledge).flatMap(({ rivals }) => rivals.flatMap(({ priors }) => priors))),
    matters: eachMatter(knowledge).map(matterCoverage),
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

function countedRules(decisions: readonly Decision[]): Counted {
  return counted(decisions.flatMap(standing))
}

/** What nothing supports is in the count and under no mark; the check names it. */
function counted(things: readonly Pick<Rule, 'sources'>[]): Counted {
  const known = things.flatMap((thing) => {
    const best = knownOfRule(thing)
    return best === null ? [] : [{ known: best }]
  })
  return { count: things.length, known: countsByKnown(known) }
}

/** What is left when no state holds carries no source of its own, and is not counted. */
function countedGrades(matters: readonly Matter[]): Counted {
  const states = matters.flatMap(({ groups }) => groups.flatMap((group) => group.states))
  return counted(states.flatMap((state) => Object.keys(state.fits).map(() => state)))
}

function matterCoverage(matter: Matter): MatterCoverage {
  const { id, rivals, groups, contested } = matter
  const states = groups.flatMap((group) => group.states)
  const failures = groups.flatMap((group) => group.failures)
  const sources = [...states, ...failures, ...rivals.flatMap(({ priors }) => priors)].flatMap(
    (one) => one.sources,
  )
  return {
    matter: id,
    ...countedGrades([matter]),
    rivals: rivals.length,
    groups: groups.length,
    states: states.length,
    failures: failures.length,
    works: new Set(sources.map(({ work }) => work)).size,
    contested: contested !== null,
  }
}
