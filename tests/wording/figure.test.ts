import { expect, test } from 'vitest'
import type { Figure } from '../../lib/knowledge/knowledge.ts'
import { figureWords } from '../../lib/wording/figure.ts'
import { knowledge } from '../knowledge-at-hand.ts'

const printed = (asPrinted: string, unit: string) =>
  figureWords({ ...Object.values(knowledge.figures)[0]!, asPrinted, unit } satisfies Figure, knowledge)

test.each([
  ['12', 'percent', '12 %'],
  ['about 15', 'monolayer', 'about 15 layers'],
  ['30', 'day', '30 days'],
  ['1', 'day', '1 day'],
  ['7.4', 'ph', '7.4'],
])('%s [%s] gets its unit: %s', (asPrinted, unit, words) => {
  expect(printed(asPrinted, unit)).toBe(words)
})

test.each([
  ['< 35 %', 'percent'],
  ['3 h', 'hour'],
  ['5–8 y', 'day'],
  ['~400 C', 'degree-celsius'],
  ['7-20 kg/m3', 'kilogram-per-cubic-metre'],
  ['86–600 ppt', 'ppb'],
  ['two weeks', 'day'],
  ['under a quarter', 'percent'],
])('%s [%s] brings its own', (asPrinted, unit) => {
  expect(printed(asPrinted, unit)).toBe(asPrinted)
})
