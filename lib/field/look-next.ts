import { assessFacts } from '../engine/assess.ts'
import type { LookNext, Plan } from '../engine/plan.ts'
import { raisedBy, withIdentified, type Raised } from '../evidence/raised.ts'
import { recordDomains } from '../knowledge/domains.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { RecordFacts } from '../record/fact.ts'
import { factsOf } from '../record/facts.ts'
import type { ConditionRecord } from '../record/record.ts'
import { looksThatChange, type Look } from './look-changes.ts'
import { listsUnread, plausible } from './look-lists.ts'
import { looksThatReorder } from './look-orders.ts'
import type { FindOccasion } from './plan-find.ts'

/** More than this at once nobody looks at. */
const most = 5

function asked({ what, component, answers, settles }: Look, knowledge: Knowledge): LookNext {
  if (what.startsWith('looked:')) {
    const { asks, tell, why, answers: all } = knowledge.questions[what.slice('looked:'.length)]!
    const ids = all.map(({ id }) => id)
    return { fact: `${component}.${what}`, why, wouldSettle: settles, asks, tell, answers: ids }
  }
  const { asks, tell, why, means, values } = knowledge.vocabulary.fields[what]!
  const fact = recordDomains[what]!.each === 'find' ? what : `${component}.${what}`
  const ids = values.flatMap(({ id }) => (answers.includes(id) ? id : []))
  return { fact, why: why ?? means, wouldSettle: settles, asks, tell, answers: ids }
}

const joined = (one: readonly string[], more: readonly string[]) => [...new Set([...one, ...more])]

/** What the rules and the evidence both ask stands once, with all that it would settle. */
function each(questions: readonly LookNext[]): readonly LookNext[] {
  const found = new Map<string, LookNext>()
  for (const one of questions) {
    const { wouldSettle, answers } = found.get(one.fact) ?? one
    found.set(one.fact, {
      ...(found.get(one.fact) ?? one),
      wouldSettle: joined(wouldSettle, one.wouldSettle),
      answers: joined(answers, one.answers),
    })
  }
  return [...found.values()]
}

/**
 * What to look at next. What the rules ask decides whether anybody must be called, how a find is kept and how soon, so it
 * stands first; what the evidence asks decides what a surface is. Both wait on the same pair of eyes, so they take turns.
 * A list of what may be seen that nobody went through comes before closer looks, and whatever would only change the order
 * of what is asked of a laboratory comes when nothing else is left. Under a stop nobody is sent to look closer.
 */
export function joinLookNext(
  plan: Pick<Plan, 'lookNext' | 'cautions'>,
  raised: readonly Raised[],
  facts: RecordFacts,
  knowledge: Knowledge,
): Plan['lookNext'] {
  const rules = plan.lookNext.map((one) => plausible(one, facts, knowledge))
  if (plan.cautions.some(({ level }) => level === 'stop')) return rules.slice(0, most)
  const looks = [...listsUnread(facts, knowledge), ...looksThatChange(raised, knowledge)]
  const left = rules.length + looks.length > 0 ? looks : looksThatReorder(raised, facts, knowledge)
  const evidence = left.map((one) => asked(one, knowledge))
  const turns = Array.from({ length: Math.max(rules.length, evidence.length) }, (_, at) => [
    rules[at],
    evidence[at],
  ])
  return each(turns.flat().flatMap((one) => one ?? [])).slice(0, most)
}

/** The questions of one find alone, without the rest of its plan. */
export function lookNextFor(
  record: ConditionRecord,
  knowledge: Knowledge,
  occasion: FindOccasion,
): Plan['lookNext'] {
  const facts = factsOf(record, knowledge.vocabulary.textWords, occasion.asOf)
  const plan = assessFacts(record.find_number, facts, knowledge, { ...occasion, questions: true })
  const raised = withIdentified(raisedBy(facts, knowledge), occasion.identified ?? [])
  return joinLookNext(plan, raised, facts, knowledge)
}
