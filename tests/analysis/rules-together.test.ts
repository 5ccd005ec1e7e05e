import { expect, test } from 'vitest'
import { absentSide } from '../../lib/analysis/absent-side.ts'
import { answersNeverGiven } from '../../lib/analysis/answers-never-given.ts'
import { conflicts } from '../../lib/analysis/conflicts.ts'
import { silentRules } from '../../lib/analysis/silent-rules.ts'
import { stopsUnread } from '../../lib/analysis/stops-unread.ts'
import { found } from '../knowledge/small-content.ts'

const activity = 'decisions/activity.yaml'
const unique = ['policy: strictest', 'policy: unique'] as const
const overlapping = ['{ above: damp-limit }', '{ above: remembered-ceiling }'] as const

test('two rules of a unique decision that hold together and differ speak', () => {
  expect(found(conflicts, { [activity]: [unique] })).toEqual([])
  expect(found(conflicts, { [activity]: [overlapping] })).toEqual([])
  expect(found(conflicts, { [activity]: [unique, overlapping] })).toEqual([
    {
      code: 'conflict',
      about: {
        decision: 'activity',
        rules: ['activity/damp', 'activity/dry-metal'],
        facts: [
          ['core', 'solid | partial'],
          ['stored_rh_percent', '45 to 60 | 60'],
        ],
      },
    },
  ])
})

test('an override settles a conflict, and so does a third rule that silences one of the two', () => {
  const override = [
    '    strength: should\n    certainty: supported\n    because: Above',
    '    overrides: [dry-metal]\n    strength: should\n    certainty: supported\n    because: Above',
  ] as const
  expect(found(conflicts, { [activity]: [unique, overlapping, override] })).toEqual([])
  const third = `
  - id: middling
    title: Between the two
    when: { stored_rh_percent: { above: remembered-ceiling, to: damp-limit } }
    then: { answer: active }
    overrides: [dry-metal]
    strength: should
    certainty: supported
    because: It may go on.
    sources: [{ work: house-rule, place: null, says: supports, known: common-practice }]
not-covered:`
  expect(found(conflicts, { [activity]: [unique, overlapping, ['\nnot-covered:', third]] })).toEqual([])
})

test('two rules that list unknown hold together where nobody could tell', () => {
  const both = [
    unique,
    ['when: { stored_rh_percent: { above: damp-limit } }', 'when: { core: [unknown, none] }'],
    ['core: [solid, partial], stored', 'core: [solid, partial, unknown], stored'],
  ] as const
  expect(found(conflicts, { [activity]: both })).toMatchObject([
    {
      about: {
        facts: [
          ['core', 'unknown'],
          ['stored_rh_percent', '0 | 0 to 60 | 60'],
        ],
      },
    },
  ])
  const one = [unique, both[1]] as const
  expect(found(conflicts, { [activity]: one })).toEqual([])
})

test('a rule that can never hold speaks', () => {
  const never = ['core: [solid, partial]', 'core: { none: [solid, partial, none, unknown] }'] as const
  expect(found(silentRules, { [activity]: [never] })).toEqual([
    { code: 'never-holds', about: { rule: 'activity/dry-metal', fact: 'core' } },
  ])
  const rarely = ['core: [solid, partial]', 'core: { none: [solid, partial] }'] as const
  expect(found(silentRules, { [activity]: [rarely] })).toEqual([])
})

const storage = (core: string) =>
  ({
    'decisions/storage-humidity.yaml': [
      ['facts: [activity]', 'facts: [activity, core]'],
      ['when: { activity: [quiet] }', `when: { activity: [quiet], core: [${core}] }`],
    ],
  }) as const

test('a rule for an answer that an earlier decision cannot give there speaks', () => {
  expect(found(silentRules, storage('none'))).toEqual([
    { code: 'never-holds', about: { rule: 'storage-humidity/at-rest', fact: 'core' } },
  ])
  expect(found(silentRules, storage('partial'))).toEqual([])
})

