import type { LookNext, Plan } from '../engine/plan.ts'
import { questionsOf, type Asked } from '../evidence/ask.ts'
import type { Raised } from '../evidence/raised.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'

/** More than this at once nobody looks at. */
const most = 5

function asked({ question, component, answers }: Asked, knowledge: Knowledge): LookNext {
  const { asks, tell, why } = knowledge.questions[question]!
  return { fact: `${component}.looked:${question}`, why, wouldSettle: ['surface'], asks, tell, answers }
}

/**
 * What to look at next. What the rules ask decides how the find is kept, what the evidence asks decides what its surface is;
 * both wait on the same pair of eyes, so they take turns, the rules first.
 */
export function joinLookNext(
  rules: Plan['lookNext'],
  raised: readonly Raised[],
  knowledge: Knowledge,
): Plan['lookNext'] {
  const evidence = questionsOf(raised, knowledge)
    .slice(0, most)
    .map((one) => asked(one, knowledge))
  const turns = Array.from({ length: Math.max(rules.length, evidence.length) }, (_, at) => [
    rules[at],
    evidence[at],
  ])
  return turns
    .flat()
    .flatMap((one) => one ?? [])
    .slice(0, most)
}
