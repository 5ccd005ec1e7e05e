import { measuredIn, measures } from './group-seen.ts'
import { probabilities, type Joint } from './joint.ts'
import { showings } from './gain.ts'
import { rangesIn, type Range } from './ranges.ts'
import { standingOf, type Standing } from './standing.ts'
import { restId, type Tables } from './mappings.ts'

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

/** Who leads, and how far the matter is decided; the latter, which takes ranges, is reckoned when it is read. */
function standBy(
  tables: Tables,
  probable: Float64Array,
  weights: () => Float64Array,
  measured: boolean,
): Stand {
  const leader = probable.indexOf(Math.max(...probable))
  let standing: Standing | undefined
  return {
    leader: tables.rivals[leader]!,
    probability: probable[leader]!,
    get standing() {
      return (standing ??= standingIn(weights(), probable, measured))
    },
  }
}

const stands = new WeakMap<Joint, Stand>()

export function standOf(joint: Joint): Stand {
  const known = stands.get(joint)
  if (known) return known
  const { tables, weights, groups } = joint
  const probable = probabilities(weights, tables.rivals.length)
  const fresh = standBy(tables, probable, () => weights, measuredIn(groups))
  stands.set(joint, fresh)
  return fresh
}

function standingIn(weights: Float64Array, probable: Float64Array, measured: boolean): Standing {
  const rangeOf = rangesIn(weights, probable.length)
  const rivals = Array.from(probable, (probability, rival) => {
    let range: Range | undefined
    return {
      probability,
      get range() {
        return (range ??= rangeOf(rival, probability))
      },
    }
  })
  return standingOf(
    rivals.sort((a, b) => b.probability - a.probability),
    measured,
  )
}

/** What each answer of a group would mean, in the order of its states. */
export function meaningsOf(joint: Joint, group: number): readonly Meaning[] {
  const seen = joint.groups[group]!
  const { group: written, states } = seen.table
  const measured = measures(seen) || measuredIn(joint.groups)
  return showings(joint, group).map((showing): Meaning => {
    const { state, chance, probable } = showing
    const stand = standBy(joint.tables, probable, () => showing.after.weights, measured)
    return {
      group: written.id,
      state: states[state]?.id ?? restId,
      says: (written.states[state] ?? written.rest).says,
      chance,
      leader: stand.leader,
      probability: stand.probability,
      get standing() {
        return stand.standing
      },
    }
  })
}

/**
 * Whether a matter that is as good as decided (probable, or more) would stay as it is, whatever these groups showed: the
 * same explanation in front, and as far decided. One that is still open gains by any bit.
 */
export function isIdle(joint: Joint, groups: readonly number[]): boolean {
  const now = standOf(joint)
  if (now.standing !== 'probable' && now.standing !== 'settled') return false
  const all = groups.flatMap((group) => meaningsOf(joint, group))
  return (
    all.every(({ leader }) => leader === now.leader) && all.every(({ standing }) => standing === now.standing)
  )
}
