import type { RecordFacts } from '../record/fact.ts'
import type { EvidenceBase } from './base.ts'
import { measuredIn } from './group-seen.ts'
import { probabilities } from './joint.ts'
import { pullsOf, type Pull } from './pulls.ts'
import { raisedBy, type Raised } from './raised.ts'
import { rangesOf } from './ranges.ts'
import { standingOf, type Standing } from './standing.ts'

/** What a thing that was seen may be: the rival explanations of one matter on one part of a find. */
export interface Weighed {
  readonly matter: string
  readonly asks: string
  /** Number of the part in the record, and its name. */
  readonly part: number
  readonly component: string
  /** The observation that raised it: `white-metal-sheen`. */
  readonly about: string
  readonly standing: Standing
  /** What it was identified as, by the record or by somebody; none of the rivals, it may be. Null where it is not. */
  readonly settledBy: string | null
  /** Likeliest first; the probabilities sum to one, over all matters of which only one can apply together. */
  readonly rivals: readonly WeighedRival[]
  /** An id of the contested matters. */
  readonly contested: string | null
}

export interface WeighedRival {
  /** The code of the interpretation. */
  readonly id: string
  readonly says: string
  readonly probability: number
  /** Between the two lie eight in ten of the plausible readings of the words it rests on. */
  readonly range: readonly [low: number, high: number]
  readonly for: readonly Pull[]
  readonly against: readonly Pull[]
}

function standingIn({ settled, share, joint }: Raised, ordered: readonly WeighedRival[]): Standing {
  if (settled !== null) return 'settled'
  // Which of several questions is the right one is open, and so is every answer.
  return share < 1 ? 'open' : standingOf(ordered, measuredIn(joint.groups))
}

export function weighedOf(raised: Raised): Weighed {
  const { matter, part, component, about, share, joint, settled } = raised
  // A sum of many parts may end a hair above one.
  const probable = probabilities(joint.weights, matter.rivals.length).map((one) => Math.min(1, one))
  const ranges = rangesOf(joint.weights, probable)
  const pulls = pullsOf(joint)
  const rivals = matter.rivals.map(({ id, says }, rival): WeighedRival => {
    const known = settled === null ? null : Number(id === settled)
    const [low, high] = ranges[rival]!
    return {
      id,
      says,
      probability: known ?? share * probable[rival]!,
      range: known === null ? [share * low, share * high] : [known, known],
      ...pulls[rival]!,
    }
  })
  const ordered = rivals.toSorted((a, b) => b.probability - a.probability)
  return {
    matter: matter.id,
    asks: matter.asks,
    part,
    component,
    about,
    standing: standingIn(raised, ordered),
    settledBy: settled,
    rivals: ordered,
    contested: matter.contested,
  }
}

/** Everything that the record raises, part by part, each with its rivals. */
export const weigh = (facts: RecordFacts, base: EvidenceBase): readonly Weighed[] =>
  raisedBy(facts, base).map(weighedOf)
