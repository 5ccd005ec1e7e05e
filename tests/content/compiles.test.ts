import path from 'node:path'
import { expect, test } from 'vitest'
import { compile } from '../../lib/knowledge/compile/compile.ts'
import { readContent } from '../../lib/knowledge/compile/read.ts'
import { checkKnowledge } from '../../lib/services/check-knowledge.ts'
import { flawLine } from '../../lib/wording/flaws.ts'
import { compiled, knowledge } from '../knowledge-at-hand.ts'

test('the content has no error: it compiles, its proofs hold, every example gives what it says', () => {
  const errors = checkKnowledge(compiled).filter(({ severity }) => severity === 'error')
  expect(errors.map(flawLine)).toEqual([])
})

test('all that is warned of is works kept for later: every figure is used or kept, every code said has words, every word a code', () => {
  const warnings = checkKnowledge(compiled).filter(({ severity }) => severity === 'warning')
  expect(warnings.filter(({ code }) => code !== 'work-unused').map(flawLine)).toEqual([])
})

test('every rule has an example', () => {
  const bare = knowledge.decisions.flatMap(({ id, rules }) =>
    rules
      .filter(({ examples, retired }) => examples.length === 0 && retired === null)
      .map((rule) => `${id}/${rule.id}`),
  )
  expect(bare).toEqual([])
})

test('compiling twice gives the same knowledge', () => {
  const again = compile(readContent(path.resolve(import.meta.dirname, '../..')).toReversed())
  expect(again.knowledge.hash).toBe(knowledge.hash)
})

test('there is as much as the work was planned for', () => {
  expect(Object.keys(knowledge.works).length).toBeGreaterThanOrEqual(60)
  expect(Object.keys(knowledge.figures).length).toBeGreaterThanOrEqual(120)
})

test('no figure and no place is claimed of the standing works', () => {
  const standing = ['common-practice', 'house-rule']
  const sources = knowledge.decisions.flatMap(({ rules }) => rules.flatMap(({ sources: all }) => all))
  expect(sources.filter(({ work, place }) => standing.includes(work) && place !== null)).toEqual([])
  expect(
    Object.values(knowledge.figures).filter(
      ({ source }) => standing.includes(source.work) && source.place !== null,
    ),
  ).toEqual([])
})
