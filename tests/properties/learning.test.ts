import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  reason,
  reasonAgain,
  touchedBy,
  type Conclusion,
  type Reasoning,
} from '../../lib/engine/reasoning.ts'
import type { Decision } from '../../lib/knowledge/knowledge.ts'
import type { Fact, RecordFacts } from '../../lib/record/fact.ts'
import { factsOf } from '../../lib/record/facts.ts'
import { anyRecord } from '../arbitrary/record.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { today } from '../record-at-hand.ts'
import { law } from './plans.ts'

interface Place {
  readonly part: number | null
  readonly id: string
  readonly fact: Fact
}

const placesOf = ({ find, components }: RecordFacts): readonly Place[] =>
  [
    ...Object.entries(find).map(([id, fact]) => ({ part: null, id, fact })),
    ...components.flatMap(({ facts }, part) =>
      Object.entries(facts).map(([id, fact]) => ({ part, id, fact })),
    ),
  ].filter(({ id }) => id !== 'material')

function without({ find, components }: RecordFacts, gone: readonly Place[]): RecordFacts {
  const left = (facts: Readonly<Record<string, Fact>>, part: number | null) =>
    Object.fromEntries(
      Object.entries(facts).filter(([id]) => !gone.some((place) => place.part === part && place.id === id)),
    )
  return {
    find: left(find, null),
    components: components.map((one, part) => ({ ...one, facts: left(one.facts, part) })),
  }
}

/** Facts of a generated record with some of them taken out, the same with one of those put back, and which one. */
const lesson = fc
  .tuple(anyRecord(), fc.nat(), fc.array(fc.nat(), { maxLength: 12 }))
  .map(([record, pick, others]) => {
    const facts = factsOf(record, knowledge.vocabulary.textWords, today)
    const places = placesOf(facts)
    const learnt = places[pick % places.length]!
    const gone = others.map((one) => places[one % places.length]!).filter((place) => place !== learnt)
    return { before: without(facts, [learnt, ...gone]), after: without(facts, gone), learnt: learnt.id }
  })

const conclusionIn = (reasoning: Reasoning, id: string) => reasoning.conclusions.get(id)!

const takenIn = (reasoning: Reasoning, id: string) => {
  const { find, components, derived } = conclusionIn(reasoning, id)
  return JSON.stringify([
    find?.taken,
    components.map(({ taken }) => taken),
    derived.map(({ taken }) => taken?.has),
  ])
}

/**
 * The decisions that have only learnt: all they read is what was recorded, or narrowed. Where the plan took another answer
 * than before, a decision that stands on the answer taken has not learnt a fact but been told something else.
 */
function onlyLearnt(less: Reasoning, more: Reasoning): ReadonlySet<string> {
  const learnt = new Set<string>()
  const byId = new Map(knowledge.decisions.map((decision) => [decision.id, decision]))
  for (const decision of knowledge.decisions) {
    const read = decision.facts.flatMap((fact) => byId.get(fact) ?? [])
    const stands = read.every(({ id, absent }) =>
      decision.absent === 'silent' || absent === 'silent'
        ? takenIn(less, id) === takenIn(more, id)
        : learnt.has(id),
    )
    if (stands) learnt.add(decision.id)
  }
  return learnt
}

const possibleIn = (conclusion: Conclusion) =>
  (conclusion.find ? [conclusion.find] : conclusion.components).map(({ possible }) => possible)

const givesValue = ({ policy, answers }: Decision) => policy !== 'collect' && answers.length > 0

describe('learning a fact', () => {
  test('never widens the set of possible answers', () => {
    let compared = 0
    law(lesson, ({ before, after }) => {
      const [less, more] = [reason(before, knowledge), reason(after, knowledge)]
      const learnt = onlyLearnt(less, more)
      for (const decision of knowledge.decisions.filter(givesValue)) {
        if (!learnt.has(decision.id)) continue
        compared += 1
        const [wide, narrow] = [
          possibleIn(conclusionIn(less, decision.id)),
          possibleIn(conclusionIn(more, decision.id)),
        ]
        narrow.forEach((answers, part) => {
          const fresh = answers.filter((answer) => !wide[part]!.includes(answer))
          expect({ decision: decision.id, fresh }).toEqual({ decision: decision.id, fresh: [] })
        })
      }
    })
    expect(compared).toBeGreaterThan(10_000)
  })

  test('deciding again only what reads it comes to the same as deciding everything', () => {
    law(lesson, ({ before, after, learnt }) => {
      const again = reasonAgain(
        reason(before, knowledge),
        after,
        learnt,
        touchedBy(learnt, knowledge),
        knowledge,
      ).reasoning
      const whole = reason(after, knowledge)
      for (const { id } of knowledge.decisions) {
        const decided = ({ find, components }: Conclusion) => JSON.stringify([find, components])
        expect(decided(conclusionIn(again, id))).toBe(decided(conclusionIn(whole, id)))
      }
    })
  })
})
