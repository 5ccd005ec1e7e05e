import { describe, expect, test } from 'vitest'
import { normalQuantile } from '../../lib/base/normal-quantile.ts'
import type { Range } from '../../lib/base/range.ts'
import { daysToLimitSpread, gelKgSpread, type UncertainBox } from '../../lib/climate/enclosure-spread.ts'
import { quantilesOf, type Uncertain } from '../../lib/climate/uncertain.ts'

const range = (low: number, nominal: number, high: number): Range => ({ low, nominal, high })
const exactly = (value: number) => range(value, value, value)

const box: UncertainBox = {
  volumeL: 10,
  gelKg: 0.5,
  reservoirGPerKgPercent: range(4.5, 5, 6),
  airChangesPerDay: range(0.25, 0.5, 1),
  temperatureC: 20,
  startRhPercent: range(3, 5, 7),
  startDay: 0,
  room: { meanRhPercent: range(45, 55, 65), swingRhPercent: 0, highestOnDay: 0 },
}

describe('a normal distribution', () => {
  test('printed quantiles', () => {
    expect([0.5, 0.75, 0.9, 0.975, 0.999].map((share) => normalQuantile(share))).toEqual(
      [0, 0.6744897501960817, 1.2815515655446004, 1.959963984540054, 3.090232306167813].map((z) =>
        expect.closeTo(z, 12),
      ),
    )
    expect(normalQuantile(1e-9)).toBeCloseTo(-5.997807015, 8)
    expect(normalQuantile(0.1)).toBe(-normalQuantile(0.9))
  })

  test('nothing where its branches do not reach', () => {
    for (const share of [0, 1, -1, 1e-13, Number.NaN]) expect(normalQuantile(share)).toBeNaN()
  })
})

describe('quantiles of an outcome', () => {
  test('one quantity gives its own range back', () => {
    const size: Uncertain = { range: range(2, 3, 7), spreads: 'size' }
    const { p10, p50, p90 } = quantilesOf([size], ([value]) => value!)
    expect([p10 / 2, p50 / 3, p90 / 7]).toEqual([
      expect.closeTo(1, 2),
      expect.closeTo(1, 2),
      expect.closeTo(1, 2),
    ])
    const percent: Uncertain = { range: range(3, 5, 12), spreads: 'percent' }
    const spread = quantilesOf([percent], ([value]) => value!)
    expect([spread.p10, spread.p50, spread.p90]).toEqual([
      expect.closeTo(3, 1),
      expect.closeTo(5, 1),
      expect.closeTo(12, 1),
    ])
  })

  test.each([2, 3, 4])('the product of %d sizes is within 2 % of its exact quantiles', (count) => {
    const size: Uncertain = { range: range(0.5, 1, 2), spreads: 'size' }
    const { p10, p50, p90 } = quantilesOf(
      Array.from({ length: count }, () => size),
      (values) => values.reduce((product, value) => product * value, 1),
    )
    const exact = 2 ** Math.sqrt(count)
    for (const [found, wanted] of [
      [p10, 1 / exact],
      [p50, 1],
      [p90, exact],
    ] as const)
      expect(Math.abs(found / wanted - 1)).toBeLessThan(0.02)
  })

  test('no draw of a humidity leaves 0 to 100, no size is negative', () => {
    let [least, most] = [Infinity, -Infinity]
    quantilesOf(
      [
        { range: range(0, 1, 30), spreads: 'percent' },
        { range: range(0, 1, 50), spreads: 'size' },
      ],
      ([percent, size]) => {
        least = Math.min(least, percent!, size!)
        most = Math.max(most, percent!)
        return 0
      },
    )
    expect(least).toBe(0)
    expect(most).toBeLessThanOrEqual(100)
    expect(most).toBeGreaterThan(50)
  })

  test('the same on every call, and no more than six quantities', () => {
    expect(daysToLimitSpread(box, 15)).toEqual(daysToLimitSpread(box, 15))
    const seven = Array.from({ length: 7 }, (): Uncertain => ({ range: exactly(1), spreads: 'size' }))
    expect(() => quantilesOf(seven, () => 0)).toThrow('At most 6')
  })
})

describe('a box as well as it is known', () => {
  test('known exactly, nothing spreads', () => {
    const known: UncertainBox = {
      ...box,
      reservoirGPerKgPercent: exactly(5),
      airChangesPerDay: exactly(0.5),
      startRhPercent: exactly(5),
      room: { ...box.room, meanRhPercent: exactly(55) },
    }
    const days = daysToLimitSpread(known, 15)
    expect([days.p10, days.p50, days.p90]).toEqual([days.nominal, days.nominal, days.nominal])
    const kg = gelKgSpread(known, 15, 365)
    expect([kg.p10, kg.p50, kg.p90]).toEqual([kg.nominal, kg.nominal, kg.nominal])
  })

  test('where only the leak is not, the days are as far apart as its ends', () => {
    const known: UncertainBox = {
      ...box,
      reservoirGPerKgPercent: exactly(5),
      startRhPercent: exactly(5),
      room: { ...box.room, meanRhPercent: exactly(55) },
    }
    const { p10, p90, nominal } = daysToLimitSpread(known, 15)
    expect(p10 / (nominal / 2)).toBeCloseTo(1, 1)
    expect(p90 / (nominal * 2)).toBeCloseTo(1, 1)
  })

  test('pinned: the box of the worked table', () => {
    const days = daysToLimitSpread(box, 15)
    expect(days.nominal / 645.87).toBeCloseTo(1, 4)
    expect([days.p10, days.p50, days.p90].map(Math.round)).toEqual([309, 671, 1421])
    const kg = gelKgSpread(box, 15, 365)
    expect([kg.p10, kg.p50, kg.p90].map((each) => Math.round(each * 1000))).toEqual([128, 271, 591])
  })

  test('a room that may be no damper than the limit: perhaps never', () => {
    const dry = { ...box, room: { ...box.room, meanRhPercent: range(10, 17, 24) } }
    const { p10, p90 } = daysToLimitSpread(dry, 15)
    expect(p10).toBeLessThan(Infinity)
    expect(p90).toBe(Infinity)
    expect(gelKgSpread(dry, 15, 365).p10).toBe(0)
  })

  test('a start that may be over the limit: perhaps at once, and no gel is sure to be enough', () => {
    const damp = { ...box, startRhPercent: range(10, 14, 18) }
    expect(daysToLimitSpread(damp, 15).p10).toBe(0)
    expect(gelKgSpread(damp, 15, 365).p90).toBe(Infinity)
  })
})
