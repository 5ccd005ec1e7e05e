import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Quantiles, Range } from '../../lib/base/range.ts'
import { daysToLimitSpread, gelKgSpread, type UncertainBox } from '../../lib/climate/enclosure-spread.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const rangeAbout = (nominal: fc.Arbitrary<number>, factor: fc.Arbitrary<number>): fc.Arbitrary<Range> =>
  fc.tuple(nominal, factor, factor).map(([middle, below, above]) => ({
    low: middle / below,
    nominal: middle,
    high: middle * above,
  }))

const anyBox: fc.Arbitrary<UncertainBox> = fc.record({
  volumeL: between(1, 100),
  gelKg: between(0.05, 3),
  reservoirGPerKgPercent: rangeAbout(between(4, 6), between(1, 1.3)),
  airChangesPerDay: rangeAbout(between(0.1, 3), between(1, 3)),
  temperatureC: between(8, 25),
  startRhPercent: rangeAbout(between(3, 6), between(1, 1.5)),
  startDay: between(0, 365),
  room: fc.record({
    meanRhPercent: rangeAbout(between(45, 65), between(1, 1.2)),
    swingRhPercent: between(0, 12),
    highestOnDay: between(0, 365),
  }),
})
const limit = 15
const scaled = ({ low, nominal, high }: Range, by: number): Range => ({
  low: low * by,
  nominal: nominal * by,
  high: high * by,
})
const ordered = ({ p10, p50, p90 }: Quantiles) => p10 <= p50 && p50 <= p90
const each = (one: Quantiles, other: Quantiles, holds: (a: number, b: number) => boolean) =>
  holds(one.p10, other.p10) && holds(one.p50, other.p50) && holds(one.p90, other.p90)

const law = (holds: (box: UncertainBox, by: number) => void) =>
  fc.assert(fc.property(anyBox, between(1.02, 2), holds), { numRuns: 60 })

describe('what is carried through', () => {
  test('stands in order', () => {
    law((box) => {
      expect(ordered(daysToLimitSpread(box, limit))).toBe(true)
      expect(ordered(gelKgSpread(box, limit, 300))).toBe(true)
    })
  })

  test('has the nominal within, where the ranges reach as far up as down', () => {
    const even = ({ low, nominal }: Range): Range => ({ low, nominal, high: nominal ** 2 / low })
    law((box) => {
      const { nominal, p10, p90 } = daysToLimitSpread(
        {
          ...box,
          reservoirGPerKgPercent: even(box.reservoirGPerKgPercent),
          airChangesPerDay: even(box.airChangesPerDay),
        },
        limit,
      )
      expect(nominal).toBeGreaterThanOrEqual(p10 * (1 - 1e-9))
      expect(nominal).toBeLessThanOrEqual(p90 * (1 + 1e-9))
    })
  })

  test('more gel: every quantile of the days is later', () => {
    law((box, by) => {
      const more = daysToLimitSpread({ ...box, gelKg: box.gelKg * by }, limit)
      expect(each(more, daysToLimitSpread(box, limit), (a, b) => a >= b)).toBe(true)
    })
  })

  test('a leakier lid: every quantile of the days is sooner, and of the gel larger', () => {
    law((box, by) => {
      const leakier = { ...box, airChangesPerDay: scaled(box.airChangesPerDay, by) }
      expect(each(daysToLimitSpread(leakier, limit), daysToLimitSpread(box, limit), (a, b) => a <= b)).toBe(
        true,
      )
      expect(each(gelKgSpread(leakier, limit, 300), gelKgSpread(box, limit, 300), (a, b) => a >= b)).toBe(
        true,
      )
    })
  })

  test('a leak known less well: the days spread further on both sides', () => {
    law((box, by) => {
      const { low, nominal, high } = box.airChangesPerDay
      const wider = { ...box, airChangesPerDay: { low: low / by, nominal, high: high * by } }
      const [before, after] = [daysToLimitSpread(box, limit), daysToLimitSpread(wider, limit)]
      expect(after.p10).toBeLessThanOrEqual(before.p10 * 1.02)
      expect(after.p90).toBeGreaterThanOrEqual(before.p90 * 0.98)
    })
  })

  test('a longer span: every quantile of the gel is larger', () => {
    law((box, by) => {
      const [shorter, longer] = [gelKgSpread(box, limit, 200), gelKgSpread(box, limit, 200 * by)]
      expect(each(longer, shorter, (a, b) => a >= b)).toBe(true)
    })
  })
})
