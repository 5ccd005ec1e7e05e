import { likelihoodBeside } from './beside.ts'
import { unseen } from './group-seen.ts'
import { probabilities, update, weightsWithout, type Joint } from './joint.ts'

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

/** Bits told by one thing that shows: its probability with each rival, against each for itself. */
function told(together: Float64Array, before: Float64Array): number {
  let chance = 0
  for (const both of together) chance += both
  let bits = 0
  for (let rival = 0; rival < before.length; rival++) {
    const both = together[rival]!
    if (both > 0) bits += both * Math.log2(both / (chance * before[rival]!))
  }
  return bits
}

/** Expected information [bit] of observing a set of groups of one matter together. */
export function gainBits(joint: Joint, set: readonly number[]): number {
  const open = triable(joint, unsettled(joint, set))
  if (open.length === 0) return 0
  const wide = joint.tables.rivals.length
  const size = joint.weights.length
  const scratch = new Float64Array(size)
  const before = probabilities(joint.weights, wide)
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
      bits += last ? told(probabilities(into, wide), before) : walk(at + 1, into)
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
  readonly after: Joint
}

/** All that a look at one group may still show; the chances sum to one. */
export function showings(joint: Joint, group: number): readonly Showing[] {
  const seen = joint.groups[group]!
  const wide = joint.tables.rivals.length
  const without = weightsWithout(joint, [group])
  return seen.possible.map((state) => {
    const weights = without.slice()
    const chance = update(
      weights,
      likelihoodBeside(joint.groups, group, [state], wide, new Float64Array(weights.length)),
    )
    return {
      state,
      chance,
      after: { ...joint, weights, groups: joint.groups.with(group, { ...seen, possible: [state] }) },
    }
  })
}
