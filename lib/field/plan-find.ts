import { assessFacts, type Occasion } from '../engine/assess.ts'
import type { Plan } from '../engine/plan.ts'
import { raisedBy, withIdentified, type Identified } from '../evidence/raised.ts'
import { weighedOf } from '../evidence/weigh.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { factsOf } from '../record/facts.ts'
import type { ConditionRecord } from '../record/record.ts'
import { interpretationsOf } from './interpretations.ts'
import { joinLookNext } from './look-next.ts'
import { joinRequests } from './requests.ts'
import { identifiedRecord } from './settled-record.ts'
import { Supposed } from './supposed.ts'

export interface FindOccasion extends Occasion {
  /** What of this find has been identified, oldest first. */
  readonly identified?: readonly Identified[]
  /** True works out what each answer of an analysis would change in the plan: for the one find that somebody looks at. */
  readonly answers?: boolean
}

/**
 * The whole plan for one condition record: what the rules say, what the evidence makes of what was seen, and what is worth
 * asking for. Without questions, for queues of thousands, it asks for what the rules ask for and weighs nothing against it.
 */
export function planFind(record: ConditionRecord, knowledge: Knowledge, occasion: FindOccasion): Plan {
  const identified = occasion.identified ?? []
  const known = identifiedRecord(record, identified, knowledge)
  const facts = factsOf(known, knowledge.vocabulary.textWords, occasion.asOf)
  const plan = assessFacts(record.find_number, facts, knowledge, occasion)
  const raised = withIdentified(raisedBy(facts, knowledge), identified)
  const interpretations = interpretationsOf(raised.map(weighedOf))
  if (occasion.questions === false) return { ...plan, interpretations }
  const lookNext = joinLookNext(plan, raised, facts, knowledge).filter(({ fact }) => isRecorded(fact, record))
  if (raised.length === 0) return { ...plan, lookNext }
  const supposed = occasion.answers === true ? new Supposed(known, plan, knowledge, occasion) : null
  return {
    ...plan,
    interpretations,
    requests: joinRequests(plan, raised, facts, knowledge, supposed),
    lookNext,
  }
}

/** A part that is only known by what was identified cannot be looked at: no record has a row for its answers. */
function isRecorded(fact: string, { components }: ConditionRecord): boolean {
  const at = fact.lastIndexOf('.')
  return at < 0 || components.some(({ component }) => component === fact.slice(0, at))
}
