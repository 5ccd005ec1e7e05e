import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ClosedBox, Sighting, Surroundings } from '../../lib/boxes/box.ts'
import { departureOf } from '../../lib/boxes/departure.ts'
import { forecast } from '../../lib/boxes/forecast.ts'
import { timeToLimit } from '../../lib/boxes/forecast-limit.ts'
import { learnLeak } from '../../lib/boxes/learn.ts'
import { renewalOf } from '../../lib/boxes/renewal.ts'
import { spanOfGel } from '../../lib/boxes/renewal-fresh.ts'
import { yearDays } from '../../lib/climate/seasonal.ts'
import { prior } from '../simulated/stated.ts'

const start = 20_000
const rh = fc.double({ min: 0, max: 100, noNaN: true })
const day = fc.double({ min: -100, max: 900, noNaN: true }).map((days) => start + days)
const error = fc.double({ min: 0.1, max: 10, noNaN: true })
const serial = fc.constantFrom('A', 'B')

/** Anything anybody might have seen, however absurd. */
const anySighting: fc.Arbitrary<Sighting> = fc.oneof(
  fc.record({ kind: fc.constant('logger' as const), on: day, rhPercent: rh, errorRhPercent: error, serial }),
  fc.record({
    kind: fc.constant('below-range' as const),
    on: day,
    floorRhPercent: rh,
    errorRhPercent: error,
    serial,
  }),
  fc.tuple(day, rh, rh, error).map(([on, one, other, errorRhPercent]): Sighting => ({
    kind: 'strip',
    on,
    lowRhPercent: Math.min(one, other),
    highRhPercent: Math.max(one, other),
    errorRhPercent,
  })),
  fc.record({ kind: fc.constant('gel-spent' as const), on: day }),
  fc.record({ kind: fc.constant('lid-loose' as const), on: day }),
)
const range = (low: number, high: number) => {
  const value = fc.double({ min: low, max: high, noNaN: true })
  return fc.tuple(value, value, value).map((values) => {
    const [least, nominal, most] = values.toSorted((a, b) => a - b)
    return { low: least!, nominal: nominal!, high: most! }
  })
}

const anyBox: fc.Arbitrary<ClosedBox> = fc.record({
  name: fc.constant('TW-1'),
  model: fc.constant(null),
  room: fc.constant(null),
  volumeL: fc.double({ min: 0.1, max: 5000, noNaN: true }),
  gelKg: fc.oneof(fc.constant(0), fc.double({ min: 0.001, max: 100, noNaN: true })),
  reservoirGPerKgPercent: range(1, 10),
  airChangesPerDay: fc.constant(null),
  temperatureC: fc.double({ min: -10, max: 40, noNaN: true }),
  startedOn: fc.constant(start),
  startRhPercent: range(0, 60),
  limitRhPercent: fc.double({ min: 5, max: 65, noNaN: true }),
})
const anyRoom: fc.Arbitrary<Surroundings> = fc.record({
  meanRhPercent: range(10, 95),
  swingRhPercent: fc.double({ min: 0, max: 25, noNaN: true }),
  highestOn: fc.double({ min: 0, max: yearDays, noNaN: true }),
  from: fc.constantFrom('logger', 'written', 'assumed'),
})
const few = fc.array(anySighting, { maxLength: 12 })
const cases = { numRuns: 60 }

const dateOr = (date: number | null) => date ?? Infinity

