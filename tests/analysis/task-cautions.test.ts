import { expect, test } from 'vitest'
import { taskCautions } from '../../lib/analysis/task-cautions.ts'
import { wordsWithoutCode } from '../../lib/analysis/words-without-code.ts'
import { found } from '../knowledge/small-content.ts'

const read = '{ work: read-1999, place: p. 1, says: supports, known: read }'
const remembered = '{ work: remembered-1997, place: null, says: supports, known: memory }'
const against = '{ work: read-1999, place: p. 1, says: against, known: read }'

const task = (level: string, sources: string) => ({
  'tasks/invented.yaml': `
- id: renew
  label: Renew it
  cautions:
    - { code: quiet, level: ${level}, text: Be careful., sources: [${sources}] }
`,
})

test('a stop that rests on memory alone speaks; a warning, or with a source that was read, is silent', () => {
  expect(found(taskCautions, task('stop', remembered))).toEqual([
    { code: 'memory-behind-stop', about: { task: 'renew/quiet' } },
  ])
  expect(found(taskCautions, task('warn', remembered))).toEqual([])
  expect(found(taskCautions, task('stop', `${remembered}, ${read}`))).toEqual([])
})

test('a caution that nothing supports speaks', () => {
  const told = [{ code: 'without-source', about: { rule: 'renew/quiet' } }]
  expect(found(taskCautions, task('note', ''))).toEqual(told)
  expect(found(taskCautions, task('note', against))).toEqual(told)
  expect(found(taskCautions, task('note', `${against}, ${read}`))).toEqual([])
})

test('a code that only a task says is said', () => {
  const codes = { 'vocabulary/codes-store.yaml': '- { id: hot, label: hot, means: hot }' }
  expect(found(wordsWithoutCode, codes)).toHaveLength(1)
  const saying = {
    'tasks/invented.yaml': task('note', read)['tasks/invented.yaml'].replace('code: quiet', 'code: hot'),
  }
  expect(found(wordsWithoutCode, { ...codes, ...saying })).toEqual([])
})
