import { expect, test } from 'vitest'
import { decide } from '../../lib/engine/decide.ts'
import { reason } from '../../lib/engine/reasoning.ts'
import { indexRules } from '../../lib/engine/rule-index.ts'
import type { Cell, Decision, Effect, Knowledge, Rule } from '../../lib/knowledge/knowledge.ts'
import { stated } from '../../lib/record/fact.ts'

const rule = (id: string, when: readonly Cell[], then: Effect, overrides: readonly string[] = []): Rule => ({
  id,
  title: id,
  when,
  then,
  overrides,
  strength: 'should',
  certainty: 'supported',
  level: null,
  call: null,
  order: 0,
  text: id,
  because: id,
  caution: null,
  sources: [],
  figures: [],
  contested: null,
  retired: null,
  examples: [],
})
const answer = (word: string): Effect => ({ kind: 'answer', answer: word })
const base = { each: 'find', policy: 'strictest', fills: null, calledForBy: [], notCovered: [] } as const

const tested: Decision = {
  ...base,
  id: 'tested',
  asks: '',
  absent: 'silent',
  answers: ['salt', 'nothing-said'],
  facts: ['test'],
  rules: [
    rule('nothing', [], answer('nothing-said')),
    rule('positive', [{ fact: 'test', any: ['positive'] }], answer('salt')),
  ],
}

test('in a silent decision an exception that nobody recorded silences nothing', () => {
  const decision: Decision = {
    ...base,
    id: 'keep',
    asks: '',
    absent: 'silent',
    answers: ['wet', 'dry'],
    facts: ['state', 'flooded'],
    rules: [
      rule('found-wet', [{ fact: 'state', any: ['wet'] }], answer('wet')),
      rule('flooded', [{ fact: 'flooded', any: ['yes'] }], answer('dry'), ['found-wet']),
    ],
  }
  const index = indexRules(decision)
  const facts = (more: Record<string, ReturnType<typeof stated>>) => (fact: string) =>
    ({ state: stated('wet'), ...more })[fact]
  expect(decide(index, facts({}))).toMatchObject({ taken: 'wet', possible: ['wet', 'dry'], holding: [0] })
  expect(decide(index, facts({ flooded: stated('yes') }))).toMatchObject({
    taken: 'dry',
    possible: ['dry'],
    holding: [1],
  })
})

test('a protective decision reads a silent one as it was taken: a test that nobody made says nothing', () => {
  const activity: Decision = {
    ...base,
    id: 'activity',
    asks: '',
    absent: 'protective',
    answers: ['suspected', 'quiet'],
    facts: ['tested'],
    rules: [
      rule('salt', [{ fact: 'tested', any: ['salt'] }], answer('suspected')),
      rule('else', [], answer('quiet')),
    ],
  }
  const knowledge = { decisions: [tested, activity] } as unknown as Knowledge
  const taken = (find: Record<string, ReturnType<typeof stated>>) =>
    reason({ find, components: [] }, knowledge).conclusions.get('activity')!.find!.taken
  expect(taken({})).toBe('quiet')
  expect(taken({ test: stated('positive') })).toBe('suspected')
})
