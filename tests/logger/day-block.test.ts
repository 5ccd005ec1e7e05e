import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mergeDay, packDays, unpackDays, type DayBlock } from '../../lib/logger/day-block.ts'
import { emptySketch, joined, sketchAbove, sketchMean, sketchOf } from '../../lib/logger/day-sketch.ts'
import type { Series } from '../../lib/logger/series.ts'
import { statisticsOf } from '../../lib/logger/statistics.ts'
import { against, at, day, every, hour, start, workedDay } from './at-hand.ts'

const minute = hour / 60
const columns = ({ atMs, rhPercent, temperatureC }: Series) => [[...atMs], [...rhPercent], [...temperatureC]]

/** Readings as loggers print them: up to two decimals, now and then nothing, steps of any size. */
const series = fc
  .array(
    fc.record({
      step: fc.oneof(fc.constant(15 * 60_000), fc.integer({ min: 1, max: 3 * day })),
      rh: fc.option(fc.integer({ min: -200, max: 11_000 }), { freq: 9 }),
      celsius: fc.option(fc.integer({ min: -4000, max: 8000 }), { freq: 9 }),
    }),
    { maxLength: 120 },
  )
  .map((readings) => {
    let moment = start
    return at(
      readings.map(({ step }) => (moment += step)),
      readings.map(({ rh }) => (rh === null ? Number.NaN : rh / 100)),
      readings.map(({ celsius }) => (celsius === null ? Number.NaN : celsius / 100)),
    )
  })

describe('days packed', () => {
  it('come back as they were, to the last bit, for values of two decimals', () => {
    fc.assert(
      fc.property(series, (whole) => {
        const blocks = packDays(whole)
        expect(columns(unpackDays(blocks))).toEqual(columns(whole))
        expect(blocks.every(({ rounded }) => rounded === 0)).toBe(true)
        expect(blocks.map((block) => block.day)).toEqual(
          [...new Set(blocks.map((block) => block.day))].toSorted(),
        )
      }),
    )
  })

  it('give the statistics of the whole', () => {
    fc.assert(
      fc.property(series, (whole) => {
        const again = unpackDays(packDays(whole).toReversed())
        expect(statisticsOf(again, against(40))).toEqual(statisticsOf(whole, against(40)))
      }),
    )
  })

  it('round what has more decimals, and say how much of it', () => {
    const [block] = packDays(every(hour, [10, 10.123, 10.126], [20, 20.005, 21.5]))
    expect(block!.rounded).toBe(3)
    const { rhPercent } = unpackDays([block!])
    expect([...rhPercent].map((rh) => Math.round(rh * 1000) / 1000)).toEqual([10, 10.12, 10.13])
  })

  it('are cut at midnight of UTC, and days without readings are not there', () => {
    const two = at([start + 23 * hour, start + day, start + 4 * day - 1], [10, 11, 12])
    expect(packDays(two).map((block) => [block.day, block.sketch.readings])).toEqual([
      ['2026-03-01', 1],
      ['2026-03-02', 1],
      ['2026-03-04', 1],
    ])
  })

  it('take little room: a year of minutes a few megabytes', () => {
    const minutes = every(
      minute,
      Array.from({ length: 1440 }, (_, n) => 12 + Math.round(10 * Math.sin(n / 100)) / 10),
      Array.from({ length: 1440 }, (_, n) => 20 + Math.round(100 * Math.sin(n / 200)) / 100),
    )
    expect(packDays(minutes)[0]!.text.length).toBeLessThan(1440 * 3)
  })

  it('refuse a text that was cut off or is of another form', () => {
    const [block] = packDays(every(hour, workedDay))
    expect(() => unpackDays([{ ...block!, text: block!.text.slice(0, 24) }])).toThrow(/ends in the middle/)
    expect(() => unpackDays([{ ...block!, text: btoa('\u0009\u0001\u0000') }])).toThrow(/form \(9\)/)
  })
})

