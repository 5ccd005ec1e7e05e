import type { Finding } from '../knowledge/flaw.ts'
import type { Fills } from '../knowledge/knowledge.ts'
import type { Base } from './base.ts'

/** Answers that the plan's form knows by name, strictest first. */
const fixed: Partial<Readonly<Record<Fills, readonly string[]>>> = {
  urgency: ['now', 'hours', 'days', 'weeks', 'planned', 'routine'],
  'storage.keep': ['wet', 'as-found', 'dry'],
  'storage.light': ['dark', 'ordinary'],
}

/** A decision whose answers the plan prints by name has just those, strictest first. */
export function fixedAnswers({ knowledge }: Base): Finding[] {
  return knowledge.decisions.flatMap((decision): Finding[] => {
    const wants = decision.fills === null ? undefined : fixed[decision.fills]
    if (wants === undefined || wants.join() === decision.answers.join()) return []
    const about = { decision: decision.id, wants, found: decision.answers }
    return [{ code: 'fixed-answers', severity: 'error', at: `decision ${decision.id}`, about }]
  })
}
