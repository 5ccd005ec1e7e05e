import { allHold, lookupOf, type Lookup } from '../evidence/read-cells.ts'
import type { LookNext } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { RecordFacts } from '../record/fact.ts'
import type { Look } from './look-changes.ts'

type List = 'seen' | 'evidence'

/** What may be seen, by whether it would have to be explained on such a part, or is a thing of other materials alone. */
function explained(field: List, lookup: Lookup, { matters }: Knowledge) {
  const here = new Set<string>()
  const elsewhere = new Set<string>()
  for (const { about, where } of Object.values(matters)) {
    const fits = allHold(where, lookup) !== 'no'
    for (const one of about) if (one.field === field) (fits ? here : elsewhere).add(one.value)
  }
  return { here, elsewhere: elsewhere.difference(here) }
}

/**
 * The two lists of what may be seen, where nobody has gone through them: what is ticked there is what everything else is
 * asked about. A list that holds anything, `none` and `unknown` among it, was gone through.
 */
export const listsUnread = (facts: RecordFacts, knowledge: Knowledge): readonly Look[] =>
  facts.components.flatMap(({ name, facts: own }, part) =>
    (['seen', 'evidence'] as const).flatMap((what): Look[] => {
      if (own[what] !== undefined) return []
      const answers = [...explained(what, lookupOf(facts, part), knowledge).here]
      if (answers.length === 0) return []
      return [{ what, part, component: name, change: 1, answers, settles: ['matters'] }]
    }),
  )

/** A question of the rules without what such a part cannot show: nobody searches lead for drops of rust. */
export function plausible(question: LookNext, facts: RecordFacts, knowledge: Knowledge): LookNext {
  const list = (['seen', 'evidence'] as const).find((one) => question.fact.endsWith(`.${one}`))
  const part = facts.components.findIndex(({ name }) => question.fact === `${name}.${list}`)
  if (list === undefined || part === -1) return question
  const { elsewhere } = explained(list, lookupOf(facts, part), knowledge)
  return { ...question, answers: question.answers.filter((answer) => !elsewhere.has(answer)) }
}