describe('a day merged', () => {
  const [kept] = packDays(every(hour, [10, 11, 12]))
  const block = (moments: readonly number[], rh: readonly number[]): DayBlock => packDays(at(moments, rh))[0]!

  it('with the same readings stays as it is', () => {
    expect(mergeDay(kept!, kept!)).toEqual({ ...kept, added: 0, conflicts: 0 })
  })

  it('takes in what it did not have', () => {
    const merged = mergeDay(kept!, block([start + hour / 2, start + hour, start + 5 * hour], [20, 11, 21]))
    expect(merged).toMatchObject({ added: 2, conflicts: 0 })
    expect([...unpackDays([merged]).rhPercent]).toEqual([10, 20, 11, 12, 21])
    expect(merged.sketch.readings).toBe(5)
  })

  it('keeps its own value where two disagree, and counts that', () => {
    const merged = mergeDay(kept!, block([start, start + hour, start + 3 * hour], [99, 11, 13]))
    expect(merged).toMatchObject({ added: 1, conflicts: 1 })
    expect([...unpackDays([merged]).rhPercent]).toEqual([10, 11, 12, 13])
  })

  it('fills what had no value', () => {
    const holed = block([start, start + hour], [Number.NaN, 11])
    const merged = mergeDay(holed, kept!)
    expect(merged).toMatchObject({ added: 2, conflicts: 0 })
    expect([...unpackDays([merged]).rhPercent]).toEqual([10, 11, 12])
  })

  it('is of one day', () => {
    expect(() => mergeDay(kept!, block([start + day], [1]))).toThrow(/not one day/)
  })

  it('twice changes nothing more, and without disagreement the order of the files does not matter', () => {
    const one = fc.uniqueArray(fc.integer({ min: 0, max: 1439 }), { minLength: 1, maxLength: 60 })
    // One truth for each minute: files that agree where they meet.
    const truth = (place: number) => ((place * 37) % 1000) / 10
    const of = (minutes: readonly number[]) => {
      const sorted = minutes.toSorted((a, b) => a - b)
      return block(
        sorted.map((place) => start + place * minute),
        sorted.map(truth),
      )
    }
    fc.assert(
      fc.property(one, one, (a, b) => {
        const merged = mergeDay(of(a), of(b))
        expect(merged.conflicts).toBe(0)
        expect(mergeDay(merged, of(b))).toMatchObject({ text: merged.text, sketch: merged.sketch, added: 0 })
        expect(unpackDays([mergeDay(of(b), of(a))])).toEqual(unpackDays([merged]))
      }),
    )
  })
})

describe('sketches', () => {
  it('joined day by day are the sketch of the whole: a day added costs a day', () => {
    fc.assert(
      fc.property(series, fc.integer({ min: 1, max: 2 * day }), (whole, stepMs) => {
        const days = packDays(whole, stepMs).map(({ sketch }) => sketch)
        expect(days.reduce(joined, { ...emptySketch, stepMs })).toEqual(sketchOf(whole, stepMs))
      }),
    )
  })

  it('joined in any grouping are the same', () => {
    fc.assert(
      fc.property(series, fc.nat(), (whole, cut) => {
        const days = packDays(whole, hour).map(({ sketch }) => sketch)
        const place = days.length === 0 ? 0 : cut % days.length
        const none = { ...emptySketch, stepMs: hour }
        const [before, after] = [
          days.slice(0, place).reduce(joined, none),
          days.slice(place).reduce(joined, none),
        ]
        expect(joined(before, after)).toEqual(days.reduce(joined, none))
      }),
    )
  })

  it('tell time and dose above a whole percent as the readings do', () => {
    const whole = every(hour, workedDay)
    expect(sketchAbove(sketchOf(whole, hour), 15)).toEqual({
      hours: 24,
      hoursAbove: 11,
      doseRhPercentHours: 66,
    })
    expect(sketchAbove(sketchOf(whole, hour), 15.5)).toBeNull()
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 10_000 }), { minLength: 2, maxLength: 100 }),
        fc.integer({ min: 0, max: 100 }),
        (hundredths, limit) => {
          const readings = every(
            hour,
            hundredths.map((rh) => rh / 100),
          )
          const told = sketchAbove(sketchOf(readings, hour), limit)!
          const { humidity } = statisticsOf(readings, against(limit))
          expect(told.hoursAbove).toBe(humidity!.above!.hours)
          expect(told.doseRhPercentHours).toBeCloseTo(humidity!.above!.doseRhPercentHours, 9)
        },
      ),
    )
  })

  it('tell mean and spread', () => {
    const told = sketchMean(sketchOf(every(hour, workedDay), hour))!
    expect(told.meanRhPercent).toBe(17.25)
    expect(told.sdRhPercent).toBeCloseTo(4.3708, 4)
    expect(sketchMean(emptySketch)).toBeNull()
  })
})
