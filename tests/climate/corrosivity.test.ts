import { describe, expect, test } from 'vitest'
import { classesOf, classOf } from '../../lib/climate/corrosivity-class.ts'
import {
  outdoorLoss,
  outdoorLossPerYear,
  outdoorMetals,
  type OutdoorAir,
} from '../../lib/climate/corrosivity-outdoor.ts'

const air = (
  temperatureC: number,
  rhPercent: number,
  so2MgPerM2Day: number,
  chlorideMgPerM2Day: number,
): OutdoorAir => ({
  temperatureC,
  rhPercent,
  so2MgPerM2Day,
  chlorideMgPerM2Day,
})

describe('a year outdoors, computed by us and pinned', () => {
  test.each([
    [air(10, 75, 10, 5), [31.1714, 1.3059, 1.1899, 0.2013]],
    [air(20, 80, 20, 60), [64.5325, 2.8138, 2.0517, 0.8614]],
    [air(10, 75, 1, 3), [11.5054, 0.5459, 0.7775, 0.0673]],
  ])('%o', (given, losses) => {
    outdoorMetals.forEach((metal, at) => expect(outdoorLossPerYear(metal, given)).toBeCloseTo(losses[at]!, 4))
  })

  test('dirtier and damper air eats more, of every metal; the two slopes meet at 10 °C', () => {
    const base = air(10, 75, 10, 5)
    for (const metal of outdoorMetals) {
      const loss = outdoorLossPerYear(metal, base)
      for (const worse of [{ rhPercent: 76 }, { so2MgPerM2Day: 11 }, { chlorideMgPerM2Day: 6 }])
        expect(outdoorLossPerYear(metal, { ...base, ...worse })).toBeGreaterThan(loss)
      expect(outdoorLossPerYear(metal, { ...base, temperatureC: 10 + 1e-9 }) / loss).toBeCloseTo(1, 8)
    }
  })
})

describe('where the standard is asked', () => {
  const ranges = {
    temperatureC: { from: -17.1, to: 28.7 },
    rhPercent: { from: 34, to: 93 },
    so2MgPerM2Day: { from: 0.7, to: 150.4 },
    chlorideMgPerM2Day: { from: 0.4, to: 760.5 },
  }
  const spread = { belowPercent: 33, abovePercent: 50 }
  const ask = (given: OutdoorAir, place: 'outdoors' | 'indoors' = 'outdoors') =>
    outdoorLoss('steel', given, place, ranges, spread)

  test('it answers with a range, to the very ends of where it was fitted', () => {
    const made = ask(air(10, 75, 10, 5))
    if (!made.ok) throw new Error('refused')
    expect(made.value.low / made.value.nominal).toBeCloseTo(0.67, 9)
    expect(made.value.high / made.value.nominal).toBeCloseTo(1.5, 9)
    expect([ask(air(-17.1, 34, 0.7, 0.4)), ask(air(28.7, 93, 150.4, 760.5))].every(({ ok }) => ok)).toBe(true)
  })

  test('a dry store is out of range, and everything out of range is told', () => {
    expect(ask(air(20, 15, 0.1, 0))).toMatchObject({
      ok: false,
      problems: [
        { code: 'out-of-range', quantity: 'rhPercent', value: 15, from: 34, to: 93, source: 'iso-9223-2012' },
        { code: 'out-of-range', quantity: 'so2MgPerM2Day' },
        { code: 'out-of-range', quantity: 'chlorideMgPerM2Day' },
      ],
    })
    expect(ask(air(Number.NaN, 75, 10, 5)).ok).toBe(false)
  })

  test('of a room it says nothing, however damp', () => {
    expect(ask(air(10, 75, 10, 5), 'indoors')).toEqual({ ok: false, problems: [{ code: 'not-outdoors' }] })
  })
})

describe('classes', () => {
  const limits = [
    { name: 'mild', to: 25 },
    { name: 'middling', to: 100 },
    { name: 'fierce', to: 450 },
  ] as const

  test('a limit belongs to the milder class', () => {
    expect([0, 25, 25.001, 100, 450, 451].map((rate) => classOf(rate, limits))).toEqual([
      'mild',
      'mild',
      'middling',
      'middling',
      'fierce',
      'beyond',
    ])
    expect([classOf(-1, limits), classOf(Number.NaN, limits)]).toEqual([null, null])
  })

  test('a range that straddles limits lies in every class it touches', () => {
    const all = (low: number, high: number) => classesOf({ low, nominal: low, high }, limits)?.all
    expect(all(26, 99)).toEqual(['middling'])
    expect(all(20, 101)).toEqual(['mild', 'middling', 'fierce'])
    expect(all(400, 500)).toEqual(['fierce', 'beyond'])
    expect(all(500, 600)).toEqual(['beyond'])
    expect(all(30, 20)).toBeUndefined()
    expect(all(Number.NaN, 20)).toBeUndefined()
  })
})
