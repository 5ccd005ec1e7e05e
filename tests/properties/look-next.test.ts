import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { assessFacts } from '../../lib/engine/assess.ts'
import type { Plan } from '../../lib/engine/plan.ts'
import { recordDomains } from '../../lib/knowledge/domains.ts'
import { stated, type Fact, type RecordFacts } from '../../lib/record/fact.ts'
import { factsOf } from '../../lib/record/facts.ts'
import { anyRecord, recordArbitrary } from '../arbitrary/record.ts'
import { plainWords } from '../arbitrary/text.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { today } from '../record-at-hand.ts'
import { stopsOf } from './statements.ts'
import { law } from './plans.ts'

const lookable = Object.values(knowledge.vocabulary.fields).filter(
  (words) => words.lookable && words.values.length > 0,
)

const planOf = (facts: RecordFacts, questions = false): Plan =>
  assessFacts('TW-1', facts, knowledge, { asOf: today, questions })

const asked = (facts: RecordFacts): readonly string[] => planOf(facts, true).lookNext.map(({ fact }) => fact)

/** A fact a person can look for: `burial`, or `pin.seen` of a part. */
interface Sought {
  readonly name: string
  readonly part: number | null
  readonly id: string
}

function soughtIn({ components }: RecordFacts): readonly Sought[] {
  return lookable.flatMap(({ id }): readonly Sought[] => {
    if (recordDomains[id]!.each === 'find') return [{ name: id, part: null, id }]
    return components.map(({ name }, part) => ({ name: `${name}.${id}`, part, id }))
  })
}

const factIn = (facts: RecordFacts, { part, id }: Sought): Fact | undefined =>
  (part === null ? facts.find : facts.components[part]!.facts)[id]

function withFact(facts: RecordFacts, { part, id }: Sought, fact: Fact | undefined): RecordFacts {
  const put = (own: Readonly<Record<string, Fact>>): Record<string, Fact> => {
    const { [id]: _, ...rest } = own
    return fact === undefined ? rest : { ...rest, [id]: fact }
  }
  if (part === null) return { ...facts, find: put(facts.find) }
  return {
    ...facts,
    components: facts.components.map((one, at) => (at === part ? { ...one, facts: put(one.facts) } : one)),
  }
}

/** What of a plan a question must be able to move, as one word to compare. */
const pressing = (plan: Plan): string =>
  JSON.stringify([
    plan.storage.rhPercent,
    plan.storage.keep,
    plan.urgency,
    [...stopsOf(plan)].toSorted(),
    plan.objections.map(({ rule }) => rule).toSorted(),
  ])

/** Whether any answer to the question moves what presses, tried by planning the whole record anew. */
function moves(facts: RecordFacts, sought: Sought): boolean {
  const before = pressing(planOf(facts))
  const { values } = knowledge.vocabulary.fields[sought.id]!
  const domain = recordDomains[sought.id]!
  const many = domain.kind === 'values' && domain.many
  return [...(many ? [stated()] : []), ...values.map(({ id }) => stated(id))].some(
    (answer) => pressing(planOf(withFact(facts, sought, answer))) !== before,
  )
}

const factsOfRecord = (record: Parameters<typeof factsOf>[0]) =>
  factsOf(record, knowledge.vocabulary.textWords, today)

const nearlyFull = recordArbitrary({ words: plainWords, without: ['hazards_noticed'], filled: 9 }).map(
  factsOfRecord,
)

/** Facts in which nothing is left to look for: what was not recorded is looked at now, and no hazard is found. */
const full = fc.tuple(nearlyFull, fc.nat()).map(([facts, lot]) =>
  soughtIn(facts)
    .filter((sought) => factIn(facts, sought) === undefined)
    .reduce((filled, sought, at) => {
      const { values } = knowledge.vocabulary.fields[sought.id]!
      const found =
        sought.id === 'hazards_noticed' ? stated() : stated(values[(lot + at) % values.length]!.id)
      return withFact(filled, sought, found)
    }, facts),
)

/** The same with a few facts taken out again. */
const lacking = fc.tuple(full, fc.array(fc.nat(), { minLength: 3, maxLength: 6 })).map(([facts, picks]) => {
  const told = soughtIn(facts).filter(({ id }) => id !== 'material')
  const gone = [...new Set(picks.map((pick) => told[pick % told.length]!))]
  const partly = gone.reduce((left, sought) => withFact(left, sought, undefined), facts)
  return { facts, gone, partly }
})

describe('what to look at next', () => {
  test('the question that came first, its answer taken away again, is back among the first three', () => {
    let met = 0
    law(
      lacking,
      ({ facts, gone, partly }) => {
        const first = gone.find(({ name }) => name === asked(partly)[0])
        if (!first) return
        const without = withFact(facts, first, undefined)
        // All else being known, what was asked first may settle nothing any more.
        const back = moves(without, first)
        met += Number(back)
        expect(asked(without).slice(0, 3).includes(first.name)).toBe(back)
      },
      { numRuns: 200 },
    )
    expect(met).toBeGreaterThan(100)
  })

  test('a question is asked only where an answer would change the plan', () => {
    law(
      anyRecord().map(factsOfRecord),
      (facts) => {
        const sought = soughtIn(facts)
        for (const name of asked(facts)) {
          const question = sought.find((one) => one.name === name)!
          expect({ name, moves: moves(facts, question) }).toEqual({ name, moves: true })
        }
      },
      { numRuns: 100 },
    )
  })

  test('with fewer than five questions, nothing else that one look tells would change the plan', () => {
    law(
      lacking,
      ({ gone, partly }) => {
        const names = asked(partly)
        if (names.length >= 5) return
        const rest = gone.filter(({ name }) => !names.includes(name))
        expect(rest.filter((sought) => moves(partly, sought)).map(({ name }) => name)).toEqual([])
      },
      { numRuns: 60 },
    )
  })
})
