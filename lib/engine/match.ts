import type { Cell, Interval } from '../knowledge/knowledge.ts'
import type { Fact } from '../record/fact.ts'
import type { FactIndex, Mask, RuleIndex } from './rule-index.ts'

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

export function within(number: number, interval: Interval): boolean {
  return (
    (interval.from === undefined || number >= interval.from) &&
    (interval.above === undefined || number > interval.above) &&
    (interval.to === undefined || number <= interval.to) &&
    (interval.below === undefined || number < interval.below)
  )
}

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

function narrow(index: FactIndex, fact: Fact | undefined, certain: Mask, possible: Mask): void {
  if (fact === undefined) {
    // Absent contradicts nothing and settles nothing.
    for (let word = 0; word < certain.length; word++) certain[word]! &= index.free[word]!
    return
  }
  const open = fact.may === 'any'
  const may = fact.may === 'any' ? nothing : fact.may
  for (let word = 0; word < certain.length; word++) {
    const free = index.free[word]!
    const has = union(index.anyOf, fact.has, word)
    const barred = union(index.noneOf, fact.has, word)
    let sure = free | has
    let maybe = free | has | (open ? index.any[word]! : union(index.anyOf, may, word))
    if (fact.one) {
      sure |= shared(index.anyOf, may, word)
      maybe |= index.none[word]! & ~shared(index.noneOf, may, word)
    } else {
      maybe |= index.none[word]! & ~barred
    }
    if (!open) sure |= index.none[word]! & ~barred & ~union(index.noneOf, may, word)
    if (index.intervals.length > 0) {
      if (fact.number === undefined) maybe |= index.interval[word]!
      else {
        for (const { rule, interval } of index.intervals) {
          if (rule >> 5 === word && within(fact.number, interval)) {
            sure |= 1 << (rule & 31)
            maybe |= 1 << (rule & 31)
          }
        }
      }
    }
    certain[word]! &= sure
    possible[word]! &= maybe
  }
}

/** Which rules of the decision hold, and which may hold. */
export function match(index: RuleIndex, lookup: Lookup): Match {
  const certain = index.all.slice()
  const possible = index.all.slice()
  for (const fact of index.facts) narrow(fact, lookup(fact.fact), certain, possible)
  return { certain, possible }
}

/** Whether one cell holds for one fact: yes, no, or cannot tell. The masks say the same for all rules at once. */
export function cellHolds(cell: Cell, fact: Fact | undefined): 'yes' | 'no' | 'open' {
  if (fact === undefined) return 'open'
  const may = fact.may === 'any' ? null : fact.may
  if ('interval' in cell) {
    if (fact.number === undefined) return 'open'
    return within(fact.number, cell.interval) ? 'yes' : 'no'
  }
  const set = 'any' in cell ? cell.any : cell.none
  const inside = fact.has.some((value) => set.includes(value))
  const surelyInside =
    inside || (fact.one === true && may !== null && may.every((value) => set.includes(value)))
  const perhapsInside = inside || may === null || may.some((value) => set.includes(value))
  const [sure, perhaps] = 'any' in cell ? [surelyInside, perhapsInside] : [!perhapsInside, !surelyInside]
  return sure ? 'yes' : perhaps ? 'open' : 'no'
}
