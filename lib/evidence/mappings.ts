import type { Grade, Group, Matter, Odds, Prior } from '../knowledge/evidence.ts'
import type { Cell } from '../knowledge/knowledge.ts'
import type { EvidenceBase } from './base.ts'
import { shareOf } from './failures.ts'
import { grades, odds, within } from './grades.ts'
import { twinOf, type Twin } from './twins.ts'
import { evenPlaces, mappings, shared, type Places } from './places.ts'

/**
 * A matter as numbers: for each plausible mapping of its words its own tables. Every cell has its own number within the
 * band of its word, and the numbers of one rival over the states of a group are scaled to sum to one.
 */
export interface Tables {
  readonly matter: Matter
  readonly mappings: number
  readonly rivals: readonly string[]
  readonly priors: readonly (readonly PriorTable[])[]
  readonly groups: readonly GroupTable[]
}

/** One of the priors of a rival: its odds by mapping, and how much each mapping leans to it where several may hold. */
export interface PriorTable {
  readonly prior: Prior
  readonly odds: Float64Array
  readonly leaning: Float64Array
}

/** How often each state shows where each rival is true; the last state is `rest`. */
export interface GroupTable {
  readonly group: Group
  readonly states: readonly { readonly id: string; readonly when: readonly Cell[] }[]
  /** By mapping, state and rival, the rival running fastest. */
  readonly shares: Float64Array
  /** The group that measures the same thing by another method. */
  readonly twin: Twin | null
  /** How often each failure of the group happens where it can. */
  readonly failing: readonly number[]
}

export const restId = 'rest'

/** The cells of the states; where a question is asked, its answer is the cell. */
function statesOf(group: Group): GroupTable['states'] {
  const { question } = group
  const asked = question === null ? null : `looked.${question}`
  const cellsOf = (id: string, when: readonly Cell[]): readonly Cell[] =>
    asked === null || when.some(({ fact }) => fact === asked) ? when : [{ fact: asked, any: [id] }, ...when]
  return [...group.states.map(({ id, when }) => ({ id, when: cellsOf(id, when) })), { id: restId, when: [] }]
}

function groupTable(
  matter: Matter,
  group: Group,
  base: EvidenceBase,
  rivals: readonly string[],
  places: Places,
  count: number,
): GroupTable {
  const states = statesOf(group)
  const fits = [...group.states, group.rest].map((state) => state.fits)
  const wide = rivals.length
  const shares = new Float64Array(count * states.length * wide)
  states.forEach(({ id }, state) => {
    rivals.forEach((rival, column) => {
      const grade: Grade = fits[state]![rival]!
      const word = places(`grade ${grade}`)
      const own = places(`${matter.id} ${group.id} ${id} ${rival}`)
      for (let k = 0; k < count; k++)
        shares[(k * states.length + state) * wide + column] = within(grades[grade], shared(word[k]!, own[k]!))
    })
  })
  for (let k = 0; k < count; k++) {
    for (let column = 0; column < wide; column++) {
      const first = k * states.length * wide + column
      let sum = 0
      for (let state = 0; state < states.length; state++) sum += shares[first + state * wide]!
      for (let state = 0; state < states.length; state++) shares[first + state * wide]! /= sum
    }
  }
  const failing = group.failures.map((failure) => shareOf(failure, base))
  return { group, states, shares, twin: twinOf(group, matter.groups), failing }
}

function priorTable(name: string, prior: Prior, places: Places, count: number): PriorTable {
  const word: Odds = prior.odds
  const ofWord = places(`odds ${word}`)
  const own = places(name)
  const lean = places(`${name} leaning`)
  const numbers = new Float64Array(count)
  const leaning = new Float64Array(count)
  for (let k = 0; k < count; k++) {
    numbers[k] = within(odds[word], shared(ofWord[k]!, own[k]!))
    // Shares made from such numbers lie evenly among all ways to share (a flat Dirichlet).
    leaning[k] = -Math.log(lean[k]!)
  }
  return { prior, odds: numbers, leaning }
}

export function tablesOf(matter: Matter, base: EvidenceBase, places: Places, count: number): Tables {
  const rivals = matter.rivals.map(({ id }) => id)
  const remembered = new Map<string, Float64Array>()
  const once: Places = (name) => {
    const known = remembered.get(name) ?? places(name)
    remembered.set(name, known)
    return known
  }
  return {
    matter,
    mappings: count,
    rivals,
    priors: matter.rivals.map(({ id, priors }) =>
      priors.map((prior, at) => priorTable(`${matter.id} ${id} prior-${at}`, prior, once, count)),
    ),
    groups: matter.groups.map((group) => groupTable(matter, group, base, rivals, once, count)),
  }
}

const prepared = new WeakMap<Matter, Tables>()

/** The tables every find is weighed by, made once for as long as the knowledge lives. */
export function tablesFor(matter: Matter, base: EvidenceBase): Tables {
  const known = prepared.get(matter)
  if (known) return known
  const fresh = tablesOf(matter, base, evenPlaces, mappings)
  prepared.set(matter, fresh)
  return fresh
}
