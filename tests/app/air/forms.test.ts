import { describe, expect, test } from 'vitest'
import { formReader } from '../../../app/store/_forms/read-form.ts'
import { couponRead } from '../../../app/store/air/read-coupon.ts'
import { outdoorRead } from '../../../app/store/air/read-outdoors.ts'
import { isoDate } from '../../../lib/base/calendar.ts'

const today = isoDate('2026-11-25')!
const filled = {
  project: 'p',
  box: 'TW-B01',
  metal: 'silver',
  method: 'mass-gain',
  area_cm2: '32',
  on: '2026-11-01',
  days: '365',
  mass_change_mg: '0,3',
}

function read(change: Readonly<Record<string, string>> = {}) {
  const form = new FormData()
  for (const [name, value] of Object.entries({ ...filled, ...change })) form.set(name, value)
  const reader = formReader(form)
  return { coupon: couponRead(reader, today), wrong: reader.wrong }
}

describe('a coupon that is filled in', () => {
  test('is read with a decimal comma, and without what was left empty', () => {
    const { coupon, wrong } = read()
    expect(wrong).toEqual({})
    expect(coupon).toEqual({
      projectId: 'p',
      box: 'TW-B01',
      metal: 'silver',
      method: 'mass-gain',
      area_cm2: 32,
      on: '2026-11-01',
      days: 365,
      mass_change_mg: 0.3,
    })
  })

  test('everything that is wrong is told at once', () => {
    const { wrong } = read({
      box: '',
      metal: '',
      method: '',
      area_cm2: '',
      on: '2027-01-01',
      days: '',
      mass_change_mg: 'much',
      weighing_error_mg: '-1',
    })
    expect(Object.keys(wrong).toSorted()).toEqual(
      ['room', 'metal', 'method', 'area_cm2', 'on', 'days', 'mass_change_mg', 'weighing_error_mg'].toSorted(),
    )
  })

  test('the day it was hung does for the days', () => {
    const { coupon, wrong } = read({ days: '', hung_on: '2025-11-01' })
    expect([coupon.days, wrong]).toEqual([365, {}])
  })

  test.each([
    [{ hung_on: '2025-11-01', days: '30' }, 'days', /365 days, not 30/],
    [{ hung_on: '2026-11-01', days: '' }, 'hung_on', /before the day it was taken down/],
    [{ hung_on: '2026-02-30', days: '' }, 'hung_on', /no day/],
    [{ days: '0' }, 'days', /number from 1/],
  ])('days that do not fit are a fault of one field: %j', (change, field, says) => {
    const { wrong } = read(change)
    expect(Object.keys(wrong)).toEqual([field])
    expect(wrong[field]).toMatch(says)
  })

  test('counted with the first day or without it is the same', () => {
    expect(read({ hung_on: '2025-11-01', days: '366' }).wrong).toEqual({})
  })
})

describe('outdoor air that is filled in', () => {
  const outdoors = (values: Readonly<Record<string, string>>) => {
    const form = new FormData()
    for (const [name, value] of Object.entries(values)) form.set(name, value)
    const reader = formReader(form)
    return { ...outdoorRead(reader), wrong: reader.wrong }
  }

  test('numbers are read; only who says outdoors means outdoors', () => {
    const values = { temperatureC: '9,5', rhPercent: '75', so2MgPerM2Day: '10', chlorideMgPerM2Day: '5' }
    expect(outdoors({ ...values, place: 'outdoors' })).toEqual({
      air: { temperatureC: 9.5, rhPercent: 75, so2MgPerM2Day: 10, chlorideMgPerM2Day: 5 },
      place: 'outdoors',
      wrong: {},
    })
    expect(outdoors(values).place).toBe('indoors')
  })

  test('what is missing is told at once', () => {
    expect(Object.keys(outdoors({ place: 'outdoors', rhPercent: '140' }).wrong)).toHaveLength(4)
  })
})
