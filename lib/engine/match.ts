import type { Fact } from '../record/fact.ts'
import { standingAt, type FactIndex, type Mask, type RuleIndex } from './rule-index.ts'

/**
 * Yes, no or cannot tell for every rule of a decision at once. `certain`: the rule holds whatever the open facts turn out
 * to be; `possible`: nothing recorded contradicts it. Possible but not certain is *cannot tell*.
 */
export interface Match {
  readonly certain: Mask
  readonly possible: Mask
}

/** Where a fact is looked up; undefined is *absent*. */
export type Lookup = (fact: string) => Fact | undefined

const nothing: readonly string[] = []

/** *Or* over the values' masks, one word. */
function union(of: ReadonlyMap<string, Mask>, values: readonly string[], word: number): number {
  let bits = 0
  for (const value of values) bits |= of.get(value)?.[word] ?? 0
  return bits
}

/** *And* over the values' masks, one word: rules that every value satisfies. */
function shared(of: ReadonlyMap<string, Mask>, values: readonly string[], word: number): number {
  let bits = -1
  for (const value of values) bits &= of.get(value)?.[word] ?? 0
  return values.length === 0 ? 0 : bits
}

/** A fact that is stated and closed leaves nothing to doubt: one mask serves both. */
function settle(index: FactIndex, fact: Fact): Mask | null {
  if (fact.number !== undefined) return index.numbersOnly ? standingAt(index.zones!, fact.number) : null
  if (fact.may.length !== 0 || fact.has.length !== 1 || index.interval !== null) return null
  return index.settledBy.get(fact.has[0]!) ?? index.settledByOther
}

function narrow(index: FactIndex, fact: Fact, certain: Mask, possible: Mask): void {
  const open = fact.may === 'any'
  const may = fact.may === 'any' ? nothing : fact.may
  const standing =
    index.zones !== null && fact.number !== undefined ? standingAt(index.zones, fact.number) : null
  for (let word = 0; word < certain.length; word++) {
    const has = index.free[word]! | union(index.anyOf, fact.has, word)
    const barred = union(index.noneOf, fact.has, word)
    let sure = has
    let maybe = has | (open ? index.any[word]! : union(index.anyOf, may, word))
    if (fact.one) sure |= shared(index.anyOf, may, word)
    maybe |= index.none[word]! & ~(fact.one ? shared(index.noneOf, may, word) : barred)
    if (!open) sure |= index.none[word]! & ~barred & ~union(index.noneOf, may, word)
    if (standing !== null) {
      sure |= standing[word]!
      maybe |= standing[word]!
    } else if (index.interval !== null) maybe |= index.interval[word]!
    certain[word]! &= sure
    possible[word]! &= maybe
  }
}

/** Which rules of the decision hold, and which may hold. The masks are read before the decision is matched again. */
export function match(index: RuleIndex, lookup: Lookup): Match {
  const { certain } = index.scratch
  certain.set(index.all)
  // While every fact is settled the two masks are one; the first doubt parts them.
  let possible = certain
  const words = certain.length
  for (const factIndex of index.facts) {
    const fact = lookup(factIndex.fact)
    const settled = fact === undefined ? null : settle(factIndex, fact)
    if (settled !== null) {
      for (let word = 0; word < words; word++) certain[word]! &= settled[word]!
      if (possible !== certain) for (let word = 0; word < words; word++) possible[word]! &= settled[word]!
      continue
    }
    if (possible === certain) {
      possible = index.scratch.possible
      possible.set(certain)
    }
    // Absent contradicts nothing and settles nothing.
    if (fact === undefined) for (let word = 0; word < words; word++) certain[word]! &= factIndex.free[word]!
    else narrow(factIndex, fact, certain, possible)
  }
  return { certain, possible }
}

const silence: Mask = new Int32Array(0)

/** The rules that hold, where those that cannot be told are of no interest; ends as soon as none is left. */
export function matchCertain(index: RuleIndex, lookup: Lookup): Mask {
  const { certain, possible: unasked } = index.scratch
  certain.set(index.all)
  for (const factIndex of index.facts) {
    const fact = lookup(factIndex.fact)
    const settled = fact === undefined ? factIndex.free : settle(factIndex, fact)
    let left = 0
    if (settled === null) narrow(factIndex, fact!, certain, unasked)
    for (let word = 0; word < certain.length; word++) {
      if (settled !== null) certain[word]! &= settled[word]!
      left |= certain[word]!
    }
    if (left === 0) return silence
  }
  return certain
}
