import {
  decisionDomain,
  recordDomains,
  type Domain,
  type NumberDomain,
  type ValueDomain,
} from '../knowledge/domains.ts'
import type { Cell, Decision, Interval, Knowledge } from '../knowledge/knowledge.ts'
import { standing } from './base.ts'

/**
 * One fact of a decision as a finite list of atoms: its values, or for a number the pieces into which the thresholds of
 * the rules cut it. What holds for one number of a piece holds for all of it, so nothing is lost and nothing sampled.
 */
export interface Dimension {
  readonly fact: string
  /** Several atoms may hold at once: a list, or a fact of the parts read for the whole find. */
  readonly many: boolean
  /** No atom may hold at all: a collecting decision that says nothing. */
  readonly mayBeEmpty: boolean
  readonly atoms: readonly string[]
  /** All atoms, one bit each. */
  readonly all: bigint
  /** The bit of `unknown`, where somebody may have looked in vain; otherwise none. */
  readonly unknown: bigint
  /** Which atoms a cell names. */
  readonly mask: (cell: Cell) => bigint
}

export function domainOf(fact: string, knowledge: Knowledge): Domain | null {
  const decision = knowledge.decisions.find(({ id }) => id === fact)
  return decision === undefined ? (recordDomains[fact] ?? null) : decisionDomain(decision)
}

/** The facts that the cells of the decision read, as dimensions; facts nobody knows are left out. */
export function dimensionsOf(decision: Decision, knowledge: Knowledge): Dimension[] {
  const cells = [...standing(decision), ...decision.notCovered].flatMap(({ when }) => when)
  const facts = [...new Set([...decision.facts, ...cells.map(({ fact }) => fact)])].toSorted()
  return facts.flatMap((fact) => {
    const domain = domainOf(fact, knowledge)
    if (domain === null) return []
    const read = cells.filter((cell) => cell.fact === fact)
    const overParts = decision.each === 'find' && domain.each === 'component'
    return domain.kind === 'number'
      ? numberDimension(fact, domain, read, overParts)
      : valueDimension(fact, domain, read, overParts)
  })
}

const bitsOf = (atoms: readonly string[], named: readonly string[]): bigint =>
  named.reduce(
    (mask, value) => (atoms.includes(value) ? mask | (1n << BigInt(atoms.indexOf(value))) : mask),
    0n,
  )

const allOf = (atoms: readonly string[]): bigint => (1n << BigInt(atoms.length)) - 1n

function valueDimension(
  fact: string,
  domain: ValueDomain,
  cells: readonly Cell[],
  overParts: boolean,
): Dimension {
  const named = domain.open
    ? cells.flatMap((cell) => ('any' in cell ? cell.any : 'none' in cell ? cell.none : []))
    : []
  const others = domain.open ? [...named, 'something else'] : []
  const unknown = domain.answered ? [] : ['unknown']
  const atoms = [...new Set([...domain.values, ...others, ...unknown])]
  return {
    fact,
    many: domain.many || overParts,
    mayBeEmpty: domain.many && domain.answered,
    atoms,
    all: allOf(atoms),
    unknown: bitsOf(atoms, ['unknown']),
    mask: (cell) => ('interval' in cell ? 0n : bitsOf(atoms, 'any' in cell ? cell.any : cell.none)),
  }
}

function numberDimension(
  fact: string,
  domain: NumberDomain,
  cells: readonly Cell[],
  overParts: boolean,
): Dimension {
  const intervals = cells.flatMap((cell) => ('interval' in cell ? [cell.interval] : []))
  const pieces = piecesOf(domain, intervals)
  const atoms = [...pieces.map(({ label }) => label), 'unknown']
  const inside = (interval: Interval): string[] =>
    pieces.filter(({ sample }) => lies(sample, interval)).map(({ label }) => label)
  return {
    fact,
    many: overParts,
    mayBeEmpty: false,
    atoms,
    all: allOf(atoms),
    unknown: bitsOf(atoms, ['unknown']),
    mask: (cell) =>
      bitsOf(atoms, 'interval' in cell ? inside(cell.interval) : 'any' in cell ? cell.any : cell.none),
  }
}

/** Each threshold by itself and each stretch between two; `sample` stands for all of its piece. */
function piecesOf(
  domain: NumberDomain,
  intervals: readonly Interval[],
): { readonly label: string; readonly sample: number }[] {
  const ends = intervals.flatMap(({ from, above, to, below }) =>
    [from, above, to, below].filter((end) => end !== undefined),
  )
  const cuts = [...new Set([domain.from, ...ends, domain.to])]
    .filter((cut) => cut >= domain.from && cut <= domain.to)
    .toSorted((a, b) => a - b)
  return cuts.flatMap((cut, index) => {
    const point = { label: String(cut), sample: cut }
    const next = cuts[index + 1]
    const empty = next === undefined || (domain.whole && next - cut <= 1)
    if (empty) return [point]
    return [point, { label: `${cut} to ${next}`, sample: domain.whole ? cut + 1 : (cut + next) / 2 }]
  })
}

function lies(number: number, { from, above, to, below }: Interval): boolean {
  return (
    (from === undefined || number >= from) &&
    (above === undefined || number > above) &&
    (to === undefined || number <= to) &&
    (below === undefined || number < below)
  )
}
