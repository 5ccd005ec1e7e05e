import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays, daysBetween } from '../../lib/base/calendar.ts'
import { levelRenewals } from '../../lib/boxes/level.ts'
import type { LevelledPlan, Means, RenewalDue } from '../../lib/boxes/level-work.ts'
import { day } from '../database/samples.ts'

const start = day('2026-11-30')
const search = { seed: 1, steps: 3000 }
const unlimited = Array.from({ length: 12 }, () => Infinity)

/** Four boxes an hour, two hours a week, gel enough. */
const means = (also: Partial<Means> = {}): Means => ({
  startOn: start,
  weeks: 10,
  minutesPerBox: 15,
  hoursPerWeek: unlimited.map(() => 2),
  dryKg: Infinity,
  spentKg: 0,
  oven: null,
  ...also,
})
const due = (box: string, days: number, also: Partial<RenewalDue> = {}): RenewalDue => ({
  box,
  room: 'Store',
  shelf: 'A1',
  gelKg: 1,
  safeOn: addDays(start, days),
  likelyOn: null,
  lastsDays: null,
  ...also,
})

const weeksOf = ({ weeks }: LevelledPlan): readonly string[] =>
  weeks.map(({ renewals }) => renewals.map((one) => one.due.box).join(' '))
const lateBoxes = ({ notInTime }: LevelledPlan) =>
  notInTime.map(({ due: { box }, missing }) => [box, missing])

const anyStore = fc
  .record({
    days: fc.array(
      fc.tuple(
        fc.integer({ min: -10, max: 75 }),
        fc.integer({ min: 0, max: 20 }),
        fc.option(fc.integer({ min: 1, max: 60 }), { nil: null }),
      ),
      { maxLength: 25 },
    ),
    hours: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 12, maxLength: 12 }),
    dry: fc.option(fc.integer({ min: 0, max: 40 }), { nil: null }),
    spent: fc.integer({ min: 0, max: 20 }),
    oven: fc.option(
      fc.record({
        kgPerBatch: fc.integer({ min: 1, max: 5 }),
        batchesPerWeek: fc.integer({ min: 0, max: 3 }),
        hoursPerBatch: fc.constant(3),
      }),
      { nil: null },
    ),
  })
  .map(({ days, hours, dry, spent, oven }) => ({
    dues: days.map(([days, gel, lastsDays], at) => due(`B${at}`, days, { gelKg: gel / 10, lastsDays })),
    with: means({
      hoursPerWeek: hours,
      dryKg: dry === null ? Infinity : dry / 10,
      spentKg: spent / 10,
      oven,
    }),
  }))

describe('levelled renewals, whatever the store', () => {
  it('take no week more than it has hours, oven or gel', () => {
    fc.assert(
      fc.property(anyStore, ({ dues, with: given }) => {
        const plan = levelRenewals(dues, given, search)
        let dry = given.dryKg
        let spent = given.spentKg
        for (const week of plan.weeks) {
          expect(week.minutes).toBeLessThanOrEqual(week.hoursThere * 60)
          expect(week.gelKg).toBeLessThanOrEqual(dry + 1e-9)
          expect(week.driedKg).toBeLessThanOrEqual(spent + 1e-9)
          expect(week.batches).toBeLessThanOrEqual(given.oven?.batchesPerWeek ?? 0)
          expect(week.driedKg).toBeLessThanOrEqual(week.batches * (given.oven?.kgPerBatch ?? 0) + 1e-9)
          expect(week.gelKg).toBeCloseTo(
            week.renewals.reduce((sum, one) => sum + one.due.gelKg, 0),
            6,
          )
          if (Number.isFinite(dry)) expect(week.dryKg).toBeCloseTo(dry - week.gelKg + week.driedKg, 6)
          expect(week.spentKg).toBeCloseTo(spent + week.gelKg - week.driedKg, 6)
          dry = week.dryKg
          spent = week.spentKg
        }
      }),
    )
  })

  it('have each box due within the weeks either planned in time or named, once a turn', () => {
    fc.assert(
      fc.property(anyStore, ({ dues, with: given }) => {
        const plan = levelRenewals(dues, given, search)
        const all = plan.weeks.flatMap(({ renewals }) => renewals)
        const keys = all.map((one) => `${one.due.box} ${one.turn}`)
        expect(new Set(keys).size).toBe(keys.length)
        for (const one of dues.filter(({ safeOn }) => daysBetween(start, safeOn) < 70)) {
          const own = all.find(({ due: { box }, turn }) => box === one.box && turn === 1)
          const named = plan.notInTime.find(({ due: { box }, turn }) => box === one.box && turn === 1)
          expect((own === undefined || own.late) === (named !== undefined)).toBe(true)
          if (own !== undefined && !own.late) expect(own.by <= one.safeOn).toBe(true)
        }
      }),
    )
  })

  it('are the same for the same store', () => {
    fc.assert(
      fc.property(anyStore, ({ dues, with: given }) => {
        expect(levelRenewals(dues, given, search)).toEqual(
          levelRenewals(
            dues.map((one) => ({ ...one })),
            { ...given },
            search,
          ),
        )
      }),
      { numRuns: 20 },
    )
  })
})

