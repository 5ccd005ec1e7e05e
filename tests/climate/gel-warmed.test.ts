import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { rhOverWarmedGelPercent } from '../../lib/climate/gel-warmed.ts'

describe('dry gel that is warmed or cooled', () => {
  test('both laws stand beside each other where they disagree', () => {
    const told = rhOverWarmedGelPercent(15, 20, 10)!
    expect(told.lowPercent).toBeCloseTo(14.03, 1)
    expect(told.highPercent).toBeCloseTo(15.7, 1)
    expect(told.laws).toBe(2)
  })

  test('the same temperature is the same humidity', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 40, noNaN: true }),
        fc.double({ min: 6, max: 39, noNaN: true }),
        (temperature, rh) => {
          const told = rhOverWarmedGelPercent(rh, temperature, temperature)!
          expect(told.lowPercent).toBeCloseTo(rh, 6)
          expect(told.highPercent).toBeCloseTo(rh, 6)
        },
      ),
    )
  })

  test('the lowest is never above the highest', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 60, noNaN: true }),
        fc.double({ min: -20, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (from, to, rh) => {
          const told = rhOverWarmedGelPercent(rh, from, to)
          if (told !== null) expect(told.lowPercent).toBeLessThanOrEqual(told.highPercent)
          if (rh > 40) expect(told).toBeNull()
        },
      ),
    )
  })

  test('where one law alone reaches it says so, and where none does it has no answer', () => {
    expect(rhOverWarmedGelPercent(15, 20, 3)?.laws).toBe(1)
    expect(rhOverWarmedGelPercent(15, 20, -5)).toBeNull()
    expect(rhOverWarmedGelPercent(Number.NaN, 20, 10)).toBeNull()
  })
})
