import type { IsoDate } from '../../lib/base/calendar.ts'
import { assessFacts } from '../../lib/engine/assess.ts'
import type { Plan } from '../../lib/engine/plan.ts'
import { probabilities } from '../../lib/evidence/joint.ts'
import { raisedBy, type Raised } from '../../lib/evidence/raised.ts'
import { lookNextFor } from '../../lib/field/look-next.ts'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { factsOf } from '../../lib/record/facts.ts'
import type { FieldName } from '../../lib/record/fields.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { answeredFacts, answerIn, couldNotTell, onlyKept, withAnswer } from './guided-facts.ts'

/** Somebody who knows little of a find and is led by the questions, held against all that could be known of it. */
export interface Guided {
  /** Facts of the full record, those at hand from the beginning among them. */
  readonly full: number
  readonly atHand: number
  /** Facts in hand when the plan became that of the full record, to stay so; null where it never did. */
  readonly reachedAt: number | null
  /** Facts in hand when nothing more was asked. */
  readonly stoppedAt: number
  /** Questions that the full record has no answer to. */
  readonly inVain: number
  /** What of the plan still differed when nothing more was asked. */
  readonly differs: readonly string[]
  /** Time of each look for the next question [ms]. */
  readonly milliseconds: readonly number[]
  readonly asked: readonly string[]
}

type Pressing = Readonly<Record<'band' | 'keep' | 'urgency' | 'stops' | 'objections' | 'leaders', string>>

const leaderOf = ({ joint, settled }: Raised): string => {
  if (settled !== null) return settled
  const probable = probabilities(joint.weights, joint.tables.rivals.length)
  return joint.tables.rivals[probable.indexOf(Math.max(...probable))]!
}

const sorted = (lines: readonly string[]) => [...new Set(lines)].toSorted().join(' ')

function pressing(record: ConditionRecord, knowledge: Knowledge, asOf: IsoDate): Pressing {
  const facts = factsOf(record, knowledge.vocabulary.textWords, asOf)
  const plan: Plan = assessFacts(record.find_number, facts, knowledge, { asOf, questions: false })
  const { rhPercent, keep } = plan.storage
  const stopped = plan.cautions.some(({ level }) => level === 'stop')
  return {
    band: keep === 'wet' ? '' : JSON.stringify(rhPercent),
    keep,
    urgency: plan.urgency,
    stops: sorted(plan.cautions.filter(({ level }) => level === 'stop').map(({ code }) => code)),
    objections: sorted(plan.objections.map(({ code }) => code)),
    // Under a stop nobody is sent to look closer: there is no plan for the surface of what must not be touched.
    leaders: stopped
      ? ''
      : sorted(raisedBy(facts, knowledge).map((one) => `${one.component} ${one.matter.id} ${leaderOf(one)}`)),
  }
}

/** `kept`: the fields at hand from the beginning, beside what no question can ask for. */
export function guide(
  full: ConditionRecord,
  kept: readonly FieldName[],
  askable: readonly FieldName[],
  knowledge: Knowledge,
  asOf: IsoDate,
): Guided {
  const wanted = pressing(full, knowledge, asOf)
  const differing = (record: ConditionRecord) => {
    const now = pressing(record, knowledge, asOf)
    return (Object.keys(wanted) as (keyof Pressing)[]).filter((part) => now[part] !== wanted[part])
  }
  let record = onlyKept(full, askable, kept)
  const count = () => answeredFacts(record, askable).length
  const atHand = count()
  const asked: string[] = []
  const inVain = new Set<string>()
  const milliseconds: number[] = []
  let differs = differing(record)
  let reachedAt = differs.length === 0 ? atHand : null
  for (;;) {
    const start = performance.now()
    const questions = lookNextFor(record, knowledge, { asOf })
    milliseconds.push(performance.now() - start)
    const next = questions[0]
    if (next === undefined) break
    asked.push(next.fact)
    const answer = answerIn(full, next.fact)
    if (answer === undefined) {
      inVain.add(next.fact)
      record = withAnswer(record, next.fact, couldNotTell(next.fact))
    } else {
      record = withAnswer(record, next.fact, answer)
      differs = differing(record)
      reachedAt = differs.length === 0 ? (reachedAt ?? count()) : null
    }
  }
  return {
    full: answeredFacts(full, askable).length,
    atHand,
    reachedAt,
    stoppedAt: count(),
    inVain: inVain.size,
    differs,
    milliseconds,
    asked,
  }
}
