import { probabilities, type Joint } from './joint.ts'
import { showings } from './gain.ts'
import { rangesOf } from './ranges.ts'
import { standingOf, type Standing } from './standing.ts'
import { restId } from './mappings.ts'

/** What one thing that a look may show would mean. */
export interface Meaning {
  readonly group: string
  /** The state, or `rest` for none of them. */
  readonly state: string
  readonly says: string
  readonly chance: number
  /** The explanation that would then lead, and how likely it would be. */
  readonly leader: string
  readonly probability: number
  readonly standing: Standing
}

export interface Stand {
  readonly leader: string
  readonly probability: number
  readonly standing: Standing
}

/** Who leads, and how far the matter is decided. */
export function standOf({ tables, weights }: Joint): Stand {
  const probable = probabilities(weights, tables.rivals.length)
  const ranges = rangesOf(weights, probable)
  const rivals = tables.rivals
    .map((id, rival) => ({ id, probability: probable[rival]!, range: ranges[rival]! }))
    .sort((a, b) => b.probability - a.probability)
  return { leader: rivals[0]!.id, probability: rivals[0]!.probability, standing: standingOf(rivals) }
}

/** What each answer of a group would mean, in the order of its states. */
export function meaningsOf(joint: Joint, group: number): readonly Meaning[] {
  const { group: written, states } = joint.groups[group]!.table
  return showings(joint, group).map(({ state, chance, after }) => ({
    group: written.id,
    state: states[state]?.id ?? restId,
    says: (written.states[state] ?? written.rest).says,
    chance,
    ...standOf(after),
  }))
}

/** Whether some answer would put another explanation in front, or decide the matter more or less than it is. */
export function wouldMove(now: Stand, meanings: readonly Meaning[]): boolean {
  return meanings.some(({ leader, standing }) => leader !== now.leader || standing !== now.standing)
}
