import { expect, test } from 'vitest'
import { remainder, toldBox } from '../../lib/analysis/box.ts'
import { dimensionsOf } from '../../lib/analysis/dimension.ts'
import type { Cell, Knowledge } from '../../lib/knowledge/knowledge.ts'
import { decision, rule } from '../arbitrary/decision.ts'

const seen = (value: string): Cell[] => [
  { fact: 'seen', any: [value] },
  { fact: 'core', any: ['solid'] },
]
const regions = ['loose-flakes', 'loose-parts', 'salt-bloom'].map(seen)
const asked = decision(
  regions.map((when, index) => rule(`r${index}`, when)),
  { facts: ['core', 'seen'] },
)
const dimensions = dimensionsOf(asked, { decisions: [asked] } as unknown as Knowledge)

test('a proof that grows beyond what is allowed gives up rather than guess', () => {
  expect(remainder([toldBox(dimensions)], regions, dimensions, 1)).toBeNull()
  expect(remainder([toldBox(dimensions)], regions, dimensions, 10)).toHaveLength(4)
})
