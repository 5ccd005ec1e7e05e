import { drawFrom, type Drawn } from './draw-from.ts'
import type { EvidenceBase } from '../../lib/evidence/base.ts'
import { jointFor, jointOf, probabilities, withState, type Joint } from '../../lib/evidence/joint.ts'
import { rangesOf } from '../../lib/evidence/ranges.ts'
import type { Matter } from '../../lib/knowledge/evidence.ts'
import type { Lookup } from '../../lib/evidence/read-cells.ts'
import { chance } from '../demo/chance.ts'

/**
 * Finds drawn from the evidence base itself: what its words truly mean lies anywhere in their bands, and some of the groups
 * were looked at. What is then stated is held against what is true.
 */
export interface Stated {
  /** For each rival: what is stated, and what somebody would state who knew what the words truly mean. */
  readonly rivals: readonly {
    readonly probability: number
    readonly range: readonly [low: number, high: number]
    readonly truly: number
    readonly isTrue: boolean
  }[]
}

const nothingRecorded: Lookup = () => undefined

const observe = (joint: Joint, { states }: Drawn, looked: readonly boolean[]): Joint =>
  states.reduce((known, state, group) => (looked[group] ? withState(known, group, state) : known), joint)

export function statedOf(
  matter: Matter,
  base: EvidenceBase,
  seed: number,
  lookup: Lookup = nothingRecorded,
): Stated {
  const { next } = chance(seed)
  const drawn = drawFrom(matter, base, lookup, next)
  const looked = drawn.states.map(() => next() < 0.6)
  const wide = matter.rivals.length
  const known = observe(jointFor(matter, base, lookup), drawn, looked).weights
  const truly = probabilities(observe(jointOf(drawn.truth, lookup), drawn, looked).weights, wide)
  const probable = probabilities(known, wide)
  const ranges = rangesOf(known, probable)
  return {
    rivals: Array.from(probable, (probability, rival) => ({
      probability,
      range: ranges[rival]!,
      truly: truly[rival]!,
      isTrue: rival === drawn.rival,
    })),
  }
}

export const manyStated = (matter: Matter, base: EvidenceBase, finds: number, from = 1): readonly Stated[] =>
  Array.from({ length: finds }, (_, at) => statedOf(matter, base, from * 100_003 + at))

/** In how many of the cases the range holds what is truly so; without those where hardly anything is open. */
export function shareHeld(all: readonly Stated[]): { readonly share: number; readonly cases: number } {
  const open = all
    .flatMap(({ rivals }) => rivals)
    .filter(({ probability }) => probability > 0.02 && probability < 0.98)
  const held = open.filter(({ range, truly }) => truly >= range[0] && truly <= range[1])
  return { share: held.length / open.length, cases: open.length }
}

export interface Decile {
  readonly stated: number
  readonly came: number
  readonly cases: number
}

/** What was stated in each tenth of the scale, and how often it was so. */
export function calibration(all: readonly Stated[]): readonly Decile[] {
  const rivals = all.flatMap((one) => one.rivals)
  return Array.from({ length: 10 }, (_, tenth) => {
    const here = rivals.filter(({ probability }) => Math.min(9, Math.floor(probability * 10)) === tenth)
    const mean = (of: (one: (typeof here)[number]) => number) =>
      here.reduce((sum, one) => sum + of(one), 0) / here.length
    return {
      stated: mean(({ probability }) => probability),
      came: mean(({ isTrue }) => Number(isTrue)),
      cases: here.length,
    }
  })
}
