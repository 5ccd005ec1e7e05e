import { within } from '../knowledge/cell-holds.ts'
import type { Cell, Decision, Interval } from '../knowledge/knowledge.ts'

/**
 * A decision as bit masks: one bit a rule. Because a rule is a conjunction of single-fact cells, the rules that hold are
 * exactly the *and* of one mask per fact; nothing needs checking rule by rule. Every mask is an array of 32-bit words.
 */
export type Mask = Int32Array

export interface FactIndex {
  readonly fact: string
  /** Rules that do not ask about this fact. */
  readonly free: Mask
  /** Rules whose cell wants any of a set, all and by value. */
  readonly any: Mask
  readonly anyOf: ReadonlyMap<string, Mask>
  /** Rules whose cell wants none of a set, all and by value. */
  readonly none: Mask
  readonly noneOf: ReadonlyMap<string, Mask>
  /** Rules whose cell is an interval; null where there is none, so that the matcher need not ask. */
  readonly interval: Mask | null
  readonly zones: Zones | null
  /** No cell asks for words: a number alone settles the fact, and `zones` already hold the free rules. */
  readonly numbersOnly: boolean
  /** For a fact that is stated and closed with one value: the rules it leaves standing, by value, and for any other value. */
  readonly settledBy: ReadonlyMap<string, Mask>
  readonly settledByOther: Mask
}

/**
 * The number line cut at every end of every interval: zone 2i + 1 is the end `cuts[i]` itself, zone 2i the open stretch
 * below it. Within one zone no rule changes its mind, so a number is matched by one binary search.
 */
export interface Zones {
  readonly cuts: readonly number[]
  readonly standing: readonly Mask[]
}

export interface RuleIndex {
  readonly decision: Decision
  readonly words: number
  readonly all: Mask
  /** The facts most rules ask about first, so that a decision with nothing to say ends early. */
  readonly facts: readonly FactIndex[]
  /** Two masks the matcher writes into, one decision at a time: allocating them anew costs more than matching. */
  readonly scratch: { readonly certain: Mask; readonly possible: Mask }
  /** For each rule, the rules it silences. */
  readonly silences: readonly (readonly number[])[]
  readonly hasExceptions: boolean
  /** Rank of each rule's answer, 0 the strictest; -1 where the rule gives no answer. */
  readonly rank: readonly number[]
}

const bit = (mask: Mask, rule: number) => {
  mask[rule >> 5]! |= 1 << (rule & 31)
}

export const holds = (mask: Mask, rule: number): boolean => (mask[rule >> 5]! & (1 << (rule & 31))) !== 0

/** The rule numbers set in `mask`, ascending. */
export function rulesIn(mask: Mask): number[] {
  const found: number[] = []
  for (let word = 0; word < mask.length; word++) {
    let bits = mask[word]!
    while (bits !== 0) {
      const low = 31 - Math.clz32(bits & -bits)
      found.push((word << 5) | low)
      bits &= bits - 1
    }
  }
  return found
}

function zonesOf(intervals: readonly { rule: number; interval: Interval }[], free: Mask): Zones | null {
  if (intervals.length === 0) return null
  const ends = intervals.flatMap(({ interval: { from, above, to, below } }) => [from, above, to, below])
  const cuts = [...new Set(ends.filter((end) => end !== undefined))].sort((a, b) => a - b)
  const witnesses = cuts.flatMap((cut, at) => [at === 0 ? cut - 1 : (cuts[at - 1]! + cut) / 2, cut])
  const standing = [...witnesses, (cuts.at(-1) ?? 0) + 1].map((witness) => {
    const mask = free.slice()
    for (const { rule, interval } of intervals) if (within(witness, interval)) bit(mask, rule)
    return mask
  })
  return { cuts, standing }
}

/** The rules whose interval holds `number`, and those that do not ask. */
export function standingAt({ cuts, standing }: Zones, number: number): Mask {
  let low = 0
  let high = cuts.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (cuts[middle]! < number) low = middle + 1
    else high = middle
  }
  return standing[cuts[low] === number ? 2 * low + 1 : 2 * low]!
}

function factIndex(fact: string, rules: readonly (readonly Cell[])[], words: number): FactIndex {
  const mask = () => new Int32Array(words)
  const free = mask()
  const any = mask()
  const none = mask()
  const interval = mask()
  const anyOf = new Map<string, Mask>()
  const noneOf = new Map<string, Mask>()
  const intervals: { rule: number; interval: Interval }[] = []
  const under = (map: Map<string, Mask>, value: string) => {
    const known = map.get(value)
    if (known) return known
    const fresh = mask()
    map.set(value, fresh)
    return fresh
  }
  rules.forEach((cells, rule) => {
    const cell = cells.find((candidate) => candidate.fact === fact)
    if (!cell) return bit(free, rule)
    if ('any' in cell) {
      bit(any, rule)
      for (const value of cell.any) bit(under(anyOf, value), rule)
    } else if ('none' in cell) {
      bit(none, rule)
      for (const value of cell.none) bit(under(noneOf, value), rule)
    } else {
      bit(interval, rule)
      intervals.push({ rule, interval: cell.interval })
    }
  })
  const settled = (value: string | null) =>
    free.map(
      (word, at) =>
        word | (anyOf.get(value ?? '')?.[at] ?? 0) | (none[at]! & ~(noneOf.get(value ?? '')?.[at] ?? 0)),
    )
  return {
    fact,
    free,
    any,
    anyOf,
    none,
    noneOf,
    interval: intervals.length > 0 ? interval : null,
    zones: zonesOf(intervals, free),
    numbersOnly: intervals.length > 0 && anyOf.size === 0 && noneOf.size === 0,
    settledBy: new Map([...anyOf.keys(), ...noneOf.keys()].map((value) => [value, settled(value)])),
    settledByOther: settled(null),
  }
}

const count = (mask: Mask) => rulesIn(mask).length

/** Builds the index of one decision; retired rules never stand in it. */
export function indexRules(decision: Decision): RuleIndex {
  const rules = decision.rules
  const words = Math.max(1, Math.ceil(rules.length / 32))
  const all = new Int32Array(words)
  rules.forEach((rule, number) => {
    if (rule.retired === null) bit(all, number)
  })
  const number = new Map(rules.map((rule, index) => [rule.id, index]))
  const cells = rules.map((rule) => rule.when)
  return {
    decision,
    words,
    all,
    facts: decision.facts
      .map((fact) => factIndex(fact, cells, words))
      .sort((a, b) => count(a.free) - count(b.free)),
    scratch: { certain: new Int32Array(words), possible: new Int32Array(words) },
    silences: rules.map((rule) => rule.overrides.flatMap((id) => number.get(id) ?? [])),
    hasExceptions: rules.some((rule) => rule.overrides.length > 0),
    rank: rules.map((rule) =>
      rule.then.kind === 'answer' ? decision.answers.indexOf(rule.then.answer) : -1,
    ),
  }
}
