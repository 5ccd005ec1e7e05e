import { describe, expect, test } from 'vitest'
import { daysToLimit, rhAfterDays } from '../../lib/climate/enclosure-constant.ts'
import type { Enclosure } from '../../lib/climate/enclosure.ts'
import { gelKgForSpan, seasonalGelKgForSpan } from '../../lib/climate/gel-mass.ts'
import {
  outsideRhPercent,
  seasonalDaysToLimit,
  seasonalGain,
  seasonalLagDays,
  seasonalRhAfterDays,
  yearDays,
  type Season,
} from '../../lib/climate/seasonal.ts'

const tau = 580.385
/** A room at 55 % that goes up and down by 15: rising on day 0, or falling. */
const rising: Season = { meanRhPercent: 55, swingRhPercent: 15, highestOnDay: yearDays / 4 }
const falling: Season = { ...rising, highestOnDay: (3 * yearDays) / 4 }

describe('a box in a room that follows the seasons', () => {
  test.each([
    ['rising', rising, [7.7111, 13.5714, 20.9163, 27.6459]],
    ['falling', falling, [7.3265, 10.793, 15.7492, 29.0359]],
  ])('after 30, 90, 180 and 365 days of a %s year', (_, season, expected) => {
    const reckoned = [30, 90, 180, 365].map((days) => seasonalRhAfterDays(tau, season, 5, 0, days))
    reckoned.forEach((rh, at) => expect(rh).toBeCloseTo(expected[at]!, 4))
  })

  test('packed in autumn it lasts half as long again as packed in spring', () => {
    expect(seasonalDaysToLimit(tau, rising, 5, 0, 15)).toBeCloseTo(104.916, 3)
    expect(seasonalDaysToLimit(tau, falling, 5, 0, 15)).toBeCloseTo(168.394, 3)
    expect(seasonalDaysToLimit(tau, { ...rising, swingRhPercent: 0 }, 5, 0, 15)).toBeCloseTo(129.509, 3)
  })

  test.each([
    [10, 0.9855, null],
    [100, 0.5026, 60.7],
    [347, 0.1652, 81.7],
    [1000, 0.058, 87.9],
  ])('of a time constant of %d days keeps %d of the swing, %d days late', (days, gain, lag) => {
    expect(seasonalGain(days)).toBeCloseTo(gain, 4)
    if (lag !== null) expect(seasonalLagDays(days)).toBeCloseTo(lag, 1)
  })

  test('without a swing it does what it does in a constant room', () => {
    const still = { ...rising, swingRhPercent: 0 }
    for (const days of [1, 100, 1000])
      expect(seasonalRhAfterDays(tau, still, 5, 40, days)).toBeCloseTo(rhAfterDays(tau, 55, 5, days), 12)
    expect(seasonalDaysToLimit(tau, still, 5, 40, 15)).toBeCloseTo(daysToLimit(tau, 55, 5, 15)!, 6)
  })

  test('one that lets nothing through stays as it was', () => {
    expect(seasonalRhAfterDays(Infinity, rising, 5, 0, 1000)).toBe(5)
    expect(seasonalDaysToLimit(Infinity, rising, 5, 0, 15)).toBeNull()
  })

  test('one whose settled course stays below the limit never gets there, however damp the room is for a day', () => {
    const mild: Season = { meanRhPercent: 12, swingRhPercent: 10, highestOnDay: 0 }
    expect(12 + 10 * seasonalGain(300)).toBeLessThan(15)
    expect(seasonalDaysToLimit(300, mild, 5, 0, 15)).toBeNull()
    expect(seasonalDaysToLimit(30, mild, 5, 0, 15)).not.toBeNull()
  })

  test('a peak that just touches the limit is found, one a hair lower is not', () => {
    const season: Season = { meanRhPercent: 12, swingRhPercent: 6, highestOnDay: 0 }
    const top = 12 + 6 * seasonalGain(50)
    const touching = seasonalDaysToLimit(50, season, 5, 0, top - 1e-6)!
    expect(seasonalRhAfterDays(50, season, 5, 0, touching)).toBeCloseTo(top, 5)
    expect(seasonalDaysToLimit(50, season, 5, 0, top + 1e-6)).toBeNull()
  })

  test('a box begun damp in a dry season may pass its limit before it dries, or come out below', () => {
    const dry: Season = { meanRhPercent: 10, swingRhPercent: 8, highestOnDay: 20 }
    const days = seasonalDaysToLimit(40, dry, 14.2, 0, 14.3)
    expect(days).toBeGreaterThan(0)
    expect(seasonalDaysToLimit(400, dry, 14.2, 0, 14.3)).toBeGreaterThan(0)
    expect(seasonalDaysToLimit(400, { ...dry, highestOnDay: yearDays / 2 }, 14.2, 0, 14.3)).toBeNull()
  })

  test('over its limit already; and what is no number stays none', () => {
    expect(seasonalDaysToLimit(tau, rising, 15, 0, 15)).toBe(0)
    expect(seasonalDaysToLimit(tau, { ...rising, meanRhPercent: Number.NaN }, 5, 0, 15)).toBeNaN()
  })

  test('the room itself is at its highest and lowest half a year apart', () => {
    expect(outsideRhPercent(rising, yearDays / 4)).toBe(70)
    expect(outsideRhPercent(rising, (3 * yearDays) / 4)).toBe(40)
  })
})

describe('gel for a span of a seasonal room', () => {
  const box: Enclosure = {
    volumeL: 10,
    gelKg: 0,
    reservoirGPerKgPercent: 5,
    airChangesPerDay: 0.5,
    temperatureC: 20,
  }

  test('lasts that long', () => {
    for (const season of [rising, falling]) {
      const kg = seasonalGelKgForSpan(box, season, 5, 0, 15, 200)!
      const lasting = (amount: number) => {
        const held = amount * 5 + 0.00172871
        return seasonalDaysToLimit(held / (0.5 * 0.00172871), season, 5, 0, 15)!
      }
      expect(lasting(kg)).toBeCloseTo(200, 1)
      expect(lasting(kg * 0.99)).toBeLessThan(200)
    }
  })

  test('without a swing is that of a constant room', () => {
    const kg = seasonalGelKgForSpan(box, { ...rising, swingRhPercent: 0 }, 5, 0, 15, 365)!
    expect(kg / gelKgForSpan(box, 55, 5, 15, 365)!).toBeCloseTo(1, 6)
  })

  test('is nothing in a dry room, none where it begins over the limit', () => {
    expect(seasonalGelKgForSpan(box, { ...rising, meanRhPercent: 9, swingRhPercent: 5 }, 5, 0, 15, 365)).toBe(
      0,
    )
    expect(seasonalGelKgForSpan(box, rising, 16, 0, 15, 365)).toBeNull()
  })
})