const override = (when: string) =>
  ({
    [activity]: [
      [
        '    strength: should\n    certainty: supported\n    because: Above',
        '    overrides: [dry-metal]\n    strength: should\n    certainty: supported\n    because: Above',
      ],
      ['when: { stored_rh_percent: { above: damp-limit } }', when],
    ],
  }) as const

test('a rule that is overridden wherever it holds speaks', () => {
  expect(found(silentRules, override('when: { stored_rh_percent: { to: damp-limit } }'))).toEqual([
    { code: 'always-overridden', about: { rule: 'activity/dry-metal', by: ['damp'] } },
  ])
  expect(found(silentRules, override('when: { stored_rh_percent: { below: damp-limit } }'))).toEqual([])
})

test('an answer that no rule gives speaks', () => {
  const more = {
    [activity]: [['answers: [active, quiet]', 'answers: [active, iron-kept-dry, quiet]']],
  } as const
  expect(found(answersNeverGiven, more)).toEqual([
    { code: 'answer-never-given', about: { decision: 'activity', answer: 'iron-kept-dry' } },
  ])
  expect(found(answersNeverGiven)).toEqual([])
})

const house = 'sources: [{ work: house-rule, place: null, says: supports, known: common-practice }]'
const stops = (now: string, level = 'stop') => ({
  'vocabulary/codes.yaml': ['active', 'quiet', 'iron-kept-dry', 'ammunition', 'now', 'routine']
    .map((id) => `- { id: ${id}, label: ${id}, means: ${id} }`)
    .join('\n'),
  'decisions/hazards.yaml': `
decision: hazards
asks: What may hurt?
each: find
policy: collect
fills: cautions
absent: silent
facts: [hazards_noticed]
rules:
  - { id: shell, title: Shell, when: { hazards_noticed: [ammunition-like] }, then: { say: ammunition }, level: ${level},
      call: conservator, strength: should, certainty: opinion, text: Do not touch., because: It may go off., ${house} }
`,
  'decisions/urgency.yaml': `
decision: urgency
asks: How soon?
each: find
policy: strictest
fills: urgency
answers: [now, routine]
absent: silent
facts: [hazards, state_now]
rules:
  - { id: stop, title: Stop, when: ${now}, then: { answer: now }, strength: should, certainty: opinion, text: Stop.,
      because: It may go off., ${house} }
  - { id: rest, title: Rest, when: { hazards: { none: [ammunition] } }, then: { answer: routine }, strength: should,
      certainty: opinion, text: Wait., because: Nothing presses., ${house} }
`,
})

test('a stop that the rules for now do not read, or read only sometimes, speaks', () => {
  const unread = { code: 'stop-unread', about: { code: 'ammunition' } }
  expect(found(stopsUnread, stops('{ state_now: [frozen] }'))).toEqual([unread])
  expect(found(stopsUnread, stops('{ hazards: [ammunition], state_now: [frozen] }'))).toEqual([unread])
  expect(found(stopsUnread, stops('{ hazards: [ammunition] }'))).toEqual([])
  expect(found(stopsUnread, stops('{ state_now: [frozen] }', 'warn'))).toEqual([])
})

test('stops in a protective decision speak', () => {
  const protective = stops('{ hazards: [ammunition] }')
  const hazards = protective['decisions/hazards.yaml'].replace('absent: silent', 'absent: protective')
  expect(found(absentSide, { ...protective, 'decisions/hazards.yaml': hazards })).toEqual([
    { code: 'stop-not-silent', about: { decision: 'hazards' } },
  ])
  expect(found(absentSide, protective)).toEqual([])
})

const objections = (head: string) => ({
  'decisions/objections.yaml': `
decision: objections
asks: Should it be done?
each: find
policy: collect
fills: objections
${head}
facts: [proposed]
rules: []
`,
})

test('protective objections that nobody called for speak', () => {
  expect(found(absentSide, objections('absent: protective'))).toEqual([
    { code: 'objection-uncalled', about: { decision: 'objections' } },
  ])
  expect(found(absentSide, objections('absent: silent'))).toEqual([])
  expect(found(absentSide, objections('absent: protective\ncalled-for-by: [proposed]'))).toEqual([])
})
