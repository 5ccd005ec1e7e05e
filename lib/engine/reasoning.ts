import type { Cell, Decision, Knowledge } from '../knowledge/knowledge.ts'
import type { Fact, RecordFacts } from '../record/fact.ts'
import { decide, type Decided } from './decide.ts'
import { cellHolds, type Lookup } from './match.ts'
import { indexRules, type RuleIndex } from './rule-index.ts'

/** One decision decided: once for the find, or once for each of its parts. */
export interface Conclusion {
  readonly index: RuleIndex
  readonly find: Decided | null
  readonly components: readonly Decided[]
}

/** Every decision decided for one record, by decision id, and the facts it rests on. */
export interface Reasoning {
  readonly facts: RecordFacts
  readonly conclusions: ReadonlyMap<string, Conclusion>
}

const indexes = new WeakMap<Knowledge, readonly RuleIndex[]>()

/** The decisions' indexes in dependency order, built once for each knowledge. */
export function indexesOf(knowledge: Knowledge): readonly RuleIndex[] {
  const known = indexes.get(knowledge)
  if (known) return known
  const built = knowledge.decisions.map(indexRules)
  indexes.set(knowledge, built)
  return built
}

/** Whether a rule that cannot be told speaks: it must have been called for by something recorded. */
export function speaks(decision: Decision, cells: readonly Cell[], lookup: Lookup): boolean {
  if (decision.calledForBy.length === 0) return true
  const calls = cells.filter((cell) => decision.calledForBy.includes(cell.fact))
  return calls.length > 0 && calls.every((cell) => cellHolds(cell, lookup(cell.fact)) === 'yes')
}

/**
 * What later decisions read of a decided one. Only a protective reader of a protective decision sees what is still
 * possible: a silent decision stands as it was taken, or a test that nobody made would speak through its readers.
 */
function asFact(index: RuleIndex, decided: Decided, readerProtective: boolean): Fact | undefined {
  const { decision } = index
  const protective = readerProtective && decision.absent === 'protective'
  if (decision.policy === 'collect') {
    const codes = (rules: readonly number[]) =>
      rules.flatMap((rule) => {
        const then = decision.rules[rule]!.then
        return then.kind === 'say' ? [then.code] : []
      })
    return { has: codes(decided.holding), may: protective ? codes(decided.open) : [], said: 'derived' }
  }
  if (decided.taken === null) return undefined
  if (!protective || decided.possible.length < 2) return { has: [decided.taken], may: [], said: 'derived' }
  return { has: [], may: decided.possible, one: true, said: 'derived' }
}

/** One fact over all parts: what any part has; open where a part's fact is open. */
function overParts(facts: readonly (Fact | undefined)[]): Fact | undefined {
  if (facts.length === 1) return facts[0]
  const stated = facts.filter((fact) => fact !== undefined)
  if (stated.length === 0) return undefined
  const has = stated.flatMap((fact) => fact.has)
  const open = stated.length < facts.length || stated.some((fact) => fact.may === 'any')
  const may = open ? 'any' : stated.flatMap((fact) => (fact.may === 'any' ? [] : fact.may))
  const numbers = new Set(stated.flatMap((fact) => fact.number ?? []))
  const said = stated.some((fact) => fact.said === 'derived') ? 'derived' : 'stated'
  // Parts that measure differently leave the find's number untold.
  return numbers.size === 1 && stated.length === facts.length
    ? { has, may, said, number: [...numbers][0]! }
    : { has, may, said }
}

/** Looks a fact up for the find (`part` null) or for one part; recorded facts first, then what was decided before. */
export function lookupIn(reasoning: Reasoning, part: number | null, protective: boolean): Lookup {
  const { facts, conclusions } = reasoning
  const ofPart = (fact: string, at: number) => {
    const conclusion = conclusions.get(fact)
    if (conclusion?.find === null) return asFact(conclusion.index, conclusion.components[at]!, protective)
    return facts.components[at]!.facts[fact]
  }
  return (fact) => {
    const conclusion = conclusions.get(fact)
    if (conclusion?.find) return asFact(conclusion.index, conclusion.find, protective)
    if (part !== null) return ofPart(fact, part) ?? facts.find[fact]
    return facts.find[fact] ?? overParts(facts.components.map((_, at) => ofPart(fact, at)))
  }
}

function conclude(index: RuleIndex, reasoning: Reasoning): Conclusion {
  const protective = index.decision.absent === 'protective'
  if (index.decision.each === 'find') {
    return { index, find: decide(index, lookupIn(reasoning, null, protective)), components: [] }
  }
  const components = reasoning.facts.components.map((_, part) =>
    decide(index, lookupIn(reasoning, part, protective)),
  )
  return { index, find: null, components }
}

/** Decides every decision of the knowledge over one record's facts. Pure and deterministic. */
export function reason(facts: RecordFacts, knowledge: Knowledge): Reasoning {
  const conclusions = new Map<string, Conclusion>()
  const reasoning = { facts, conclusions }
  for (const index of indexesOf(knowledge)) conclusions.set(index.decision.id, conclude(index, reasoning))
  return reasoning
}

const sameRules = (a: readonly unknown[], b: readonly unknown[]) =>
  a.length === b.length && a.every((item, at) => item === b[at])

const sameDecided = (a: Decided, b: Decided) =>
  a.taken === b.taken &&
  sameRules(a.possible, b.possible) &&
  sameRules(a.holding, b.holding) &&
  sameRules(a.open, b.open)

const sameConclusion = (a: Conclusion, b: Conclusion) =>
  a.components.length === b.components.length &&
  a.components.every((decided, part) => sameDecided(decided, b.components[part]!)) &&
  (a.find === null || b.find === null ? a.find === b.find : sameDecided(a.find, b.find))

/** Decides again only what reads `changed`, and what reads an answer that came out differently. */
export function reasonAgain(before: Reasoning, facts: RecordFacts, changed: string): Reasoning {
  const conclusions = new Map<string, Conclusion>()
  const reasoning = { facts, conclusions }
  const moved = new Set([changed])
  for (const [id, conclusion] of before.conclusions) {
    if (!conclusion.index.decision.facts.some((fact) => moved.has(fact))) {
      conclusions.set(id, conclusion)
      continue
    }
    const again = conclude(conclusion.index, reasoning)
    conclusions.set(id, again)
    if (!sameConclusion(conclusion, again)) moved.add(id)
  }
  return reasoning
}