describe('whatever was seen of whatever box', () => {
  it('every number told is a number, every band in order, every humidity one that air can have', () => {
    fc.assert(
      fc.property(anyBox, anyRoom, few, (box, room, sightings) => {
        const estimate = learnLeak(box, room, sightings, prior)
        const { low, nominal, high } = estimate.airChangesPerDay
        expect(low > 0 && low <= nominal && nominal <= high && high < Infinity).toBe(true)
        expect(estimate.learnt >= 0 && estimate.learnt <= 1).toBe(true)
        const fan = forecast(box, room, estimate, { from: start, days: 60 })
        fan.days.forEach((_, at) => {
          const lines = [fan.p10, fan.p25, fan.p50, fan.p75, fan.p90].map((line) => line[at]!)
          expect(lines.every((value) => value >= 0 && value <= 100)).toBe(true)
          lines.slice(1).forEach((value, line) => expect(value).toBeGreaterThanOrEqual(lines[line]! - 0.01))
        })
        const { crossing, renewBy } = renewalOf(box, room, estimate, { from: start, days: 200 })!
        expect(dateOr(crossing.p10)).toBeLessThanOrEqual(dateOr(crossing.p50))
        expect(dateOr(crossing.p50)).toBeLessThanOrEqual(dateOr(crossing.p90))
        expect(dateOr(renewBy)).toBeLessThanOrEqual(dateOr(crossing.p50))
        const departure = departureOf(box, room, sightings, prior)
        if (departure) expect(departure.probability > 0.5 && departure.probability <= 1).toBe(true)
      }),
      cases,
    )
  })

  it('the order in which it is told changes nothing', () => {
    fc.assert(
      fc.property(anyBox, anyRoom, few, (box, room, sightings) => {
        const back = learnLeak(box, room, sightings.toReversed(), prior)
        const there = learnLeak(box, room, sightings, prior)
        expect(back.airChangesPerDay.nominal / there.airChangesPerDay.nominal).toBeCloseTo(1, 6)
      }),
      cases,
    )
  })

  it('a higher limit is never reached sooner', () => {
    fc.assert(
      fc.property(anyBox, anyRoom, few, rh, rh, (box, room, sightings, one, other) => {
        const estimate = learnLeak(box, room, sightings, prior)
        const at = (limitRhPercent: number) =>
          timeToLimit(box, room, estimate, { limitRhPercent, from: start, days: 300 })
        const [lower, higher] = [at(Math.min(one, other)), at(Math.max(one, other))]
        for (const which of ['p10', 'p50', 'p90'] as const)
          expect(dateOr(higher[which])).toBeGreaterThanOrEqual(dateOr(lower[which]) - 1e-6)
      }),
      cases,
    )
  })

  it('a box of twice the size with twice the gel does the same', () => {
    fc.assert(
      fc.property(anyBox, anyRoom, few, (box, room, sightings) => {
        const twice = { ...box, volumeL: 2 * box.volumeL, gelKg: 2 * box.gelKg }
        const [one, two] = [box, twice].map((of) => learnLeak(of, room, sightings, prior).airChangesPerDay)
        for (const end of ['low', 'nominal', 'high'] as const) expect(two![end] / one![end]).toBeCloseTo(1, 6)
      }),
      cases,
    )
  })

  it('two years later is the same two years later', () => {
    fc.assert(
      fc.property(anyBox, anyRoom, few, (box, room, sightings) => {
        const years = 2 * yearDays
        const later = sightings.map((one) => ({ ...one, on: one.on + years }))
        const now = learnLeak(box, room, sightings, prior)
        const then = learnLeak({ ...box, startedOn: box.startedOn + years }, room, later, prior)
        // A sighting on the very day of the start may fall to either side of it by rounding.
        fc.pre(now.sightings.beforeStart === then.sightings.beforeStart)
        expect(then.airChangesPerDay.nominal / now.airChangesPerDay.nominal).toBeCloseTo(1, 4)
      }),
      cases,
    )
  })

  it('more gel never lasts shorter', () => {
    fc.assert(
      fc.property(
        anyBox,
        anyRoom,
        few,
        fc.double({ min: 1.1, max: 5, noNaN: true }),
        (box, room, sightings, times) => {
          fc.pre(box.gelKg > 0)
          const estimate = learnLeak(box, room, sightings, prior)
          const span = (gelKg: number) =>
            dateOr(spanOfGel(box, room, estimate, { gelKg, on: start, days: 400 })!.p50)
          // A box that starts damper than its room is brought down by the room, the slower the more gel it holds.
          fc.pre(box.startRhPercent.high < room.meanRhPercent.low - room.swingRhPercent)
          expect(span(times * box.gelKg)).toBeGreaterThanOrEqual(span(box.gelKg) - 1)
        },
      ),
      cases,
    )
  })
})
