import fc from 'fast-check'
import type { Cell, Decision, Rule } from '../../lib/knowledge/knowledge.ts'
import { couldNotTell, measured, stated, type Fact } from '../../lib/record/fact.ts'

/** Small invented decisions over two single-valued facts, one list and one number: laws of the engine, not of the content. */
export const domains = {
  metal: ['iron', 'lead', 'silver'],
  state: ['wet', 'dry'],
  seen: ['flakes', 'powder', 'none-of-it'],
} as const
export const answers = ['first', 'second', 'third'] as const

const set = (values: readonly string[]) => fc.subarray([...values, 'unknown'], { minLength: 1 })

function cell(fact: keyof typeof domains): fc.Arbitrary<Cell> {
  return fc.oneof(
    set(domains[fact]).map((any) => ({ fact, any })),
    set(domains[fact]).map((none) => ({ fact, none })),
  )
}

const interval: fc.Arbitrary<Cell> = fc
  .tuple(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 1, max: 50 }))
  .map(([from, width]) => ({ fact: 'humidity', interval: { from, below: from + width, figures: [] } }))

const cells = fc
  .tuple(fc.option(cell('metal')), fc.option(cell('state')), fc.option(cell('seen')), fc.option(interval))
  .map((all) => all.filter((one) => one !== null))

export function rule(id: string, when: readonly Cell[], more: Partial<Rule> = {}): Rule {
  return {
    id,
    title: id,
    when,
    then: { kind: 'answer', answer: 'first' },
    overrides: [],
    strength: 'should',
    certainty: 'supported',
    level: null,
    call: null,
    order: 0,
    text: id,
    because: id,
    caution: null,
    sources: [{ work: 'house-rule', place: null, known: 'common-practice', says: 'supports' }],
    figures: [],
    contested: null,
    retired: null,
    examples: [],
    ...more,
  }
}

export function decision(rules: readonly Rule[], more: Partial<Decision> = {}): Decision {
  return {
    id: 'invented',
    asks: '?',
    each: 'component',
    policy: 'strictest',
    fills: null,
    answers,
    absent: 'protective',
    calledForBy: [],
    facts: ['metal', 'state', 'seen', 'humidity'],
    rules,
    notCovered: [],
    ...more,
  }
}

/** Decisions of up to forty rules, so that masks need more than one word; some rules silence an earlier one. */
export const decisionArbitrary: fc.Arbitrary<Decision> = fc
  .array(fc.tuple(cells, fc.constantFrom(...answers), fc.option(fc.nat({ max: 39 }), { freq: 6 })), {
    minLength: 1,
    maxLength: 40,
  })
  .map((drawn) =>
    decision(
      drawn.map(([when, answer, silenced], at) =>
        rule(`rule-${at}`, when, {
          then: { kind: 'answer', answer },
          overrides: silenced !== null && silenced < at ? [`rule-${silenced}`] : [],
        }),
      ),
    ),
  )

const one = (fact: 'metal' | 'state') =>
  fc.constantFrom(...domains[fact].map((value) => stated(value)), couldNotTell)
const list = fc.oneof(
  fc.subarray([...domains.seen]).map((values) => stated(...values)),
  fc.constant(couldNotTell),
)

/** Facts with any of them absent. */
export const factsArbitrary: fc.Arbitrary<Readonly<Record<string, Fact>>> = fc.record(
  { metal: one('metal'), state: one('state'), seen: list, humidity: fc.nat({ max: 120 }).map(measured) },
  { requiredKeys: [] },
)
