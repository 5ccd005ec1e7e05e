import type { Finding } from '../knowledge/flaw.ts'
import { standing, type Base } from './base.ts'

/** Every answer a decision promises is given by some rule. */
export function answersNeverGiven({ knowledge }: Base): Finding[] {
  return knowledge.decisions
    .filter(({ policy }) => policy !== 'collect')
    .flatMap((decision) => {
      const given = new Set(
        standing(decision).flatMap(({ then }) => (then.kind === 'answer' ? [then.answer] : [])),
      )
      return decision.answers
        .filter((answer) => !given.has(answer))
        .map((answer): Finding => ({
          code: 'answer-never-given',
          severity: 'error',
          at: `decision ${decision.id}`,
          about: { decision: decision.id, answer },
        }))
    })
}
