import type { Occasion } from '../engine/assess.ts'
import type { Plan } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { ConditionRecord } from '../record/record.ts'
import { lookNextFor } from './look-next.ts'
import { planFind } from './plan-find.ts'

/** A bag on the table: records with the plan of each, planned in the browser as they are typed. */
export interface Planned {
  readonly record: ConditionRecord
  readonly plan: Plan
}

/**
 * Plans records, and each of them once: a record that is still the same object keeps its plan. Questions are left out;
 * `questionsFor` asks them for the one find that somebody looks at.
 */
export class BagPlanner {
  private plans = new WeakMap<ConditionRecord, Planned>()
  private readonly knowledge: Knowledge
  private readonly occasion: Occasion

  constructor(knowledge: Knowledge, occasion: Occasion) {
    this.knowledge = knowledge
    this.occasion = { ...occasion, questions: false }
  }

  plan(record: ConditionRecord): Planned {
    const known = this.plans.get(record)
    if (known !== undefined) return known
    const planned = { record, plan: planFind(record, this.knowledge, this.occasion) }
    this.plans.set(record, planned)
    return planned
  }

  /** What to look at next for one find, most telling first. */
  questionsFor(record: ConditionRecord): Plan['lookNext'] {
    return lookNextFor(record, this.knowledge, this.occasion)
  }
}
