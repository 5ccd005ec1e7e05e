import { expect, test } from 'vitest'
import { fixedAnswers } from '../../lib/analysis/fixed-answers.ts'
import { vocabularyAgrees } from '../../lib/analysis/vocabulary.ts'
import { wordsWithoutCode } from '../../lib/analysis/words-without-code.ts'
import { flawsOf, found } from '../knowledge/small-content.ts'

const core = (values: string, id = 'core') => `
- id: ${id}
  label: Core
  means: Metal left inside
  asks: Is there metal left?
  lookable: true
  values: [${values
    .split(' ')
    .map((value) => `{ id: ${value}, label: ${value}, means: so }`)
    .join(', ')}]
`
const about = (field: string, changes: Parameters<typeof found>[1]) =>
  found(vocabularyAgrees, changes).filter((flaw) => JSON.stringify(flaw).includes(`"${field}"`))

test('a field of the record without words speaks', () => {
  expect(about('core', {})).toEqual([{ code: 'field-without-words', about: { field: 'core' } }])
  expect(about('core', { 'vocabulary/fields/a.yaml': core('solid partial none') })).toEqual([])
})

test('a value of the record without words speaks, and so do words without a value', () => {
  expect(about('core', { 'vocabulary/fields/a.yaml': core('solid partial') })).toEqual([
    { code: 'value-without-words', about: { field: 'core', value: 'none' } },
  ])
  expect(about('core', { 'vocabulary/fields/a.yaml': core('solid partial none hollow') })).toEqual([
    { code: 'words-without-value', about: { field: 'core', value: 'hollow' } },
  ])
})

test('words for a field that the record does not have speak', () => {
  expect(about('kernel', { 'vocabulary/fields/a.yaml': core('solid', 'kernel') })).toEqual([
    { code: 'words-without-field', about: { field: 'kernel' } },
  ])
})

test('a fact made from a test needs words once a rule reads it', () => {
  const reading = { 'decisions/packing.yaml': [['facts: [activity]', 'facts: [activity, magnet]']] } as const
  expect(about('magnet', reading)).toEqual([{ code: 'field-without-words', about: { field: 'magnet' } }])
  expect(about('magnet', {})).toEqual([])
})

test('an answer without words speaks, and so does a code', () => {
  const wordless = { 'vocabulary/codes.yaml': '- { id: quiet, label: quiet, means: at rest }' } as const
  expect(flawsOf('unknown-id', wordless).map((flaw) => [flaw.about.kind, flaw.about.id])).toEqual([
    ['code', 'active'],
    ['code', 'iron-kept-dry'],
  ])
})

test('words that nothing says speak', () => {
  const more = '- { id: dry-box, label: dry box, means: a box }\n'
  const extra = { 'vocabulary/codes.yaml': [['- { id: quiet,', `${more}- { id: quiet,`]] } as const
  expect(found(wordsWithoutCode, extra)).toEqual([{ code: 'words-without-code', about: { code: 'dry-box' } }])
  expect(found(wordsWithoutCode)).toEqual([])
})

test('answers that the plan knows by name stand strictest first', () => {
  const codes = ['active', 'quiet', 'iron-kept-dry', 'wet', 'as-found', 'dry'].map(
    (id) => `- { id: ${id}, label: ${id}, means: so }`,
  )
  const keep = (answers: string) => ({
    'vocabulary/codes.yaml': codes.join('\n'),
    'decisions/keep.yaml': `
decision: keep
asks: Wet or dry?
each: find
policy: strictest
fills: storage.keep
answers: [${answers}]
absent: protective
facts: []
rules: []
`,
  })
  expect(found(fixedAnswers, keep('dry, as-found, wet')).map(({ code }) => code)).toEqual(['fixed-answers'])
  expect(found(fixedAnswers, keep('wet, as-found, dry'))).toEqual([])
})
