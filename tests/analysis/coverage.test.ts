import { expect, test } from 'vitest'
import { gaps } from '../../lib/analysis/gaps.ts'
import { uncovered } from '../../lib/analysis/uncovered.ts'
import { found } from '../knowledge/small-content.ts'

const activity = 'decisions/activity.yaml'

test('a base without gaps is silent', () => {
  expect(found(gaps)).toEqual([])
})

test('a stretch of numbers that no rule takes speaks, to the point', () => {
  const above = {
    [activity]: [
      [
        'when: { stored_rh_percent: { above: damp-limit } }',
        'when: { stored_rh_percent: { above: remembered-ceiling } }',
      ],
      ['{ to: damp-limit }', '{ below: remembered-ceiling }'],
    ],
  } as const
  expect(found(gaps, above)).toEqual([
    {
      code: 'gap',
      about: {
        decision: 'activity',
        facts: [
          ['core', 'solid | partial'],
          ['stored_rh_percent', '45'],
        ],
        more: 0,
      },
    },
  ])
  const closed = {
    [activity]: [
      [
        'when: { stored_rh_percent: { above: damp-limit } }',
        'when: { stored_rh_percent: { from: remembered-ceiling } }',
      ],
      ['{ to: damp-limit }', '{ below: remembered-ceiling }'],
    ],
  } as const
  expect(found(gaps, closed)).toEqual([])
})

test('a value left out speaks unless it is said not to be covered', () => {
  const partial = { [activity]: [['core: [solid, partial]', 'core: [solid]']] } as const
  expect(found(gaps, partial)).toEqual([
    {
      code: 'gap',
      about: {
        decision: 'activity',
        facts: [
          ['core', 'partial'],
          ['stored_rh_percent', '0 | 0 to 60 | 60'],
        ],
        more: 0,
      },
    },
  ])
  const told = {
    [activity]: [
      ['core: [solid, partial]', 'core: [solid]'],
      ['- when: { core: [none] }', '- when: { core: [none, partial] }'],
    ],
  } as const
  expect(found(gaps, told)).toEqual([])
})

const storage = (core: string) =>
  ({
    'decisions/storage-humidity.yaml': [
      ['facts: [activity]', 'facts: [activity, core]'],
      ['when: { activity: [quiet] }', `when: { activity: [quiet], core: ${core} }`],
    ],
  }) as const

test('an answer that an earlier decision cannot give there is no gap', () => {
  // Storage reads core as well: metal without a core never rests, so nothing need be said of it.
  expect(found(gaps, storage('[solid, partial]'))).toEqual([])
  expect(found(gaps, storage('[solid]'))).toEqual([
    {
      code: 'gap',
      about: {
        decision: 'storage-humidity',
        facts: [
          ['activity', 'quiet'],
          ['core', 'partial'],
        ],
        more: 0,
      },
    },
  ])
})

const firstLook = (second: string) => ({
  'decisions/first-look.yaml': `
decision: first-look
asks: What is seen?
each: component
policy: unique
answers: [active, quiet]
absent: silent
facts: [seen]
rules:
  - { id: spots, title: Spots, when: { seen: [bright-orange-spots, orange-droplets] }, then: { answer: active }, strength: should,
      certainty: opinion, because: It goes on., sources: [{ work: house-rule, place: null, says: supports, known: common-practice }] }
  - { id: other, title: Other, when: { seen: ${second} }, then: { answer: quiet }, strength: should,
      certainty: opinion, because: It rests., sources: [{ work: house-rule, place: null, says: supports, known: common-practice }] }
`,
})

test('lists: a rule for any of these and a rule for none of these leave no gap', () => {
  expect(found(gaps, firstLook('{ none: [bright-orange-spots, orange-droplets] }'))).toEqual([])
  expect(found(gaps, firstLook('{ none: [bright-orange-spots, orange-droplets, loose-flakes] }'))).toEqual([
    { code: 'gap', about: { decision: 'first-look', facts: [['seen', 'loose-flakes']], more: 0 } },
  ])
})

const byMaterial = (rule: string, gap: string) => ({
  'decisions/handling.yaml': `
decision: handling
asks: How is it held?
each: component
policy: collect
fills: handling
absent: silent
facts: [material, core]
rules:
  - { id: one, title: One, when: ${rule}, then: { say: iron-kept-dry }, strength: should, certainty: opinion, text: Hold it.,
      because: It breaks., sources: [{ work: house-rule, place: null, says: supports, known: common-practice }] }
not-covered:
  - { when: ${gap}, what: The rest, because: Nobody knows. }
`,
})

test('a material for which no rule can speak is named', () => {
  const rule = '{ material: { none: [amber, jet] }, core: [solid] }'
  expect(found(uncovered, byMaterial(rule, '{ material: [jet] }'))).toEqual([
    { code: 'uncovered', about: { decision: 'handling', fact: 'material', value: 'amber' } },
  ])
  expect(found(uncovered, byMaterial(rule, '{ material: [jet, amber] }'))).toEqual([])
})
