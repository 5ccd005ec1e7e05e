import type { Matter } from '../knowledge/evidence.ts'
import type { RecordFacts } from '../record/fact.ts'
import type { EvidenceBase } from './base.ts'
import { jointFor, type Joint } from './joint.ts'
import { allHold, lookupOf, type Lookup } from './read-cells.ts'
import { settledRival } from './settled.ts'

/** A matter that stands open on a part of a find, weighed. */
export interface Raised {
  readonly matter: Matter
  readonly part: number
  readonly component: string
  /** The observation that raised it, of the first that did. */
  readonly about: string
  /**
   * How far this is the question at all: an observation on a metal that nobody could name raises one matter for each metal
   * it may be, of which only one can apply. One where there is no other; else they share evenly, for nothing tells them apart.
   */
  readonly share: number
  readonly lookup: Lookup
  readonly joint: Joint
  /** What it was identified as, by the record or by somebody; none of the rivals, it may be. Null where it is not. */
  readonly settled: string | null
}

const raisers = new WeakMap<EvidenceBase['matters'], ReadonlyMap<string, readonly Matter[]>>()

/** Matters by what raises them, `evidence white-metal-sheen`: most of what is recorded raises none. */
function raisersOf({ matters }: EvidenceBase): ReadonlyMap<string, readonly Matter[]> {
  const known = raisers.get(matters)
  if (known) return known
  const fresh = new Map<string, Matter[]>()
  for (const matter of Object.values(matters)) {
    for (const { field, value } of matter.about) {
      const key = `${field} ${value}`
      fresh.set(key, [...(fresh.get(key) ?? []), matter])
    }
  }
  raisers.set(matters, fresh)
  return fresh
}

interface Sight {
  readonly matter: Matter
  readonly part: number
  readonly about: string
}

/** What is seen of a part, each matter once: by the first of its observations that is recorded. */
function sightsOf(facts: RecordFacts, part: number, lookup: Lookup, base: EvidenceBase): readonly Sight[] {
  const found = new Set<Matter>()
  const of = raisersOf(base)
  const own = facts.components[part]!.facts
  for (const field of ['evidence', 'seen'])
    for (const value of own[field]?.has ?? [])
      for (const matter of of.get(`${field} ${value}`) ?? []) found.add(matter)
  return [...found]
    .filter(({ where }) => allHold(where, lookup) !== 'no')
    .map((matter) => {
      const first = matter.about.find(({ field, value }) => own[field]?.has.includes(value))!
      return { matter, part, about: first.value }
    })
    .sort((a, b) => (a.matter.id < b.matter.id ? -1 : 1))
}

/** Every matter that what is recorded raises, part by part. */
export function raisedBy(facts: RecordFacts, base: EvidenceBase): readonly Raised[] {
  const lookups = facts.components.map((_, part) => lookupOf(facts, part))
  const sights = lookups.flatMap((lookup, part) => sightsOf(facts, part, lookup, base))
  const raised = sights.map(({ matter, part, about }): Raised => {
    const lookup = lookups[part]!
    const parts = sights.filter((one) => one.matter === matter).map((one) => one.part)
    const rivalling = sights.filter((one) => one.part === part && one.about === about)
    return {
      matter,
      part,
      component: facts.components[part]!.name,
      about,
      share: 1 / rivalling.length,
      lookup,
      joint: jointFor(matter, base, lookup),
      settled: settledRival(matter, part, parts, facts),
    }
  })
  return withoutMoot(raised)
}

/** Of questions of which only one can apply, the others are moot once one is answered. */
const withoutMoot = (raised: readonly Raised[]): readonly Raised[] =>
  raised.filter(
    ({ settled, part, about }) =>
      settled !== null ||
      !raised.some((other) => other.settled !== null && other.part === part && other.about === about),
  )

/** What somebody found a matter on a part to be: one of its rivals, or something else. */
export interface Identified {
  readonly component: string
  readonly matter: string
  readonly interpretation: string
}

/** The same, with what was identified settled; of several identifications of one matter the last counts. */
export const withIdentified = (
  raised: readonly Raised[],
  identified: readonly Identified[],
): readonly Raised[] =>
  withoutMoot(
    raised.map((one) => {
      const last = identified.findLast(
        ({ component, matter }) => component === one.component && matter === one.matter.id,
      )
      return last ? { ...one, settled: last.interpretation } : one
    }),
  )
