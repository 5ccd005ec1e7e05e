import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { daysToLimit, rhAfterDays } from '../../lib/climate/enclosure-constant.ts'
import {
  solveEnclosure,
  sorptionOf,
  straightSorption,
  type Sorption,
} from '../../lib/climate/enclosure-solved.ts'
import { heldGPerPercent, timeConstantDays, type Enclosure } from '../../lib/climate/enclosure.ts'
import { gelKgForSpan } from '../../lib/climate/gel-mass.ts'
import { dubininAstakhov, toth } from '../../lib/climate/isotherm-equations.ts'
import { measuredIsotherm } from '../../lib/climate/isotherm-measured.ts'
import { rhOfContentPercent, type Isotherm } from '../../lib/climate/isotherm.ts'
import {
  outsideRhPercent,
  seasonalDaysToLimit,
  seasonalRhAfterDays,
  yearDays,
  type Season,
} from '../../lib/climate/seasonal.ts'
import { knowledge } from '../knowledge-at-hand.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** Boxes of a store: from a pill box to a cupboard, from hermetic to hardly closed. */
const anyBox: fc.Arbitrary<Enclosure> = fc.record({
  volumeL: between(0.5, 500),
  gelKg: between(0.01, 5),
  reservoirGPerKgPercent: between(3, 8),
  airChangesPerDay: between(0.02, 5),
  wallGPerDayKPa: between(0, 0.5),
  temperatureC: between(5, 30),
})
const anySeason: fc.Arbitrary<Season> = fc.record({
  meanRhPercent: between(35, 75),
  swingRhPercent: between(0, 15),
  highestOnDay: between(0, yearDays),
})
const anyStart = between(2, 12)
const anyRise = between(0.5, 8)

const isotherms: readonly Isotherm[] = [
  toth,
  dubininAstakhov,
  ...Object.values(knowledge.isotherms)
    .filter(({ temperatureC }) => temperatureC === 25)
    .map((branch) => measuredIsotherm({ ...branch, work: branch.source.work })),
]
const bent = (isotherm: Isotherm, { temperatureC }: Enclosure): Sorption => sorptionOf(isotherm, temperatureC)
const held = (box: Enclosure, sorption: Sorption, rh: number) =>
  heldGPerPercent({ ...box, gelKg: 0 }) * rh + box.gelKg * sorption.contentGPerKg(rh)

describe('the closed solution and the numerical one', () => {
  test('come to the limit together, within a thousandth, in constant and in seasonal rooms', () => {
    fc.assert(
      fc.property(
        anyBox,
        anySeason,
        anyStart,
        anyRise,
        between(0, yearDays),
        (box, season, start, rise, day) => {
          const tau = timeConstantDays(box)
          const closed = seasonalDaysToLimit(tau, season, start, day, start + rise)!
          fc.pre(closed < 2000)
          const room = (since: number) => outsideRhPercent(season, day + since)
          const run = solveEnclosure(
            box,
            straightSorption(box.reservoirGPerKgPercent),
            room,
            start,
            start + rise,
            closed * 2,
          )
          expect(run.ended).toBe('at-limit')
          expect(Math.abs(run.days / closed - 1)).toBeLessThan(1e-3)
        },
      ),
      { numRuns: 150 },
    )
  })

  test('stand at the same humidity on any day', () => {
    fc.assert(
      fc.property(anyBox, anySeason, anyStart, between(1, 600), (box, season, start, days) => {
        const closed = seasonalRhAfterDays(timeConstantDays(box), season, start, 0, days)
        const sorption = straightSorption(box.reservoirGPerKgPercent)
        const run = solveEnclosure(box, sorption, (day) => outsideRhPercent(season, day), start, 101, days)
        expect(run.ended).toBe('at-end')
        expect(Math.abs(run.rhPercent - closed)).toBeLessThan(1e-3 * closed)
      }),
      { numRuns: 100 },
    )
  })
})

describe('water is conserved', () => {
  test('what came in through gaps and walls is what air and gel hold more, on every isotherm', () => {
    fc.assert(
      fc.property(
        anyBox,
        fc.constantFrom(...isotherms),
        anySeason,
        between(8, 12),
        between(1, 400),
        (box, isotherm, season, start, days) => {
          const sorption = bent(isotherm, box)
          const run = solveEnclosure(box, sorption, (day) => outsideRhPercent(season, day), start, 75, days)
          fc.pre(run.days > 0)
          const more = held(box, sorption, run.rhPercent) - held(box, sorption, start)
          expect(Math.abs(run.cameInG - more)).toBeLessThan(1e-4 * Math.abs(more) + 1e-6)
        },
      ),
      { numRuns: 150 },
    )
  })

  test('also where the room is drier and water goes out', () => {
    fc.assert(
      fc.property(anyBox, between(15, 30), between(1, 200), (box, start, days) => {
        const sorption = sorptionOf(toth, box.temperatureC)
        const run = solveEnclosure(box, sorption, () => 8, start, 80, days)
        const more = held(box, sorption, run.rhPercent) - held(box, sorption, start)
        expect(more).toBeLessThan(0)
        expect(Math.abs(run.cameInG - more)).toBeLessThan(1e-4 * Math.abs(more) + 1e-6)
      }),
      { numRuns: 60 },
    )
  })
})

