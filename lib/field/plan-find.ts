import { assessFacts, type Occasion } from '../engine/assess.ts'
import type { Plan } from '../engine/plan.ts'
import { weigh } from '../evidence/weigh.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { factsOf } from '../record/facts.ts'
import type { ConditionRecord } from '../record/record.ts'
import { interpretationsOf } from './interpretations.ts'

/** The whole plan for one condition record: what the rules say, and what the evidence makes of what was seen. */
export function planFind(record: ConditionRecord, knowledge: Knowledge, occasion: Occasion): Plan {
  const facts = factsOf(record, knowledge.vocabulary.textWords, occasion.asOf)
  const plan = assessFacts(record.find_number, facts, knowledge, occasion)
  return { ...plan, interpretations: interpretationsOf(weigh(facts, knowledge)) }
}
