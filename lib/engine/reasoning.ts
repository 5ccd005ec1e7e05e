import { cellHolds } from '../knowledge/cell-holds.ts'
import type { Cell, Decision, Fills, Knowledge } from '../knowledge/knowledge.ts'
import type { Fact, RecordFacts } from '../record/fact.ts'
import { decide, type Decided } from './decide.ts'
import type { Lookup } from './match.ts'
import { indexRules, type RuleIndex } from './rule-index.ts'

/** What later decisions read of a decided one: the answer the plan takes, and every answer still possible. */
export interface Derived {
  readonly taken: Fact | undefined
  readonly possible: Fact | undefined
}

/** One decision decided: once for the find, or once for each of its parts. */
export interface Conclusion {
  readonly index: RuleIndex
  readonly find: Decided | null
  readonly components: readonly Decided[]
  /** As a fact: of the find, or of each part. */
  readonly derived: readonly Derived[]
  /** As a fact of the whole find: what any part has. */
  readonly overall: Derived
}

/** Every decision decided for one record, by decision id, and the facts it rests on. */
export interface Reasoning {
  readonly facts: RecordFacts
  readonly conclusions: Conclusions
  /** Recorded facts of parts, looked at over the whole find; filled as they are asked for. */
  readonly overParts: Map<string, Fact | undefined>
  /** Decisions by the part of the plan they fill, in dependency order. */
  readonly filling: ReadonlyMap<Fills, readonly string[]>
  /** One lookup for each side of the find and of each part, made when first asked for. */
  readonly lookups: (Lookup | undefined)[]
}

export interface Conclusions {
  readonly get: (decision: string) => Conclusion | undefined
}

interface Indexed {
  readonly indexes: readonly RuleIndex[]
  /** For each fact, the decisions that read it or read an answer of one that does, in dependency order. */
  readonly touchedBy: ReadonlyMap<string, readonly RuleIndex[]>
  /** Decisions that later ones read. */
  readonly read: ReadonlySet<string>
  readonly filling: Reasoning['filling']
}

function touches(indexes: readonly RuleIndex[]): Indexed['touchedBy'] {
  const touched = new Map<string, RuleIndex[]>()
  for (const fact of new Set(indexes.flatMap(({ decision }) => decision.facts))) {
    const moved = new Set([fact])
    const reached = indexes.filter(({ decision }) => {
      if (!decision.facts.some((read) => moved.has(read))) return false
      moved.add(decision.id)
      return true
    })
    touched.set(fact, reached)
  }
  return touched
}

const built = new WeakMap<Knowledge, Indexed>()

function indexed(knowledge: Knowledge): Indexed {
  const known = built.get(knowledge)
  if (known) return known
  const read = new Set(knowledge.decisions.flatMap(({ facts }) => facts))
  const filling = new Map<Fills, string[]>()
  for (const { fills, id } of knowledge.decisions)
    if (fills) filling.set(fills, [...(filling.get(fills) ?? []), id])
  const indexes = knowledge.decisions.map(indexRules)
  const fresh = { indexes, read, filling, touchedBy: touches(indexes) }
  built.set(knowledge, fresh)
  return fresh
}

/** The decisions a fact can move, directly or through others, in dependency order. */
export const touchedBy = (fact: string, knowledge: Knowledge): readonly RuleIndex[] =>
  indexed(knowledge).touchedBy.get(fact) ?? []

/** The decisions' indexes in dependency order, built once for each knowledge. */
export const indexesOf = (knowledge: Knowledge): readonly RuleIndex[] => indexed(knowledge).indexes

/** Whether a rule that cannot be told speaks: it must have been called for by something recorded. */
export function speaks(decision: Decision, cells: readonly Cell[], lookup: Lookup): boolean {
  if (decision.calledForBy.length === 0) return true
  const calls = cells.filter((cell) => decision.calledForBy.includes(cell.fact))
  return calls.length > 0 && calls.every((cell) => cellHolds(cell, lookup(cell.fact)) === 'yes')
}

const nothing: Derived = { taken: undefined, possible: undefined }

/**
 * Only a protective decision hands on what is still possible: a silent one stands as it was taken, or a test that nobody
 * made would speak through its readers.
 */
