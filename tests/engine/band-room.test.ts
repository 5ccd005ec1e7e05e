import { expect, test } from 'vitest'
import { partBand, reconcile } from '../../lib/engine/band.ts'
import type { Spoken } from '../../lib/engine/statement.ts'

const spoken = (level: 'limit' | 'preference', from: number, to: number) =>
  ({
    rule: { level, strength: level === 'limit' ? 'must' : 'should', then: { kind: 'band', from, to } },
    statement: {},
  }) as unknown as Spoken

const together = (...parts: (readonly Spoken[])[]) =>
  reconcile(parts.map((said, at) => partBand(String(at), said)))

test('a preference that would leave a band nobody can hold is not kept', () => {
  const bone = [spoken('limit', 45, 55)]
  const bronze = [spoken('limit', 0, 55), spoken('preference', 0, 45)]
  expect(together(bone, bronze).band).toEqual({ min: 45, max: 55 })
})

test('a preference that leaves room is kept', () => {
  const wood = [spoken('limit', 40, 60)]
  const bronze = [spoken('limit', 0, 55), spoken('preference', 0, 45)]
  expect(together(wood, bronze).band).toEqual({ min: 40, max: 45 })
})

test('limits that only touch leave no humidity a box can hold', () => {
  const enamel = [spoken('limit', 35, 45)]
  const bronze = [spoken('limit', 0, 35)]
  expect(together(enamel, bronze)).toEqual({ band: null, conflict: { between: ['0', '1'], gapPercent: 0 } })
})
