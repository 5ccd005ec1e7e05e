import type { Finding } from '../knowledge/flaw.ts'
import type { Decision } from '../knowledge/knowledge.ts'
import type { Base } from './base.ts'
import { ruleName, standing } from './base.ts'

const mostFacts = 6

/** A decision reads six facts at most, and lists exactly those that its cells read. */
export function factsOfDecision({ knowledge }: Base): Finding[] {
  return knowledge.decisions.flatMap((decision) => [
    ...tooMany(decision),
    ...unread(decision),
    ...undeclared(decision),
  ])
}

function tooMany({ id, facts }: Decision): Finding[] {
  if (facts.length <= mostFacts) return []
  const about = { decision: id, count: facts.length, most: mostFacts }
  return [{ code: 'too-many-facts', severity: 'error', at: `decision ${id}`, about }]
}

function unread(decision: Decision): Finding[] {
  const cells = [...standing(decision), ...decision.notCovered].flatMap(({ when }) =>
    when.map(({ fact }) => fact),
  )
  const read = new Set([...cells, ...decision.calledForBy])
  return decision.facts
    .filter((fact) => !read.has(fact))
    .map((fact) => ({
      code: 'fact-unread',
      severity: 'error',
      at: `decision ${decision.id}`,
      about: { decision: decision.id, fact },
    }))
}

function undeclared(decision: Decision): Finding[] {
  const called = decision.calledForBy
    .filter((fact) => !decision.facts.includes(fact))
    .map((fact): Finding => ({
      code: 'fact-undeclared',
      severity: 'error',
      at: `decision ${decision.id}`,
      about: { decision: decision.id, rule: 'called-for-by', fact },
    }))
  const byRules = standing(decision).flatMap((rule) =>
    rule.when
      .filter(({ fact }) => !decision.facts.includes(fact))
      .map(({ fact }): Finding => {
        const name = ruleName(decision, rule)
        return {
          code: 'fact-undeclared',
          severity: 'error',
          at: `rule ${name}`,
          about: { decision: decision.id, rule: name, fact },
        }
      }),
  )
  const byGaps = decision.notCovered.flatMap(({ when }) =>
    when
      .filter(({ fact }) => !decision.facts.includes(fact))
      .map(({ fact }): Finding => ({
        code: 'fact-undeclared',
        severity: 'error',
        at: `decision ${decision.id}`,
        about: { decision: decision.id, rule: 'not-covered', fact },
      })),
  )
  return [...called, ...byRules, ...byGaps]
}