/** The most renewals that can be in time by hours alone: each finds a free place or moves another on (Kuhn). */
function mostInTime(deadlines: readonly number[], room: readonly number[]): number {
  const holder = room.flatMap((places, week) => Array.from({ length: places }, () => ({ week, job: -1 })))
  const seat = (job: number, seen: Set<number>): boolean =>
    holder.some((place, at) => {
      if (place.week > deadlines[job]! || seen.has(at)) return false
      seen.add(at)
      if (place.job !== -1 && !seat(place.job, seen)) return false
      place.job = job
      return true
    })
  return deadlines.filter((_, job) => seat(job, new Set())).length
}

describe('by hours alone', () => {
  it('no plan has more of them in time: none is late where none need be', () => {
    const hours = fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 12, maxLength: 12 })
    const days = fc.array(fc.integer({ min: 0, max: 69 }), { maxLength: 60 })
    fc.assert(
      fc.property(days, hours, (daysLeft, hoursPerWeek) => {
        const given = means({ hoursPerWeek, minutesPerBox: 20 })
        const plan = levelRenewals(
          daysLeft.map((days, at) => due(`B${at}`, days)),
          given,
          { seed: 1, steps: 0 },
        )
        const room = plan.weeks.map(({ hoursThere }) => hoursThere * 3)
        const inTime = plan.weeks.flatMap(({ renewals }) => renewals).filter(({ late }) => !late).length
        expect(inTime).toBe(
          mostInTime(
            daysLeft.map((days) => Math.floor(days / 7)),
            room,
          ),
        )
      }),
    )
  })
})

