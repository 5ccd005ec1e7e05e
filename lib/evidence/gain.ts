import { likelihoodBeside } from './beside.ts'
import { unseen } from './group-seen.ts'
import { probabilities, scratchOf, weightsWithout, withState, type Joint } from './joint.ts'

/**
 * What a look would tell. The gain is the mutual information [bit] between what would show and which rival is true, all
 * mappings together: how much less would be open afterwards, on average over all that may show. It is never negative.
 */

/** Below this nobody is asked: a twentieth of what a fair yes or no tells. A house rule. */
export const floorBits = 0.05

/** More ways for a set to come out are not tried one by one. */
const mostOutcomes = 4096

/** Groups of a set that the record has not settled; the others tell nothing more. */
const unsettled = ({ groups }: Joint, set: readonly number[]) =>
  [...new Set(set)].filter((group) => groups[group]!.possible.length > 1)

/** As many of them as can be tried together, the most telling first: what is left out could only add. */
function triable(joint: Joint, open: readonly number[]): readonly number[] {
  const ways = (group: number) => joint.groups[group]!.possible.length
  if (open.reduce((product, group) => product * ways(group), 1) <= mostOutcomes) return open
  const ordered = open
    .map((group) => ({ group, bits: gainBits(joint, [group]) }))
    .sort((a, b) => b.bits - a.bits)
  let product = 1
  return ordered.flatMap(({ group }) => ((product *= ways(group)) <= mostOutcomes ? [group] : []))
}

const sumOf = (shares: Float64Array) => shares.reduce((sum, one) => sum + one, 0)

/** Bits told by one thing that shows: how far from where they stood the rivals then stand, by how likely it is. */
function told(chance: number, then: Float64Array, before: Float64Array): number {
  let bits = 0
  for (let rival = 0; rival < before.length; rival++) {
    const share = then[rival]!
    if (share > 0) bits += share * Math.log2(share / before[rival]!)
  }
  return chance * bits
}

/** The same from weights that sum to how likely it is. */
function toldBy(weights: Float64Array, before: Float64Array): number {
  const together = probabilities(weights, before.length)
  const chance = sumOf(together)
  return told(
    chance,
    together.map((both) => both / chance),
    before,
  )
}

/** Expected information [bit] of observing a set of groups of one matter together. */
export function gainBits(joint: Joint, set: readonly number[]): number {
  const open = triable(joint, unsettled(joint, set))
  if (open.length === 0) return 0
  const wide = joint.tables.rivals.length
  const before = probabilities(joint.weights, wide)
  if (open.length === 1) {
    const all = showings(joint, open[0]!)
    return Math.max(
      0,
      all.reduce((sum, { chance, probable }) => sum + told(chance, probable, before), 0),
    )
  }
  const size = joint.weights.length
  const scratch = new Float64Array(size)
  const layers = open.map(() => new Float64Array(size))
  const known = [...joint.groups]
  for (const group of open) known[group] = unseen(known[group]!)
  const walk = (at: number, from: Float64Array): number => {
    const group = open[at]!
    const seen = joint.groups[group]!
    const last = at === open.length - 1
    const into = layers[at]!
    let bits = 0
    for (const state of seen.possible) {
      likelihoodBeside(known, group, [state], wide, scratch)
      for (let one = 0; one < size; one++) into[one] = from[one]! * scratch[one]!
      known[group] = { ...seen, possible: [state] }
      bits += last ? toldBy(into, before) : walk(at + 1, into)
      known[group] = unseen(seen)
    }
    return bits
  }
  return Math.max(0, walk(0, weightsWithout(joint, open)))
}

/** One thing that a look at a group may show, and what would be thought then. */
export interface Showing {
  /** Number of the state among those of the group. */
  readonly state: number
  readonly chance: number
  /** The probability of each rival then. */
  readonly probable: Float64Array
  /** All that would be known then; made when it is read. */
  readonly after: Joint
}

const remembered = new WeakMap<Joint, Map<number, readonly Showing[]>>()

/** All that a look at one group may still show; the chances sum to one. Reckoned once for what is known. */
export function showings(joint: Joint, group: number): readonly Showing[] {
  const known = remembered.get(joint) ?? new Map<number, readonly Showing[]>()
  remembered.set(joint, known)
  const before = known.get(group)
  if (before) return before
  const wide = joint.tables.rivals.length
  const without = weightsWithout(joint, [group])
  const scratch = scratchOf(without.length)
  const all = joint.groups[group]!.possible.flatMap((state): Showing | readonly never[] => {
    likelihoodBeside(joint.groups, group, [state], wide, scratch)
    for (let at = 0; at < scratch.length; at++) scratch[at]! *= without[at]!
    const together = probabilities(scratch, wide)
    const chance = sumOf(together)
    // What a crust hides altogether cannot show, and means nothing.
    if (chance === 0) return []
    let after: Joint | undefined
    return {
      state,
      chance,
      probable: together.map((both) => both / chance),
      get after() {
        return (after ??= withState(joint, group, state))
      },
    }
  })
  known.set(group, all)
  return all
}
