import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decide } from '../../lib/engine/decide.ts'
import { match } from '../../lib/engine/match.ts'
import { cellHolds } from '../../lib/knowledge/cell-holds.ts'
import { holds, indexRules } from '../../lib/engine/rule-index.ts'
import type { Decision } from '../../lib/knowledge/knowledge.ts'
import type { Fact } from '../../lib/record/fact.ts'
import { decisionArbitrary, factsArbitrary } from '../arbitrary/decision.ts'

const runs = { numRuns: 1000 }
const outcome = (decision: Decision, facts: Readonly<Record<string, Fact>>) => {
  const index = indexRules(decision)
  const decided = decide(index, (fact) => facts[fact])
  const ids = (rules: readonly number[]) => rules.map((rule) => decision.rules[rule]!.id).sort()
  return {
    taken: decided.taken,
    possible: decided.possible,
    holding: ids(decided.holding),
    open: ids(decided.open),
  }
}

describe('laws of the engine', () => {
  test('masks say what each cell says by itself', () => {
    fc.assert(
      fc.property(decisionArbitrary, factsArbitrary, (decision, facts) => {
        const { certain, possible } = match(indexRules(decision), (fact) => facts[fact])
        decision.rules.forEach((rule, number) => {
          const said = rule.when.map((cell) => cellHolds(cell, facts[cell.fact]))
          expect(holds(certain, number)).toBe(said.every((word) => word === 'yes'))
          expect(holds(possible, number)).toBe(said.every((word) => word !== 'no'))
        })
      }),
      runs,
    )
  })

  test('the order of rules changes nothing', () => {
    fc.assert(
      fc.property(
        decisionArbitrary,
        factsArbitrary,
        fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
        (decision, facts, lots) => {
          const rules = decision.rules
            .map((rule) => ({ rule, lot: lots.next().value }))
            .sort((a, b) => a.lot - b.lot)
            .map(({ rule }) => rule)
          expect(outcome({ ...decision, rules }, facts)).toEqual(outcome(decision, facts))
        },
      ),
      runs,
    )
  })

  test('learning a fact never widens the set of possible answers', () => {
    fc.assert(
      fc.property(decisionArbitrary, factsArbitrary, factsArbitrary, (decision, known, more) => {
        const before = outcome(decision, known).possible
        const after = outcome(decision, { ...more, ...known }).possible
        expect(before).toEqual(expect.arrayContaining([...after]))
      }),
      runs,
    )
  })

  test('a protective decision takes the strictest answer that is still possible', () => {
    fc.assert(
      fc.property(decisionArbitrary, factsArbitrary, (decision, facts) => {
        const { taken, possible } = outcome(decision, facts)
        expect(taken).toBe(decision.answers.find((answer) => possible.includes(answer)) ?? null)
      }),
      runs,
    )
  })

  test('an unknown value leaves every answer possible that not looking leaves, or fewer, and silences no rule that may hold', () => {
    fc.assert(
      fc.property(
        decisionArbitrary,
        factsArbitrary,
        fc.constantFrom('metal', 'state', 'seen'),
        (decision, facts, fact) => {
          const { [fact]: _, ...absent } = facts
          const unknown = {
            ...absent,
            [fact]: { has: ['unknown'], may: 'any', said: 'unknown' } satisfies Fact,
          }
          const plain = {
            ...decision,
            rules: decision.rules
              .filter((rule) =>
                rule.when.every(
                  (cell) => cell.fact !== fact || ('any' in cell && !cell.any.includes('unknown')),
                ),
              )
              .map((rule) => ({ ...rule, overrides: [] })),
          }
          expect(outcome(plain, unknown)).toEqual(outcome(plain, absent))
        },
      ),
      runs,
    )
  })
})
