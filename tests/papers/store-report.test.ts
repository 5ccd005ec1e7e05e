import { describe, expect, it } from 'vitest'
import type { IsoDate } from '../../lib/base/calendar.ts'
import { boxState, storeReport, type ReportBox } from '../../lib/papers/store-report.ts'

const on = (text: string) => text as IsoDate
const year = { from: on('2026-01-01'), to: on('2026-12-31'), aYearOn: on('2027-12-31') }
const read = (day: string, lowRhPercent: number, highRhPercent: number) => ({
  on: on(day),
  lowRhPercent,
  highRhPercent,
})
const change = (day: string, gelKg = 0.5, removedKg: number | null = null) => ({
  on: on(day),
  gelKg,
  removedKg,
})
const box = (name: string, more: Partial<ReportBox> = {}): ReportBox => ({
  box: name,
  room: 'Metal store',
  limitRhPercent: 12,
  finds: 3,
  readings: [],
  gel: [],
  renewOn: null,
  hoursAbove: 0,
  worstRhPercent: null,
  ...more,
})

describe('how a box stood by its newest reading', () => {
  const state = (more: Partial<ReportBox>) => boxState(box('B', more), year.from)
  it.each([
    ['no-limit', { limitRhPercent: null, readings: [read('2026-06-01', 80, 90)] }],
    ['not-read', {}],
    ['not-read', { readings: [read('2025-12-31', 5, 10)] }],
    ['in-band', { readings: [read('2026-03-01', 20, 30), read('2026-06-01', 10, 12)] }],
    ['over', { readings: [read('2026-06-01', 15, 20)] }],
    ['cannot-tell', { readings: [read('2026-06-01', 10, 15)] }],
    ['renewed-unread', { readings: [read('2026-06-01', 15, 20)], gel: [change('2026-06-02')] }],
    ['over', { readings: [read('2026-06-02', 15, 20)], gel: [change('2026-06-02')] }],
  ] as const)('%s', (wanted, more) => expect(state(more)).toBe(wanted))
})

describe('renewals of a year', () => {
  it('are late where the box had been read over its limit since the filling before', () => {
    const { renewals, gel } = storeReport(
      [
        box('early', { readings: [read('2026-05-01', 5, 10)], gel: [change('2026-05-02', 0.5, 0.6)] }),
        box('late', { readings: [read('2026-05-01', 20, 30)], gel: [change('2026-05-02', 1)] }),
        box('old-news', {
          readings: [read('2025-05-01', 20, 30)],
          gel: [change('2025-06-01'), change('2026-05-02', 0.25)],
        }),
        box('another-year', { gel: [change('2025-05-02', 9)] }),
      ],
      year,
    )
    expect(renewals.inTime).toEqual(['early', 'old-news'])
    expect(renewals.late).toEqual(['late'])
    expect(gel).toEqual({ putInKg: 1.75, takenOutKg: 0.6, changes: 3 })
  })

  it('are overdue, or ahead, by when the gel is thought to be spent', () => {
    const dates = (early: string | null, likely: string | null) => ({
      renewOn: { early: early === null ? null : on(early), likely: likely === null ? null : on(likely) },
    })
    const { renewals } = storeReport(
      [
        box('overdue', dates('2026-02-01', '2026-11-01')),
        box('ahead', dates('2026-12-01', '2027-04-01')),
        box('far', dates('2029-01-01', '2030-01-01')),
        box('never', dates(null, null)),
        box('nothing-limits', { limitRhPercent: null, ...dates('2026-01-01', '2026-01-02') }),
      ],
      year,
    )
    expect([renewals.overdue, renewals.ahead]).toEqual([['overdue'], ['ahead']])
  })
})

it('names the boxes whose finds were at risk, the fullest first, also where only a logger saw it', () => {
  const { atRisk, states } = storeReport(
    [
      box('quiet', { readings: [read('2026-06-01', 5, 10)] }),
      box('few', { finds: 1, readings: [read('2026-06-01', 20, 30)] }),
      box('seen', { finds: 9, readings: [read('2026-06-01', 5, 10)], hoursAbove: 41, worstRhPercent: 27 }),
    ],
    year,
  )
  expect(atRisk.map(({ box: name, state }) => [name, state])).toEqual([
    ['seen', 'in-band'],
    ['few', 'over'],
  ])
  expect(states).toMatchObject({ over: ['few'], 'in-band': ['quiet', 'seen'], 'not-read': [] })
})
