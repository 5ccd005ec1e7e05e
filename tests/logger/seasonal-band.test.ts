import { describe, expect, it } from 'vitest'
import { seasonalBand, seasonalLevels, type SeasonalOptions } from '../../lib/logger/seasonal-band.ts'
import { at, every, hour, start } from './at-hand.ts'

const options: SeasonalOptions = {
  leastMonths: 13,
  windowDays: 30,
  lowPercent: 7,
  highPercent: 93,
  widenToRhPercent: 10,
  leastCoveragePercent: 75,
}
const course = (hours: number) =>
  50 + 8 * Math.sin((2 * Math.PI * hours) / 24 / 365) + 5 * Math.sin((2 * Math.PI * hours) / 24)
const year = every(
  hour,
  Array.from({ length: 365 * 24 }, (_, n) => course(n)),
)

/** physics.md, check value 47; the year is one month too short for the method, so the months are asked less of. */
describe('a year of two sines', () => {
  const band = seasonalBand(year, { ...options, leastMonths: 11 })
  if (!band.ok) throw new Error('refused')

  it('swings as computed', () => {
    expect(band.value.readings).toBe(8040)
    expect(band.value.highRhPercent).toBeCloseTo(4.8723, 4)
    expect(band.value.lowRhPercent).toBeCloseTo(-4.8723, 4)
    expect(band.value.percentOutside).toBeCloseTo(14, 1)
    // In closed form: 5 sin(0.43 π).
    expect(Math.abs(band.value.highRhPercent - 5 * Math.sin(0.43 * Math.PI))).toBeLessThan(0.01)
  })

  it('has its seasonal level', () => {
    expect(seasonalLevels(year, 30 * 24 * hour)[91.25 * 24]).toBeCloseTo(57.918, 3)
    expect(band.value.level).toHaveLength(335)
  })

  it('gives the widened band apart, and says that it lets more through', () => {
    expect(band.value.widened).toEqual({ lowRhPercent: -10, highRhPercent: 10, changes: true })
    const wild = every(
      hour,
      Array.from({ length: 400 * 24 }, (_, n) => 50 + 20 * Math.sin((2 * Math.PI * n) / 24)),
    )
    const wide = seasonalBand(wild, options)
    expect(wide.ok && wide.value.widened.changes).toBe(false)
  })

  it('is for organic materials', () => {
    expect(band.value.for).toBe('organic-materials')
  })
})

describe('what is missing', () => {
  it('months', () => {
    expect(seasonalBand(year, options)).toEqual({
      ok: false,
      problems: { because: 'too-short', wholeMonths: 12, leastMonths: 13 },
    })
    expect(seasonalBand(every(hour, []), options)).toMatchObject({ problems: { wholeMonths: 0 } })
  })

  it('thirteen months to the hour are enough, an hour less is not', () => {
    const hours = (31 + 28 + 31 + 30 + 31 + 30 + 31 + 31 + 30 + 31 + 30 + 31 + 31) * 24
    const of = (count: number) =>
      every(
        hour,
        Array.from({ length: count }, (_, n) => course(n)),
        [],
        Date.UTC(2025, 0, 1),
      )
    expect(seasonalBand(of(hours), options).ok).toBe(true)
    expect(seasonalBand(of(hours - 1), options)).toMatchObject({
      problems: { because: 'too-short', wholeMonths: 12 },
    })
  })

  it('readings', () => {
    const days = Array.from({ length: 420 }, (_, n) => n).filter((n) => n % 2 === 0)
    const moments = days.flatMap((n) => Array.from({ length: 24 }, (_, k) => start + (24 * n + k) * hour))
    const holes = at(
      moments,
      moments.map((_, n) => course(n)),
    )
    expect(seasonalBand(holes, options)).toMatchObject({
      ok: false,
      problems: { because: 'too-little-read' },
    })
  })
})
