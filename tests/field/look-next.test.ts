import { describe, expect, test } from 'vitest'
import { jointFor } from '../../lib/evidence/joint.ts'
import { standOf } from '../../lib/evidence/meanings.ts'
import { raisedBy } from '../../lib/evidence/raised.ts'
import { lookNextFor } from '../../lib/field/look-next.ts'
import { planFind } from '../../lib/field/plan-find.ts'
import { factsOf } from '../../lib/record/facts.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { record, today } from '../record-at-hand.ts'
import { askableFields, couldNotTell, withAnswer } from '../simulated/guided-facts.ts'
import { drawnFind } from '../simulated/guided-find.ts'

const ask = (one: ConditionRecord) => lookNextFor(one, knowledge, { asOf: today })
const names = (one: ConditionRecord) => ask(one).map(({ fact }) => fact)

const skin = record(
  { object: 'mount', burial: ['damp'], state_now: 'dry', done_already: ['none'], packed_in: ['with-gel'] },
  { material: 'bronze', seen: ['compact-green'], evidence: ['white-metal-sheen'] },
)

/** The record after every question was answered the same way, each as it came; and what was asked. */
function askedOut(one: ConditionRecord, answer: (fact: string) => unknown) {
  const asked: string[] = []
  for (;;) {
    const [fact] = names(one)
    if (fact === undefined) return asked
    // A question that returns would never end.
    if (asked.includes(fact)) return [...asked, fact]
    asked.push(fact)
    one = withAnswer(one, fact, answer(fact))
  }
}

describe('what to look at next', () => {
  test('are five things at most, those of the rules and of the evidence in turn', () => {
    const asked = names(record({ object: 'mount' }, { material: 'bronze', evidence: ['white-metal-sheen'] }))
    expect(asked).toHaveLength(5)
    expect(new Set(asked).size).toBe(5)
    expect(asked[0]).not.toMatch(/looked:/)
    expect(asked.some((fact) => fact.startsWith('body.looked:'))).toBe(true)
  })

  test('stands the same in the whole plan and alone', () => {
    expect(planFind(skin, knowledge, { asOf: today }).lookNext).toEqual(ask(skin))
    expect(planFind(skin, knowledge, { asOf: today, questions: false }).lookNext).toEqual([])
  })

  test('is a list of what may be seen as long as nobody went through it, and never again', () => {
    const bare = record({}, { material: 'iron', seen: ['orange-brown-crust'] })
    expect(names(bare)).toContain('body.evidence')
    for (const answer of ['none', 'unknown'] as const) {
      const gone = record({}, { material: 'iron', seen: ['orange-brown-crust'], evidence: [answer] })
      expect(names(gone)).not.toContain('body.evidence')
    }
  })

  test('offers of a list only what such a part can show', () => {
    const iron = ask(record({}, { material: 'iron' })).find(({ fact }) => fact === 'body.seen')!
    expect(iron.answers).toContain('orange-droplets')
    const lead = ask(record({}, { material: 'lead', evidence: ['none'] })).find(
      ({ fact }) => fact === 'body.seen',
    )!
    expect(lead.answers).not.toContain('orange-droplets')
  })

  test.each(['none', 'unknown'])('never returns to what was answered with %s', (said) => {
    const asked = askedOut(skin, (fact) => {
      const looked = /looked:(.*)/.exec(fact)?.[1]
      return looked === undefined ? couldNotTell(fact) : `${looked}:${said}`
    })
    expect(asked.some((fact) => fact.includes('looked:'))).toBe(true)
    expect(new Set(asked).size).toBe(asked.length)
  })

  test('under a stop sends nobody to look closer', () => {
    const shell = record(
      { hazards_noticed: ['ammunition-like'] },
      { material: 'iron', seen: ['orange-brown-crust'] },
    )
    expect(names(shell).filter((fact) => fact.includes('looked:') || fact === 'body.evidence')).toEqual([])
  })
})

describe('a closer look over many finds', () => {
  const askable = askableFields(knowledge)
  const drawn = Array.from({ length: 40 }, (_, at) => drawnFind(at + 500, knowledge, askable, today).record)
  const unanswered = (one: ConditionRecord): ConditionRecord => ({
    ...one,
    components: one.components.map((part) => ({ ...part, looked: [] })),
  })

  const stands = (one: ConditionRecord) =>
    raisedBy(factsOf(one, knowledge.vocabulary.textWords, today), knowledge)
      .map(({ matter, lookup }) => {
        const { leader, standing } = standOf(jointFor(matter, knowledge, lookup))
        return `${matter.id} ${leader} ${standing}`
      })
      .join()

  test('is asked only where some answer changes who leads or how far a matter is decided', () => {
    let closer = 0
    for (const one of drawn.map(unanswered)) {
      const now = stands(one)
      for (const { fact, wouldSettle } of ask(one)) {
        if (!wouldSettle.includes('surface') || !fact.includes('looked:')) continue
        closer += 1
        const question = fact.split('looked:')[1]!
        const answers = [...knowledge.questions[question]!.answers.map(({ id }) => id), 'none']
        const moved = answers.filter(
          (answer) => stands(withAnswer(one, fact, `${question}:${answer}`)) !== now,
        )
        expect(moved, `${one.find_number} ${fact}`).not.toEqual([])
      }
    }
    expect(closer).toBeGreaterThan(40)
  })
})
