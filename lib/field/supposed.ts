import { assess, type Occasion } from '../engine/assess.ts'
import type { Plan, PlanChange } from '../engine/plan.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { ConditionRecord } from '../record/record.ts'
import { planChanges } from './plan-changes.ts'
import { settledRecord } from './settled-record.ts'

/** What of a find's plan hangs on an explanation: the plan made again as if it were known to be true. */
export class Supposed {
  private readonly known = new Map<string, readonly PlanChange[]>()
  private readonly record: ConditionRecord
  private readonly plan: Plan
  private readonly knowledge: Knowledge
  private readonly occasion: Occasion

  constructor(record: ConditionRecord, plan: Plan, knowledge: Knowledge, occasion: Occasion) {
    this.record = record
    this.plan = plan
    this.knowledge = knowledge
    this.occasion = { ...occasion, questions: false }
  }

  /** What the plan would say that it does not say now; nothing where the record would not state anything new. */
  changes(component: string, matter: string, interpretation: string): readonly PlanChange[] {
    const settled = this.knowledge.matters[matter]?.rivals.find(({ id }) => id === interpretation)?.settled
    if (!settled) return []
    const key = `${component} ${JSON.stringify(settled)}`
    const known = this.known.get(key)
    if (known) return known
    const record = settledRecord(this.record, component, settled)
    const changes = planChanges(this.plan, assess(record, this.knowledge, this.occasion))
    this.known.set(key, changes)
    return changes
  }
}