describe('the time to the limit', () => {
  const days = (box: Enclosure, season: Season, start: number, limit: number) =>
    seasonalDaysToLimit(timeConstantDays(box), season, start, 0, limit) ?? Infinity

  /** A room that is never drier than the limit: only there does more gel always mean more days. */
  const damp: fc.Arbitrary<Season> = anySeason.filter(
    ({ meanRhPercent, swingRhPercent }) => meanRhPercent - swingRhPercent > 20,
  )
  const more = between(1.01, 3)

  const changes: readonly [string, (box: Enclosure, by: number) => Enclosure, 'longer' | 'shorter'][] = [
    ['more gel', (box, by) => ({ ...box, gelKg: box.gelKg * by }), 'longer'],
    [
      'a larger reservoir',
      (box, by) => ({ ...box, reservoirGPerKgPercent: box.reservoirGPerKgPercent * by }),
      'longer',
    ],
    ['a leakier lid', (box, by) => ({ ...box, airChangesPerDay: box.airChangesPerDay * by }), 'shorter'],
    ['a thinner wall', (box, by) => ({ ...box, wallGPerDayKPa: (box.wallGPerDayKPa ?? 0) + by }), 'shorter'],
    ['a warmer store', (box, by) => ({ ...box, temperatureC: box.temperatureC + by }), 'shorter'],
  ]
  test.each(changes)('%s', (_, change, which) => {
    fc.assert(
      fc.property(anyBox, damp, anyStart, anyRise, more, (box, season, start, rise, by) => {
        const [before, after] = [box, change(box, by)].map((one) => days(one, season, start, start + rise))
        if (which === 'longer') expect(after).toBeGreaterThan(before!)
        else expect(after).toBeLessThan(before!)
      }),
    )
  })

  test('a larger box whose walls are tight: shorter, for the same gel', () => {
    fc.assert(
      fc.property(anyBox, damp, anyStart, anyRise, more, (any, season, start, rise, by) => {
        const box = { ...any, wallGPerDayKPa: 0 }
        const larger = { ...box, volumeL: box.volumeL * by }
        expect(days(larger, season, start, start + rise)).toBeLessThan(days(box, season, start, start + rise))
      }),
    )
  })

  test('a damper room, a damper start: shorter; a higher limit: longer', () => {
    fc.assert(
      fc.property(anyBox, damp, anyStart, anyRise, between(0.01, 0.4), (box, season, start, rise, by) => {
        const limit = start + rise
        const before = days(box, season, start, limit)
        expect(days(box, { ...season, meanRhPercent: season.meanRhPercent + by }, start, limit)).toBeLessThan(
          before,
        )
        expect(days(box, season, start + by, limit)).toBeLessThan(before)
        expect(days(box, season, start, limit + by)).toBeGreaterThan(before)
      }),
    )
  })

  test('is the first: before it the box stays below, at it the box is there', () => {
    const anyRoom: fc.Arbitrary<Season> = fc.record({
      meanRhPercent: between(5, 75),
      swingRhPercent: between(0, 40),
      highestOnDay: between(0, yearDays),
    })
    fc.assert(
      fc.property(between(1, 3000), anyRoom, anyStart, anyRise, (tau, season, start, rise) => {
        const limit = start + rise
        const found = seasonalDaysToLimit(tau, season, start, 0, limit)
        const rh = (at: number) => seasonalRhAfterDays(tau, season, start, 0, at)
        const until = found ?? 12 * tau + 3 * yearDays
        for (let step = 0; step < 400; step += 1) expect(rh((until * step) / 400)).toBeLessThan(limit + 1e-9)
        if (found !== null) expect(rh(found)).toBeCloseTo(limit, 6)
      }),
      { numRuns: 300 },
    )
  })

  test('and the gel for a span give each other back', () => {
    fc.assert(
      fc.property(
        anyBox,
        between(40, 90),
        anyStart,
        anyRise,
        between(10, 1000),
        (box, outside, start, rise, span) => {
          const kg = gelKgForSpan(box, outside, start, start + rise, span)!
          fc.pre(kg > 1e-6)
          const tau = timeConstantDays({ ...box, gelKg: kg })
          expect(daysToLimit(tau, outside, start, start + rise)! / span).toBeCloseTo(1, 9)
          expect(rhAfterDays(tau, outside, start, span)).toBeCloseTo(start + rise, 9)
        },
      ),
    )
  })
})

describe('isotherms', () => {
  test('read forwards and backwards give the humidity again, and never fall', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...isotherms),
        between(6, 35),
        between(0, 1),
        between(0, 1),
        (isotherm, temperatureC, one, other) => {
          const { from, to } = isotherm.rhPercent(temperatureC)!
          const [low, high] = [Math.min(one, other), Math.max(one, other)].map(
            (share) => from + share * (to - from),
          )
          const water = isotherm.contentGPerKg(low!, temperatureC)
          fc.pre(!Number.isNaN(water) && !Number.isNaN(isotherm.contentGPerKg(high!, temperatureC)))
          expect(isotherm.contentGPerKg(high!, temperatureC)).toBeGreaterThanOrEqual(water)
          expect(rhOfContentPercent(isotherm, water, temperatureC)).toBeCloseTo(low!, 6)
        },
      ),
      { numRuns: 500 },
    )
  })
})
