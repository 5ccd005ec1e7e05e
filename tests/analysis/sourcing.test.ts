import { expect, test } from 'vitest'
import { memoryBehindMust } from '../../lib/analysis/memory-behind-must.ts'
import { memoryRelaxes } from '../../lib/analysis/memory-relaxes.ts'
import { unusedFigures, unusedWorks } from '../../lib/analysis/unused.ts'
import { withoutSource } from '../../lib/analysis/without-source.ts'
import { flawsOf, found } from '../knowledge/small-content.ts'

const storage = 'decisions/storage-humidity.yaml'

test('memory alone behind a must speaks; with common practice beside it, or behind a should, it is silent', () => {
  const source = 'sources: [{ work: house-rule, place: null, says: supports, known: common-practice }]'
  const memory = 'sources: [{ work: remembered-1997, place: null, says: supports, known: memory }]'
  const packing = (strength: string, sources: string) =>
    ({
      'decisions/packing.yaml': [
        ['strength: should', `strength: ${strength}`],
        [source, sources],
      ],
    }) as const
  expect(found(memoryBehindMust, packing('must', memory))).toEqual([
    { code: 'memory-behind-must', about: { rule: 'packing/dry' } },
  ])
  expect(found(memoryBehindMust, packing('should', memory))).toEqual([])
  expect(
    found(memoryBehindMust, packing('must', `${memory.slice(0, -1)}, ${source.slice('sources: ['.length)}`)),
  ).toEqual([])
})

test('a must to a remembered number speaks, whoever supports it; a remembered number in its reasons is silent', () => {
  const command = [['to: iron-ceiling', 'to: remembered-ceiling']] as const
  expect(flawsOf('memory-figure-in-must', { [storage]: command }).map(({ about }) => about)).toEqual([
    { rule: 'going-on', figure: 'remembered-ceiling' },
  ])
  const reasons = [
    ['because: It corrodes.', 'because: Above {figure:remembered-ceiling} it corrodes.'],
  ] as const
  expect(flawsOf('memory-figure-in-must', { [storage]: reasons })).toEqual([])
})

const overriding = (ceiling: string) =>
  ({
    [storage]: [
      ['level: limit', 'level: limit\n    overrides: [going-on]'],
      ['to: iron-ceiling', `to: ${ceiling}`],
    ],
  }) as const

test('a remembered rule that overrides a stricter one speaks; one that overrides a looser one is silent', () => {
  expect(found(memoryRelaxes, overriding('iron-ceiling'))).toEqual([
    { code: 'memory-relaxes', about: { rule: 'storage-humidity/at-rest', overrides: 'going-on' } },
  ])
  expect(found(memoryRelaxes, overriding('damp-limit'))).toEqual([])
  expect(found(memoryRelaxes)).toEqual([])
})

test('a rule without a source speaks, and a source that speaks against it is none', () => {
  const source = 'sources: [{ work: house-rule, place: null, says: supports, known: common-practice }]'
  const none = { 'decisions/packing.yaml': [[source, 'sources: []']] } as const
  const against = { 'decisions/packing.yaml': [['says: supports', 'says: against']] } as const
  const flaw = { code: 'without-source', about: { rule: 'packing/dry' } }
  expect(found(withoutSource, none)).toEqual([flaw])
  expect(found(withoutSource, against)).toEqual([flaw])
  expect(found(withoutSource)).toEqual([])
})

test('a figure that nothing uses speaks unless it says why it is kept', () => {
  const unkept = { 'figures/invented.yaml': [['  kept: for the round\n', '']] } as const
  expect(found(unusedFigures, unkept)).toEqual([{ code: 'figure-unused', about: { figure: 'round' } }])
  expect(found(unusedFigures)).toEqual([])
})

test('a work that nothing refers to speaks; one that only a figure refers to is silent', () => {
  const more = '\n- { id: unread-2000, authors: [D. Unread], year: 2000, title: Unread, known: read }\n'
  const files = { 'works/more.yaml': more }
  expect(found(unusedWorks, files)).toEqual([{ code: 'work-unused', about: { work: 'unread-2000' } }])
  expect(found(unusedWorks)).toEqual([])
})
