import type { Matter } from '../../lib/knowledge/evidence.ts'
import type { EvidenceBase } from '../../lib/evidence/base.ts'
import { likelihoodBeside } from '../../lib/evidence/beside.ts'
import { groupSeen, unseen } from '../../lib/evidence/group-seen.ts'
import { priorWeights } from '../../lib/evidence/joint.ts'
import { tablesOf, type Tables } from '../../lib/evidence/mappings.ts'
import type { Places } from '../../lib/evidence/places.ts'
import type { Lookup } from '../../lib/evidence/read-cells.ts'

/**
 * A find drawn from the evidence base itself, for simulations: what the words truly mean (anywhere in their bands), which
 * explanation is true, and what every group would then show, the method's own failures among it.
 */
export interface Drawn {
  /** What the words truly mean, as tables of one mapping. */
  readonly truth: Tables
  readonly rival: number
  /** For each group the number of the state that shows. */
  readonly states: readonly number[]
}

function pick(chances: Iterable<number>, lot: number): number {
  let left = lot
  let last = 0
  let at = 0
  for (const chance of chances) {
    if (chance > 0) last = at
    left -= chance
    if (left < 0) return at
    at++
  }
  return last
}

/** `random` gives numbers from 0 to below 1; `lookup` is what is recorded already, for priors and failures. */
export function drawFrom(matter: Matter, base: EvidenceBase, lookup: Lookup, random: () => number): Drawn {
  const anywhere: Places = () => Float64Array.of(1 - random())
  const truth = tablesOf(matter, base, anywhere, 1)
  const wide = truth.rivals.length
  const rival = pick(priorWeights(truth, lookup), random())
  const scratch = new Float64Array(wide)
  const drawn = truth.groups.map((table) => unseen(groupSeen(table, [], truth.rivals, lookup)))
  const states = truth.groups.map((table, at) => {
    const chances = table.states.map(
      (_, state) => likelihoodBeside(drawn, at, [state], wide, scratch)[rival]!,
    )
    const state = pick(chances, random())
    drawn[at] = { ...drawn[at]!, possible: [state] }
    return state
  })
  return { truth, rival, states }
}
