import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bestMatch } from '../../lib/boxes/pack-match.ts'

function mostByTrying(
  weights: readonly (readonly number[])[],
  row = 0,
  used: ReadonlySet<number> = new Set(),
): number {
  if (row === weights.length) return 0
  return Math.max(
    ...weights[row]!.map((weight, column) =>
      used.has(column) ? -Infinity : weight + mostByTrying(weights, row + 1, new Set([...used, column])),
    ),
  )
}

describe('boxes given out', () => {
  it('keep as much as any giving out could', () => {
    const table = fc.integer({ min: 1, max: 5 }).chain((rows) =>
      fc.integer({ min: rows, max: 6 }).chain((columns) =>
        fc.array(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: columns, maxLength: columns }), {
          minLength: rows,
          maxLength: rows,
        }),
      ),
    )
    fc.assert(
      fc.property(table, (weights) => {
        const match = bestMatch(weights)
        expect(new Set(match).size).toBe(weights.length)
        expect(match.reduce((sum, column, row) => sum + weights[row]![column]!, 0)).toBe(
          mostByTrying(weights),
        )
      }),
    )
  })

  it('are none where there is nothing to give', () => {
    expect(bestMatch([])).toEqual([])
  })
})
