import { describe, expect, it } from 'vitest'
import { surroundingsOf, type AssumedRoom } from '../../lib/boxes/surroundings.ts'
import type { Series } from '../../lib/logger/series.ts'

const assumed: AssumedRoom = {
  meanRhPercent: { low: 40, nominal: 52, high: 64 },
  swingRhPercent: 10,
  swingErrorRhPercent: { written: 6, assumed: 10 },
  highestDayOfYear: 235,
  weatherRhPercent: 7,
  weatherDays: 5,
  yearsDifferRhPercent: 1.5,
  loggerErrorRhPercent: 3,
}
const nothing = { series: null, rhLowPercent: null, rhHighPercent: null }
const day = 86_400_000

/** A room of 60 ± 8 %, dampest on 9 October, read every six hours. */
function readings(
  days: number,
  from = 20_000,
  level = (at: number) => 60 + 8 * Math.cos((2 * Math.PI * (at - 282)) / 365.25),
): Series {
  const atMs = Float64Array.from({ length: days * 4 }, (_, at) => (from + at / 4) * day)
  return {
    atMs,
    rhPercent: Float32Array.from(atMs, (ms) => level(ms / day)),
    temperatureC: new Float32Array(atMs.length).fill(18),
  }
}
const width = ({ meanRhPercent: { low, high } }: ReturnType<typeof surroundingsOf>) => high - low

describe('the course of humidity around boxes', () => {
  it('is what is assumed of any room where nothing is known', () => {
    const found = surroundingsOf(nothing, assumed)
    expect(found.from).toBe('assumed')
    expect(found.meanRhPercent.low).toBeCloseTo(40, 1)
    expect(found.meanRhPercent.high).toBeCloseTo(64, 1)
    expect([found.swingRhPercent, found.highestOn, found.swingErrorRhPercent]).toEqual([
      expect.closeTo(10, 6),
      expect.closeTo(235, 6),
      expect.closeTo(10, 6),
    ])
  })

  it('is the written range where somebody wrote one', () => {
    const found = surroundingsOf({ ...nothing, rhLowPercent: 28, rhHighPercent: 42 }, assumed)
    expect(found.from).toBe('written')
    expect(found.meanRhPercent).toEqual({
      low: expect.closeTo(31.5, 1),
      nominal: 35,
      high: expect.closeTo(38.5, 1),
    })
    expect(found.swingRhPercent).toBeCloseTo(7, 6)
  })

  it('follows two years of a logger, whatever was written', () => {
    const found = surroundingsOf({ series: readings(730), rhLowPercent: 28, rhHighPercent: 42 }, assumed)
    expect(found.from).toBe('logger')
    expect(found.meanRhPercent.low).toBeLessThan(60)
    expect(found.meanRhPercent.high).toBeGreaterThan(59.3)
    expect(found.swingRhPercent).toBeGreaterThan(6.5)
    expect(Math.abs(found.highestOn - 282)).toBeLessThan(15)
  })

  it('hardly leaves what was assumed after a week, and is sure of little', () => {
    const week = surroundingsOf({ ...nothing, series: readings(7) }, assumed)
    const year = surroundingsOf({ ...nothing, series: readings(365) }, assumed)
    expect(week.from).toBe('logger')
    expect(width(week)).toBeGreaterThan(2 * width(year))
    expect(week.swingErrorRhPercent!).toBeGreaterThan(2 * year.swingErrorRhPercent!)
  })

  it('never knows next year better than years differ', () => {
    const found = surroundingsOf({ ...nothing, series: readings(3650) }, assumed)
    expect(width(found)).toBeGreaterThan(2 * 1.28 * 1.5)
  })

  it('takes gaps and readings that are no number as nothing read', () => {
    const whole = readings(365)
    const rhPercent = whole.rhPercent.map((value, at) => (at % 40 < 20 ? Number.NaN : value))
    const half = surroundingsOf({ ...nothing, series: { ...whole, rhPercent } }, assumed)
    expect(Number.isFinite(half.meanRhPercent.nominal)).toBe(true)
    expect(width(half)).toBeGreaterThan(width(surroundingsOf({ ...nothing, series: whole }, assumed)))
    const none = { ...whole, rhPercent: whole.rhPercent.map(() => Number.NaN) }
    expect(surroundingsOf({ ...nothing, series: none }, assumed).from).toBe('assumed')
  })
})
