import { questionsOf, type Asked } from '../../lib/evidence/ask.ts'
import type { EvidenceBase } from '../../lib/evidence/base.ts'
import { raisedBy } from '../../lib/evidence/raised.ts'
import type { RecordFacts } from '../../lib/record/fact.ts'

/** Every question to the eye that a record leaves open. */
export const askOf = (facts: RecordFacts, base: EvidenceBase): readonly Asked[] =>
  questionsOf(raisedBy(facts, base), base)
