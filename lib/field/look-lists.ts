import { allHold, lookupOf, type Lookup } from '../evidence/read-cells.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { RecordFacts } from '../record/fact.ts'
import type { Look } from './look-changes.ts'

/** What may be seen on such a part and would then have to be explained. */
function explained(field: 'seen' | 'evidence', lookup: Lookup, { matters }: Knowledge): readonly string[] {
  const found = Object.values(matters)
    .filter(({ where }) => allHold(where, lookup) !== 'no')
    .flatMap(({ about }) => about.flatMap((one) => (one.field === field ? one.value : [])))
  return [...new Set(found)]
}

/**
 * The two lists of what may be seen, where nobody has gone through them: what is ticked there is what everything else is
 * asked about. A list that holds anything, `none` and `unknown` among it, was gone through.
 */
export const listsUnread = (facts: RecordFacts, knowledge: Knowledge): readonly Look[] =>
  facts.components.flatMap(({ name, facts: own }, part) =>
    (['seen', 'evidence'] as const).flatMap((what): Look[] => {
      if (own[what] !== undefined) return []
      const answers = explained(what, lookupOf(facts, part), knowledge)
      if (answers.length === 0) return []
      return [{ what, part, component: name, change: 1, answers, settles: ['matters'] }]
    }),
  )
