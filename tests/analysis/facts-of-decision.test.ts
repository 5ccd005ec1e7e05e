import { expect, test } from 'vitest'
import { factsOfDecision } from '../../lib/analysis/facts-of-decision.ts'
import { found } from '../knowledge/small-content.ts'

test('a fact that is listed and not read speaks', () => {
  const listed = { 'decisions/packing.yaml': [['facts: [activity]', 'facts: [activity, core]']] } as const
  expect(found(factsOfDecision, listed)).toEqual([
    { code: 'fact-unread', about: { decision: 'packing', fact: 'core' } },
  ])
  expect(found(factsOfDecision)).toEqual([])
})

test('a fact that is read and not listed speaks, in rules and in what is not covered', () => {
  const read = {
    'decisions/packing.yaml': [
      ['when: { activity: [active] }', 'when: { activity: [active], core: [solid] }'],
    ],
  } as const
  expect(found(factsOfDecision, read)).toEqual([
    { code: 'fact-undeclared', about: { decision: 'packing', rule: 'packing/dry', fact: 'core' } },
  ])
  const unlisted = {
    'decisions/activity.yaml': [['- when: { core: [none] }', '- when: { fragility: [sound] }']],
  } as const
  expect(found(factsOfDecision, unlisted)).toEqual([
    { code: 'fact-undeclared', about: { decision: 'activity', rule: 'not-covered', fact: 'fragility' } },
  ])
})

const reading = (facts: readonly string[]) =>
  ({
    'decisions/packing.yaml': [
      ['facts: [activity]', `facts: [activity, ${facts.join(', ')}]`],
      [
        'when: { activity: [active] }',
        `when: { activity: [active], ${facts.map((fact) => `${fact}: [unknown]`).join(', ')} }`,
      ],
    ],
  }) as const

test('six facts are the most', () => {
  const five = ['core', 'role', 'seen', 'extent', 'evidence']
  expect(found(factsOfDecision, reading(five))).toEqual([])
  expect(found(factsOfDecision, reading([...five, 'fragility']))).toEqual([
    { code: 'too-many-facts', about: { decision: 'packing', count: 7, most: 6 } },
  ])
})
