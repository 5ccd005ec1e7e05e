import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bucketsOf } from '../../lib/logger/buckets.ts'
import { at, every, hour, start } from './at-hand.ts'

const minute = hour / 60

describe('buckets', () => {
  const long = every(
    minute,
    Array.from({ length: 50_000 }, (_, n) => (n === 31_234 ? 99 : 10 + (n % 7) / 10)),
    Array.from({ length: 50_000 }, (_, n) => 20 - (n % 11) / 10),
  )
  const ends = start + 50_000 * minute

  it('are never more than asked for, follow each other, and lose no peak', () => {
    const buckets = bucketsOf(long, start, ends)
    expect(buckets).toHaveLength(1200)
    expect(buckets.reduce((sum, { count }) => sum + count, 0)).toBe(50_000)
    expect(Math.max(...buckets.map(({ maxRhPercent }) => maxRhPercent!))).toBe(99)
    expect(buckets.filter(({ maxRhPercent }) => maxRhPercent! > 11)).toHaveLength(1)
    expect(buckets.every(({ fromMs }, n) => n === 0 || fromMs === buckets[n - 1]!.toMs)).toBe(true)
  })

  it('show the lowest and the highest read, never a value between', () => {
    const [bucket] = bucketsOf(every(hour, [10, 30, 20], [5, 7, 6]), start, start + 3 * hour, 1)
    expect(bucket).toEqual({
      fromMs: start,
      toMs: start + 3 * hour,
      count: 3,
      minRhPercent: 10,
      maxRhPercent: 30,
      minTemperatureC: 5,
      maxTemperatureC: 7,
    })
  })

  it('of few readings are one each, and last as long as the reading stands', () => {
    const buckets = bucketsOf(every(hour, [10, 30, 20]), start, start + 3 * hour)
    expect(
      buckets.map(({ fromMs, toMs, count }) => [(fromMs - start) / hour, (toMs - start) / hour, count]),
    ).toEqual([
      [0, 1, 1],
      [1, 2, 1],
      [2, 3, 1],
    ])
    expect(buckets[0]).toMatchObject({ minRhPercent: 10, maxRhPercent: 10, minTemperatureC: null })
  })

  it('leave a gap empty, drawn wide and drawn close', () => {
    const moments = Array.from({ length: 4000 }, (_, n) => start + (n < 2000 ? n : n + 1000) * minute)
    const broken = at(
      moments,
      moments.map(() => 12),
    )
    const wide = bucketsOf(broken, start, start + 5000 * minute, 100)
    expect(wide.filter(({ count }) => count === 0).map(({ maxRhPercent }) => maxRhPercent)).toEqual(
      Array<null>(20).fill(null),
    )
    const close = bucketsOf(broken, start + 1990 * minute, start + 3010 * minute)
    expect(close.filter(({ count }) => count === 0)).toMatchObject([
      { fromMs: start + 2000 * minute, toMs: start + 3000 * minute, minRhPercent: null },
    ])
  })

  it('narrower than the step of the logger are no gaps', () => {
    const buckets = bucketsOf(every(hour, Array<number>(500).fill(12)), start, start + 500 * hour, 499)
    expect(buckets.every(({ count }) => count > 0)).toBe(true)
  })

  it('of no readings are none', () => {
    expect(bucketsOf(every(hour, []), start, ends)).toEqual([])
    expect(bucketsOf(long, ends, ends + hour)).toEqual([])
    expect(bucketsOf(long, start, ends, 0)).toEqual([])
  })

  it('hold every reading of the view once, and its extremes', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 1000 })), {
          minLength: 1,
          maxLength: 300,
        }),
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 0, max: 4000 }),
        fc.integer({ min: 1, max: 9000 }),
        (steps, most, from, width) => {
          let moment = start
          const moments = steps.map(([step]) => (moment += step * minute))
          const series = at(
            moments,
            steps.map(([, tenths]) => tenths / 10),
          )
          const [fromMs, toMs] = [start + from * minute, start + (from + width) * minute]
          const inView = steps
            .map(([, tenths], n) => [moments[n]!, tenths / 10] as const)
            .filter(([place]) => place >= fromMs && place < toMs)
            .map(([, rh]) => rh)
          const buckets = bucketsOf(series, fromMs, toMs, most)
          expect(buckets.length).toBeLessThanOrEqual(most)
          expect(buckets.reduce((sum, { count }) => sum + count, 0)).toBe(inView.length)
          const read = buckets.filter(({ count }) => count > 0)
          expect(Math.max(...read.map(({ maxRhPercent }) => maxRhPercent!))).toBe(Math.max(...inView))
          expect(Math.min(...read.map(({ minRhPercent }) => minRhPercent!))).toBe(Math.min(...inView))
        },
      ),
    )
  })
})