describe('a plan', () => {
  it('waits as long as is safe, and comes earlier only for want of hours', () => {
    const nine = Array.from({ length: 9 }, (_, at) => due(`B${at}`, 30))
    expect(
      weeksOf(levelRenewals(nine, means(), search)).map((week) => week.split(' ').filter(Boolean).length),
    ).toEqual([0, 0, 0, 1, 8, 0, 0, 0, 0, 0])
  })

  it('comes earlier for want of gel as well', () => {
    const oven = { kgPerBatch: 1, batchesPerWeek: 1, hoursPerBatch: 3 }
    const plan = levelRenewals(
      [due('B1', 30), due('B2', 30), due('B3', 30)],
      means({ dryKg: 1, oven }),
      search,
    )
    expect(weeksOf(plan)).toEqual(
      ['B1', '', 'B2', '', 'B3', '', '', '', '', ''].map((_, at) => weeksOf(plan)[at]),
    )
    expect(plan.notInTime).toEqual([])
    expect(plan.weeks.map(({ dryKg, spentKg, batches }) => [dryKg, spentKg, batches]).slice(0, 5)).toEqual([
      [0, 1, 0],
      [1, 0, 1],
      [0, 1, 0],
      [1, 0, 1],
      [0, 1, 0],
    ])
  })

  it('is picked by room and shelf, and done by the safe day where that comes before the end of the week', () => {
    const dues = [
      due('B3', 10, { shelf: 'A10' }),
      due('B2', 9, { shelf: 'A2' }),
      due('B9', 13, { room: 'Hut', shelf: 'Z1' }),
    ]
    const { weeks } = levelRenewals(dues, means(), search)
    expect(weeks[1]!.on).toBe('2026-12-07')
    expect(weeks[1]!.renewals.map(({ due: { box }, by }) => [box, by])).toEqual([
      ['B9', '2026-12-13'],
      ['B2', '2026-12-09'],
      ['B3', '2026-12-10'],
    ])
  })

  it('follows the hours of the month a week begins in', () => {
    const hoursPerWeek = unlimited.map((_, month) => (month === 11 ? 0 : 1))
    const { weeks } = levelRenewals([due('B1', 27)], means({ hoursPerWeek }), search)
    expect(weeks.map(({ hoursThere }) => hoursThere)).toEqual([1, 0, 0, 0, 0, 1, 1, 1, 1, 1])
    expect(weeks[0]!.renewals.map(({ due: { box } }) => box)).toEqual(['B1'])
  })

  it('comes again when the new gel is spent, as long as the weeks go', () => {
    const plan = levelRenewals([due('B1', 10, { lastsDays: 21 })], means(), search)
    expect(plan.weeks.flatMap(({ renewals }) => renewals).map(({ turn, by }) => [turn, by])).toEqual([
      [1, '2026-12-10'],
      [2, '2026-12-31'],
      [3, '2027-01-21'],
    ])
  })

  it('leaves out what is safe beyond its weeks', () => {
    expect(levelRenewals([due('B1', 70)], means(), search)).toMatchObject({ notInTime: [] })
    expect(weeksOf(levelRenewals([due('B1', 70)], means(), search)).join('')).toBe('')
  })
})

describe('what cannot be in time is named with what is missing', () => {
  const nine = Array.from({ length: 9 }, (_, at) => due(`B${at}`, 3))

  it('hours', () => {
    const plan = levelRenewals(nine, means(), search)
    expect(lateBoxes(plan)).toEqual([[plan.notInTime[0]!.due.box, ['hours']]])
    expect(plan.notInTime[0]).toMatchObject({ week: 1, overdue: false })
  })

  it('gel', () => {
    const plan = levelRenewals([due('B1', 3), due('B2', 3)], means({ dryKg: 1 }), search)
    expect(lateBoxes(plan).map(([, missing]) => missing)).toEqual([['gel']])
    expect(plan.notInTime[0]!.week).toBeNull()
  })

  it('an oven, where there is gel enough that nobody dries', () => {
    const plan = levelRenewals([due('B1', 3), due('B2', 20)], means({ dryKg: 1, spentKg: 5 }), search)
    expect(lateBoxes(plan).map(([, missing]) => missing)).toEqual([['oven']])
    const oven = { kgPerBatch: 1, batchesPerWeek: 1, hoursPerBatch: 3 }
    expect(
      levelRenewals([due('B1', 3), due('B2', 20)], means({ dryKg: 1, spentKg: 5, oven }), search).notInTime,
    ).toEqual([])
  })

  it('hours and gel together', () => {
    const plan = levelRenewals(
      [due('B1', 3)],
      means({ dryKg: 0, hoursPerWeek: unlimited.map(() => 0) }),
      search,
    )
    expect(lateBoxes(plan)).toEqual([['B1', ['hours', 'gel']]])
  })

  it('nothing, where it was overdue before the first week and comes in it', () => {
    const plan = levelRenewals([due('B1', -1)], means(), search)
    expect(plan.notInTime).toMatchObject([{ overdue: true, week: 0, missing: [] }])
    expect(plan.weeks[0]!.renewals[0]).toMatchObject({ late: true, by: '2026-12-06' })
  })
})