function derive(index: RuleIndex, decided: Decided): Derived {
  const { decision } = index
  const protective = decision.absent === 'protective'
  if (decision.policy === 'collect') {
    const codes = (rules: readonly number[]) =>
      rules.flatMap((rule) => {
        const then = decision.rules[rule]!.then
        return then.kind === 'say' ? [then.code] : []
      })
    const taken: Fact = { has: codes(decided.holding), may: [], said: 'derived' }
    return { taken, possible: protective ? { ...taken, may: codes(decided.open) } : taken }
  }
  if (decided.taken === null) return nothing
  const taken: Fact = { has: [decided.taken], may: [], said: 'derived' }
  if (!protective || decided.possible.length < 2) return { taken, possible: taken }
  return { taken, possible: { has: [], may: decided.possible, one: true, said: 'derived' } }
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

type Side = keyof Derived

/** A part's facts: what was decided before first, then its own record, then the find's. */
function ofPart({ facts, conclusions }: Reasoning, part: number, side: Side): Lookup {
  const own = facts.components[part]!.facts
  return (fact) => {
    const conclusion = conclusions.get(fact)
    if (conclusion) return (conclusion.find ? conclusion.derived[0]! : conclusion.derived[part]!)[side]
    return own[fact] ?? facts.find[fact]
  }
}

/** The find's facts; a part's fact is looked at over all parts. */
function ofFind({ facts, conclusions, overParts: seen }: Reasoning, side: Side): Lookup {
  return (fact) => {
    const conclusion = conclusions.get(fact)
    if (conclusion) return conclusion.overall[side]
    const recorded = facts.find[fact]
    if (recorded) return recorded
    if (!seen.has(fact)) seen.set(fact, overParts(facts.components.map((one) => one.facts[fact])))
    return seen.get(fact)
  }
}

/** Looks a fact up for the find (`part` null) or for one part; protective readers see what is still possible. */
export function lookupIn(reasoning: Reasoning, part: number | null, protective: boolean): Lookup {
  const place = (part === null ? 0 : 2 * (part + 1)) + Number(protective)
  const known = reasoning.lookups[place]
  if (known) return known
  const side = protective ? 'possible' : 'taken'
  const fresh = part === null ? ofFind(reasoning, side) : ofPart(reasoning, part, side)
  reasoning.lookups[place] = fresh
  return fresh
}

const reasoningOver = (
  facts: RecordFacts,
  conclusions: Conclusions,
  filling: Reasoning['filling'],
): Reasoning => ({
  facts,
  conclusions,
  overParts: new Map(),
  filling,
  lookups: [],
})

function conclude(index: RuleIndex, reasoning: Reasoning, isRead: boolean): Conclusion {
  const protective = index.decision.absent === 'protective'
  if (index.decision.each === 'find') {
    const find = decide(index, lookupIn(reasoning, null, protective))
    const derived = isRead ? derive(index, find) : nothing
    return { index, find, components: [], derived: [derived], overall: derived }
  }
  const components = reasoning.facts.components.map((_, part) =>
    decide(index, lookupIn(reasoning, part, protective)),
  )
  if (!isRead) return { index, find: null, components, derived: [], overall: nothing }
  const derived = components.map((decided) => derive(index, decided))
  const overall = {
    taken: overParts(derived.map(({ taken }) => taken)),
    possible: overParts(derived.map(({ possible }) => possible)),
  }
  return { index, find: null, components, derived, overall }
}

/** Decides every decision of the knowledge over one record's facts. Pure and deterministic. */
export function reason(facts: RecordFacts, knowledge: Knowledge): Reasoning {
  const { indexes, read, filling } = indexed(knowledge)
  const conclusions = new Map<string, Conclusion>()
  const reasoning = reasoningOver(facts, conclusions, filling)
  for (const index of indexes)
    conclusions.set(index.decision.id, conclude(index, reasoning, read.has(index.decision.id)))
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

export interface Reconsidered {
  readonly reasoning: Reasoning
  /** The decisions that came out differently. */
  readonly moved: ReadonlySet<string>
}

/** Decides again only what reads `changed`, and what reads an answer that came out differently, among `indexes`. */
export function reasonAgain(
  before: Reasoning,
  facts: RecordFacts,
  changed: string,
  indexes: readonly RuleIndex[],
  knowledge: Knowledge,
): Reconsidered {
  const { read, filling } = indexed(knowledge)
  const again = new Map<string, Conclusion>()
  const reasoning = reasoningOver(
    facts,
    { get: (id) => again.get(id) ?? before.conclusions.get(id) },
    filling,
  )
  const moved = new Set([changed])
  for (const index of indexes) {
    const { id } = index.decision
    if (!index.decision.facts.some((fact) => moved.has(fact))) continue
    const conclusion = conclude(index, reasoning, read.has(id))
    if (sameConclusion(before.conclusions.get(id)!, conclusion)) continue
    again.set(id, conclusion)
    moved.add(id)
  }
  return { reasoning, moved }
}
