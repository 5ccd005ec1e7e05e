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
  readonly lookup: Lookup
  readonly joint: Joint
  /** The rival that the record itself names; null where it names none. */
  readonly settled: string | null
}

const aboutOf = (matter: Matter, facts: RecordFacts, part: number): string | null =>
  matter.about.find(({ field, value }) => facts.components[part]!.facts[field]?.has.includes(value))?.value ??
  null

/** Every matter on every part that what is recorded raises. */
export function raisedBy(facts: RecordFacts, base: EvidenceBase): readonly Raised[] {
  const lookups = facts.components.map((_, part) => lookupOf(facts, part))
  const found: Raised[] = []
  for (const matter of Object.values(base.matters)) {
    const raising = facts.components.flatMap(({ name }, part) => {
      const about = aboutOf(matter, facts, part)
      if (about === null || allHold(matter.where, lookups[part]!) === 'no') return []
      return [{ part, component: name, about }]
    })
    const parts = raising.map(({ part }) => part)
    for (const one of raising) {
      const lookup = lookups[one.part]!
      const settled = settledRival(matter, one.part, parts, facts)
      found.push({ matter, ...one, lookup, joint: jointFor(matter, base, lookup), settled })
    }
  }
  return found.sort((a, b) => a.part - b.part)
}
