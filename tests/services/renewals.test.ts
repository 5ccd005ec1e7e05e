import { describe, expect, it } from 'vitest'
import { calendarText } from '../../lib/exchange/calendar.ts'
import { levelRenewals } from '../../lib/boxes/level.ts'
import { duesOf, meansOf } from '../../lib/services/renewals-due.ts'
import type { BoxLine } from '../../lib/services/show-store.ts'
import { nothingSet } from '../../lib/services/store-setting.ts'
import { missingWords, renewalDescription, renewalSummary } from '../../lib/wording/renewals.ts'
import { day } from '../database/samples.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { readCalendar } from '../exchange/calendar-lines.ts'

const today = day('2026-11-25')

/** Of a line only what renewals read of it. */
function line(
  name: string,
  early: string | null,
  also: { readonly gelKg?: number; readonly limit?: number | null } = {},
): BoxLine {
  const { gelKg = 0.5, limit = 12 } = also
  const outlook = {
    airChangesPerDay: { low: 0.3, nominal: 0.5, high: 0.8 },
    surroundings: {
      meanRhPercent: { low: 45, nominal: 50, high: 55 },
      swingRhPercent: 8,
      highestOn: 210,
      from: 'written',
    },
    limitRhPercent: limit,
    renewOn: { early: early === null ? null : day(early), likely: null, late: null },
  }
  return {
    box: { given: { box: name, shelf: 'A1', volume_l: 10, gel_kg: gelKg } },
    room: 'Store',
    outlook,
  } as unknown as BoxLine
}

describe('gel that falls due', () => {
  const due = (one: BoxLine) => duesOf([one], [], knowledge)[0]

  it('is that of boxes of which a day can be told', () => {
    const dues = duesOf(
      [line('B1', '2027-03-01'), line('B2', null), { ...line('B3', '2027-03-01'), outlook: null }],
      [],
      knowledge,
    )
    expect(dues.map(({ box, safeOn, gelKg, shelf, room }) => [box, safeOn, gelKg, shelf, room])).toEqual([
      ['B1', '2027-03-01', 0.5, 'A1', 'Store'],
    ])
  })

  it('lasts longer the more of it there is, and shorter for a stricter limit', () => {
    const days = (gelKg: number, limit: number) => due(line('B1', '2027-03-01', { gelKg, limit }))!.lastsDays!
    expect(days(0.5, 12)).toBeGreaterThan(30)
    expect(days(1, 12)).toBeGreaterThan(1.8 * days(0.5, 12))
    expect(days(0.5, 20)).toBeGreaterThan(days(0.5, 12))
    expect(due(line('B1', '2027-03-01', { gelKg: 0.001 }))!.lastsDays).toBeNull()
  })

  it('is not looked for again where nothing limits the box or it never gets there', () => {
    expect(due(line('B1', '2027-03-01', { limit: null }))!.lastsDays).toBeNull()
    expect(due(line('B1', '2027-03-01', { limit: 80 }))!.lastsDays).toBeNull()
  })
})

describe('what there is to do it with', () => {
  it('is what was set, and what was not limits nothing and is named', () => {
    const { means, untold } = meansOf(nothingSet, today)
    expect(untold).toEqual(['hours', 'minutes', 'gel', 'oven'])
    expect([means.dryKg, means.spentKg, means.oven, new Set(means.hoursPerWeek)]).toEqual([
      Infinity,
      0,
      null,
      new Set([Infinity]),
    ])
  })

  it('follows the months where they differ', () => {
    const hoursByMonth = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]
    const set = {
      ...nothingSet,
      minutesPerBox: 15,
      hoursPerWeek: 3,
      gelDryKg: 4,
      ovenKgPerBatch: 2,
      ovenBatchesPerWeek: 3,
      ovenHoursPerBatch: 5,
    }
    expect(meansOf({ ...set, hoursByMonth }, today).means.hoursPerWeek).toEqual(hoursByMonth)
    expect(meansOf(set, today)).toMatchObject({
      means: {
        minutesPerBox: 15,
        hoursPerWeek: hoursByMonth.map(() => 3),
        dryKg: 4,
        oven: { kgPerBatch: 2, batchesPerWeek: 3, hoursPerBatch: 5 },
      },
      untold: [],
    })
  })
})

describe('the calendar of it', () => {
  it('says box, place and gel, how sure the day is, and nothing of people', () => {
    const { means } = meansOf(nothingSet, today)
    const plan = levelRenewals(duesOf([line('B1', '2027-03-01')], [], knowledge), means, {
      seed: 1,
      steps: 100,
    })
    const all = plan.weeks.flatMap(({ renewals }) => renewals)
    expect(all.map(({ turn }) => turn)).toEqual(all.map((_, at) => at + 1))
    expect(all.length).toBeGreaterThan(1)
    expect(renewalSummary(all[0]!)).toBe('Gel of B1 (Store, shelf A1)')
    expect(renewalDescription(all[0]!)).toBe(
      'Renew the gel: 500 g, dry.\nUntil 1 March 2027 the box is thought to keep below its limit in nine cases of ten.',
    )
    expect(renewalDescription(all[1]!)).toMatch(/read the strip and plan again/)
    const entries = all.map((one, at) => ({
      uid: `u${at}`,
      on: one.by,
      summary: renewalSummary(one),
      description: renewalDescription(one),
    }))
    expect(readCalendar(calendarText({ name: 'Tollgate Wharf', madeAtMs: 0, entries })).flaws).toEqual([])
  })

  it('names what is missing where something comes late', () => {
    expect(missingWords({ overdue: false, missing: ['hours', 'gel'] })).toBe(
      'The weeks before its day have too few hours and too little dry gel.',
    )
    expect(missingWords({ overdue: true, missing: [] })).toMatch(/comes first/)
  })
})
