import type { Failure } from '../knowledge/evidence.ts'
import type { EvidenceBase } from './base.ts'
import { hiddenShare } from './depth.ts'
import { grades } from './grades.ts'
import type { GroupTable } from './mappings.ts'
import { allHold, type Lookup } from './read-cells.ts'

/**
 * What a method shows is not always what is there. A failure that befalls a share f of the finds leaves (1 − f) of every
 * state as it was and adds f to the state it shows instead; several follow one another.
 *
 * How often a method fails is one number, the middle of its word, and does not vary with the mapping: otherwise a result
 * that says nothing of the find could seem to say something through what it says of the words. So a failure that may befall
 * any rival never makes a look tell more; one that befalls some of them may, since then failing itself is a sign.
 */
export interface Mistaken {
  /** By rival: what is left of the true state. */
  readonly left: Float64Array
  /** By state and rival: what is added. */
  readonly added: Float64Array
  /** The failures that may have a part in it. */
  readonly failures: readonly Failure[]
}

/** Where nobody knows whether a failure can happen here, it counts for half: neither surely absent nor surely there. */
const ifOpen = 0.5

export const shareOf = ({ how }: Failure, base: EvidenceBase): number =>
  'grade' in how ? grades[how.grade][1] : hiddenShare(how.depth, base)

/** How the method of a group may go wrong on this part; null where it cannot. */
export function mistaken(table: GroupTable, rivals: readonly string[], lookup: Lookup): Mistaken | null {
  const { group, states, failing } = table
  const wide = rivals.length
  let found: { left: Float64Array; added: Float64Array; failures: Failure[] } | null = null
  group.failures.forEach((failure, at) => {
    const holds = allHold(failure.when, lookup)
    const share = failing[at]! * (holds === 'yes' ? 1 : holds === 'open' ? ifOpen : 0)
    const shown = states.findIndex(({ id }) => id === failure.as)
    if (share === 0 || shown === -1) return
    found ??= {
      left: new Float64Array(wide).fill(1),
      added: new Float64Array(states.length * wide),
      failures: [],
    }
    found.failures.push(failure)
    for (let rival = 0; rival < wide; rival++) {
      if (failure.of !== null && !failure.of.includes(rivals[rival]!)) continue
      found.left[rival]! *= 1 - share
      for (let state = 0; state < states.length; state++) found.added[state * wide + rival]! *= 1 - share
      found.added[shown * wide + rival]! += share
    }
  })
  return found
}
