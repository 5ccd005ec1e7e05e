import type { IsoDate } from '../base/calendar.ts'
import { assessFacts } from '../engine/assess.ts'
import type { AssemblageFind } from '../evidence/assemblage-find.ts'
import { raisedBy } from '../evidence/raised.ts'
import { stakesOf } from '../field/stakes.ts'
import { Supposed } from '../field/supposed.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { factsOf } from '../record/facts.ts'
import type { ConditionRecord } from '../record/record.ts'

/** A dating sample is noted by its name; a bare number may be a sample of anything. */
const datingSample = /luminescence|\bosl\b|\btl\b/i

/** A find as the assemblage plan sees it; null where nothing was seen that has more than one explanation. */
export function assemblageFind(
  id: string,
  record: ConditionRecord,
  knowledge: Knowledge,
  asOf: IsoDate,
): AssemblageFind | null {
  const facts = factsOf(record, knowledge.vocabulary.textWords, asOf)
  const raised = raisedBy(facts, knowledge)
  if (raised.length === 0) return null
  const occasion = { asOf, questions: false } as const
  const plan = assessFacts(record.find_number, facts, knowledge, occasion)
  const supposed = new Supposed(record, plan, knowledge, occasion)
  return {
    id,
    facts,
    raised,
    stopped: plan.cautions.some(({ level }) => level === 'stop'),
    datingSampled: (record.samples ?? []).some((sample) => datingSample.test(sample)),
    stakes: (one) => stakesOf(one, supposed),
  }
}
