import { describe, expect, test } from 'vitest'
import {
  couponRate,
  couponRateMgPerM2Year,
  silverLossOfGainMgPerM2Year,
  thicknessNmPerYear,
  type Coupon,
} from '../../lib/climate/coupon.ts'

const silver: Coupon = {
  metal: 'silver',
  weighed: 'gain',
  changeMg: 0.3,
  weighingErrorMg: 0.02,
  areaM2: 0.0032,
  days: 365,
}

describe('the rate of a coupon, computed by us and pinned', () => {
  test('0.30 mg on 0.0032 m² in a year is 93.75 mg/(m²·a), 631 of silver lost', () => {
    expect(couponRateMgPerM2Year(0.3, 0.0032, 365)).toBeCloseTo(93.75, 9)
    expect(silverLossOfGainMgPerM2Year(93.75)).toBeCloseTo(630.857, 3)
    expect(1 / silverLossOfGainMgPerM2Year(1)).toBeCloseTo(0.148607, 6)
  })

  test.each([
    [50, 8.96, 5.58],
    [200, 8.96, 22.3],
    [5000, 8.96, 558],
    [170, 10.49, 16.2],
    [6700, 10.49, 639],
    [16700, 10.49, 1592],
  ])('%d mg/(m²·a) at %d g/cm³ is %d nm', (loss, density, nanometres) => {
    expect(thicknessNmPerYear(loss, density) / nanometres).toBeCloseTo(1, 2)
  })

  test('half the time is twice the rate; no area, no time, no density: no number', () => {
    expect(couponRateMgPerM2Year(0.3, 0.0032, 182.5)).toBeCloseTo(187.5, 9)
    expect([
      couponRateMgPerM2Year(1, 0, 365),
      couponRateMgPerM2Year(1, 1, 0),
      thicknessNmPerYear(1, 0),
    ]).toEqual([NaN, NaN, NaN])
  })
})

describe('what a coupon may have meant', () => {
  const rate = (change: Partial<Coupon>, methodPercent = 5) =>
    couponRate({ ...silver, ...change }, methodPercent)

  test('balance and method widen it together', () => {
    const made = rate({})
    if (!made.ok) throw new Error('refused')
    expect(made.value.rate.nominal).toBeCloseTo(93.75, 9)
    expect(made.value.rate.low).toBeCloseTo((0.28 / 0.0032) * 0.95, 9)
    expect(made.value.rate.high).toBeCloseTo((0.32 / 0.0032) * 1.05, 9)
    expect(made.value).toMatchObject({ withinWeighingError: false, notAYear: false })
  })

  test('a change within the error of the balance may be none at all', () => {
    const made = rate({ changeMg: -0.01 })
    if (!made.ok) throw new Error('refused')
    expect(made.value).toMatchObject({ withinWeighingError: true, rate: { low: 0, nominal: 0 } })
    expect(made.value.rate.high).toBeGreaterThan(0)
  })

  test.each([
    [335, false],
    [334, true],
    [395, false],
    [396, true],
    [90, true],
  ])('%d days: %s that it is no year', (days, notAYear) => {
    expect(rate({ days })).toMatchObject({ value: { notAYear } })
  })

  test('every fault is told at once', () => {
    const made = rate({ areaM2: 0, days: -1, weighingErrorMg: -1, changeMg: Number.NaN })
    expect(made).toMatchObject({
      ok: false,
      problems: [
        { code: 'not-positive', quantity: 'areaM2' },
        { code: 'not-positive', quantity: 'days' },
        { code: 'not-a-number', quantity: 'changeMg' },
        { code: 'not-a-number', quantity: 'weighingErrorMg' },
      ],
    })
    expect(rate({ changeMg: -0.021 })).toMatchObject({ problems: [{ code: 'changed-the-other-way' }] })
  })
})
