import { probabilities, type Joint } from './joint.ts'
import { showings } from './gain.ts'
import { rangesIn, type Range } from './ranges.ts'
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
  const rangeOf = rangesIn(weights, probable.length)
  const rivals = tables.rivals
    .map((id, rival) => {
      let known: Range | undefined
      const probability = probable[rival]!
      return {
        id,
        probability,
        get range() {
          return (known ??= rangeOf(rival, probability))
        },
      }
    })
    .sort((a, b) => b.probability - a.probability)
  return { leader: rivals[0]!.id, probability: rivals[0]!.probability, standing: standingOf(rivals) }
}

const remembered = new WeakMap<Joint, Map<number, readonly Meaning[]>>()

/** What each answer of a group would mean, in the order of its states; reckoned once for what is known. */
export function meaningsOf(joint: Joint, group: number): readonly Meaning[] {
  const known = remembered.get(joint) ?? new Map<number, readonly Meaning[]>()
  remembered.set(joint, known)
  const before = known.get(group)
  if (before) return before
  const { group: written, states } = joint.groups[group]!.table
  const means = showings(joint, group).map(({ state, chance, after }) => ({
    group: written.id,
    state: states[state]?.id ?? restId,
    says: (written.states[state] ?? written.rest).says,
    chance,
    ...standOf(after),
  }))
  known.set(group, means)
  return means
}

/**
 * Whether a matter that is as good as decided (probable, or more) would stay as it is, whatever these groups showed: the
 * same explanation in front, and as far decided. One that is still open gains by any bit.
 */
export function isIdle(joint: Joint, groups: readonly number[]): boolean {
  const now = standOf(joint)
  if (now.standing !== 'probable' && now.standing !== 'settled') return false
  return groups.every((group) =>
    meaningsOf(joint, group).every(
      ({ leader, standing }) => leader === now.leader && standing === now.standing,
    ),
  )
}
