import type { EvidenceBase } from './base.ts'
import { likelihoodBeside } from './beside.ts'
import { groupSeen, observed, unseen, type GroupSeen } from './group-seen.ts'
import { tablesFor, type PriorTable, type Tables } from './mappings.ts'
import { possibleStates } from './outcome.ts'
import { allHold, type Lookup } from './read-cells.ts'
import type { Matter } from '../knowledge/evidence.ts'

/**
 * What is known of one matter on one part: how likely each pair of a mapping and a rival is, all that is recorded taken
 * together. Mappings are weighed by the evidence as the rivals are. So what is thought today is, to the last digit, the
 * average of what will be thought after any look, weighted by how likely each answer is.
 */
export interface Joint {
  readonly tables: Tables
  /** By mapping and rival, the rival running fastest; they sum to one. */
  readonly weights: Float64Array
  readonly groups: readonly GroupSeen[]
}

/** The priors that may be the first to hold: all up to the one that surely does. */
function candidates(tables: readonly PriorTable[], lookup: Lookup): readonly PriorTable[] {
  const found: PriorTable[] = []
  for (const table of tables) {
    const holds = allHold(table.prior.when, lookup)
    if (holds !== 'no') found.push(table)
    if (holds === 'yes') break
  }
  return found
}

/**
 * Odds before looking, by mapping and rival, scaled over the rivals. Where the record leaves open which prior holds, each
 * mapping leans its own way between them: their average counts, and the range shows that it hangs on what nobody recorded.
 * What holds in any case (the last of them) weighs as much as all the special cases that may apply together.
 */
export function priorWeights({ mappings, priors }: Tables, lookup: Lookup): Float64Array {
  const wide = priors.length
  const weights = new Float64Array(mappings * wide)
  priors.forEach((tables, rival) => {
    const open = candidates(tables, lookup)
    const sure = open.length - 1
    const { odds, leaning } = open[sure]!
    for (let k = 0; k < mappings; k++) {
      let lean = sure === 0 ? 1 : leaning[k]! * sure
      let sum = lean * odds[k]!
      for (let special = 0; special < sure; special++) {
        const one = open[special]!
        lean += one.leaning[k]!
        sum += one.leaning[k]! * one.odds[k]!
      }
      weights[k * wide + rival] = sum / lean
    }
  })
  for (let k = 0; k < mappings; k++) {
    let sum = 0
    for (let rival = 0; rival < wide; rival++) sum += weights[k * wide + rival]!
    for (let rival = 0; rival < wide; rival++) weights[k * wide + rival]! /= sum * mappings
  }
  return weights
}

let spare = new Float64Array(0)

/** Room to reckon in, one sum at a time: whoever asks next writes over it. Making it anew costs more than the sums. */
export function scratchOf(size: number): Float64Array {
  if (spare.length !== size) spare = new Float64Array(size)
  return spare
}

/** `weights` times what is observed, scaled to sum to one; and how likely it was. */
export function update(weights: Float64Array, likely: Float64Array): number {
  let sum = 0
  for (let at = 0; at < weights.length; at++) sum += weights[at]! *= likely[at]!
  for (let at = 0; at < weights.length; at++) weights[at]! /= sum
  return sum
}

export function jointOf(tables: Tables, lookup: Lookup): Joint {
  const wide = tables.rivals.length
  const weights = priorWeights(tables, lookup)
  const scratch = scratchOf(weights.length)
  const groups = tables.groups.map((table) =>
    groupSeen(table, possibleStates(table, lookup), tables.rivals, lookup),
  )
  const known = groups.map(unseen)
  groups.forEach((seen, at) => {
    if (!observed(seen)) return
    update(weights, likelihoodBeside(known, at, seen.possible, wide, scratch))
    known[at] = seen
  })
  return { tables, weights, groups }
}

export const jointFor = (matter: Matter, base: EvidenceBase, lookup: Lookup): Joint =>
  jointOf(tablesFor(matter, base), lookup)

/** The probability of each rival, all mappings together. */
export function probabilities(weights: Float64Array, wide: number): Float64Array {
  const sums = new Float64Array(wide)
  for (let at = 0; at < weights.length;)
    for (let rival = 0; rival < wide; rival++) sums[rival]! += weights[at++]!
  return sums
}

/** The same with one more group observed; where the record had narrowed it already, what it said is taken up into this. */
export function withState(joint: Joint, group: number, state: number): Joint {
  const seen = joint.groups[group]!
  const weights = weightsWithout(joint, [group]).slice()
  const wide = joint.tables.rivals.length
  update(weights, likelihoodBeside(joint.groups, group, [state], wide, scratchOf(weights.length)))
  return { ...joint, weights, groups: joint.groups.with(group, { ...seen, possible: [state] }) }
}

/**
 * The weights with what is known of these groups taken out again, so scaled that times all that the record leaves possible
 * of them they are the weights themselves. Of groups that nobody looked at it is the weights as they stand: not to be
 * written into.
 */
export function weightsWithout({ weights, groups, tables }: Joint, without: readonly number[]): Float64Array {
  if (!without.some((group) => observed(groups[group]!))) return weights
  const left = weights.slice()
  const wide = tables.rivals.length
  const known = [...groups]
  for (const group of without) {
    const seen = known[group]!
    if (!observed(seen)) continue
    const likely = likelihoodBeside(known, group, seen.possible, wide, new Float64Array(left.length))
    for (let at = 0; at < left.length; at++) left[at]! /= likely[at]!
    known[group] = unseen(seen)
  }
  return left
}
