import fc from 'fast-check'
import { assess } from '../../lib/engine/assess.ts'
import type { Plan } from '../../lib/engine/plan.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { today } from '../record-at-hand.ts'

/** The plan for a generated record; questions are left out where a law does not ask about them. */
export const planned = (record: ConditionRecord, by: Knowledge = knowledge): Plan =>
  assess(record, by, { asOf: today, questions: false })

export const runs = { numRuns: 1000 }

/** Holds a law against generated records. */
export function law<Of>(
  of: fc.Arbitrary<Of>,
  holds: (one: Of) => void,
  more: fc.Parameters<[Of]> = runs,
): void {
  const property = fc.property(of, (one) => {
    holds(one)
  })
  fc.assert(property, more)
}
