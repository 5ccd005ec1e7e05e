import { expect, test } from 'vitest'
import { allFlaws, type Changes } from '../knowledge/small-content.ts'

const exampleFlaws = (changes: Changes) =>
  allFlaws(changes).flatMap(({ code, about }) => (code.includes('example') ? [{ code, about }] : []))

test('examples that hold are silent', () => {
  expect(exampleFlaws({})).toEqual([])
})

test('a rule without an example speaks', () => {
  const none = {
    'decisions/packing.yaml': [
      ['    examples: [{ given: { activity: active }, gives: { say: iron-kept-dry } }]\n', ''],
    ],
  } as const
  expect(exampleFlaws(none)).toEqual([{ code: 'without-example', about: { rule: 'packing/dry' } }])
})

test('an example in which the rule does not hold speaks and names the rule that does', () => {
  const other = {
    'decisions/storage-humidity.yaml': [['given: { activity: active }', 'given: { activity: quiet }']],
  } as const
  expect(exampleFlaws(other)).toEqual([
    {
      code: 'example-fails',
      about: { rule: 'storage-humidity/going-on', expected: '{"rh":{"to":20}}', got: 'what at-rest gives' },
    },
  ])
})

const gives = (text: string) =>
  ({ 'decisions/storage-humidity.yaml': [['gives: { rh: { to: 20 } }', `gives: ${text}`]] }) as const

test('an example that gives another number, or more than the rule does, speaks', () => {
  expect(exampleFlaws(gives('{ rh: { to: 21 } }'))).toMatchObject([
    { code: 'example-fails', about: { got: '{"rh":{"to":20}}' } },
  ])
  expect(exampleFlaws(gives('{ rh: { to: 20 }, check-every-days: 7 }'))).toMatchObject([
    { code: 'example-fails' },
  ])
  expect(exampleFlaws(gives('{}'))).toMatchObject([{ code: 'example-fails' }])
})

test('an example with a fact that the decision does not read speaks', () => {
  const stray = {
    'decisions/packing.yaml': [['given: { activity: active }', 'given: { activity: active, core: solid }']],
  } as const
  expect(exampleFlaws(stray)).toEqual([
    { code: 'example-fact', about: { rule: 'packing/dry', fact: 'core' } },
  ])
})

test('an example of a rule whose answer a stricter one outweighs speaks', () => {
  const wider = { 'decisions/activity.yaml': [['{ above: damp-limit }', '{ above: iron-ceiling }']] } as const
  expect(exampleFlaws(wider)).toEqual([
    {
      code: 'example-fails',
      about: { rule: 'activity/dry-metal', expected: '{"answer":"quiet"}', got: '{"answer":"active"}' },
    },
  ])
})
