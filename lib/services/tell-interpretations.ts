import type { IsoDate } from '../base/calendar.ts'
import type { Interpretation } from '../engine/plan.ts'
import { weigh } from '../evidence/weigh.ts'
import { interpretationsOf } from '../field/interpretations.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { factsOf } from '../record/facts.ts'
import type { ConditionRecord } from '../record/record.ts'

/** What the things seen on one find may be, as its plan has it. */
export function tellInterpretations(
  record: ConditionRecord,
  knowledge: Knowledge,
  asOf: IsoDate,
): readonly Interpretation[] {
  return interpretationsOf(weigh(factsOf(record, knowledge.vocabulary.textWords, asOf), knowledge))
}
