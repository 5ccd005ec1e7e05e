import { describe, expect, it } from 'vitest'
import type { IsoDate } from '../../lib/base/calendar.ts'
import { limitOn, type ReportBox, type ReportReading } from '../../lib/papers/store-report-box.ts'
import { storeReport } from '../../lib/papers/store-report.ts'
import { hangsOnStrip, stateAt } from '../../lib/papers/store-report-state.ts'

const on = (text: string) => text as IsoDate
const year = { from: on('2026-01-01'), to: on('2026-12-31'), ahead: on('2027-12-31') }
const read = (day: string, lowRhPercent: number, highRhPercent: number, more: Partial<ReportReading> = {}) =>
  ({ on: on(day), by: 'strip', lowRhPercent, highRhPercent, slackRhPercent: 5, ...more }) as const
const logged = (day: string, rhPercent: number, error = 2) =>
  read(day, rhPercent - error, rhPercent + error, { by: 'logger', slackRhPercent: 0 })
const change = (day: string, gelKg = 0.5, removedKg: number | null = null) =>
  ({ on: on(day), gelKg, removedKg, from: 'diary' }) as const
const upTo = (limitRhPercent: number | null) => [{ from: null, to: null, limitRhPercent }]
const three = ['f1', 'f2', 'f3'].map((findId) => ({ findId, from: null, to: null }))
const box = (name: string, more: Partial<ReportBox> = {}): ReportBox => ({
  box: name,
  room: 'Metal store',
  limits: upTo(12),
  lay: three,
  readings: [],
  gel: [],
  renewOn: null,
  above: { hours: 0, worstRhPercent: null, days: [] },
  ...more,
})

describe('how a box stood by its newest reading', () => {
  const state = (more: Partial<ReportBox>) => stateAt(box('B', more), year)
  it.each([
    ['no-limit', { limits: upTo(null), readings: [read('2026-06-01', 80, 90)] }],
    ['not-read', {}],
    ['not-read', { readings: [read('2025-12-31', 5, 10)] }],
    ['in-band', { readings: [read('2026-03-01', 20, 30), read('2026-06-01', 10, 12)] }],
    ['over', { readings: [read('2026-06-01', 15, 20)] }],
    ['cannot-tell', { readings: [read('2026-06-01', 10, 15)] }],
    ['cannot-tell', { readings: [logged('2026-06-01', 11)] }],
    ['renewed-unread', { readings: [read('2026-06-01', 15, 20)], gel: [change('2026-06-02')] }],
    ['renewed-unread', { readings: [read('2026-06-02', 15, 20)], gel: [change('2026-06-02')] }],
    ['in-band', { readings: [read('2026-06-03', 0, 5)], gel: [change('2026-06-02')] }],
  ] as const)('%s', (wanted, more) => expect(state(more)).toBe(wanted))

  it('hangs on a strip where its error would leave it open, never on a logger', () => {
    const hangs = (readings: ReportBox['readings']) => hangsOnStrip(box('B', { readings }), year)
    expect(hangs([read('2026-06-01', 5, 10)])).toBe(true)
    expect(hangs([read('2026-06-01', 0, 5)])).toBe(false)
    expect(hangs([read('2026-06-01', 14, 20)])).toBe(true)
    expect(hangs([read('2026-06-01', 20, 30)])).toBe(false)
    expect(hangs([read('2026-06-01', 10, 15)])).toBe(false)
    expect(hangs([logged('2026-06-01', 9)])).toBe(false)
  })

  it('is held against what lay in it at the time', () => {
    const limits = [
      { from: null, to: on('2026-03-31'), limitRhPercent: 12 },
      { from: on('2026-04-01'), to: null, limitRhPercent: 35 },
    ]
    expect(['2026-03-31', '2026-04-01'].map((day) => limitOn({ limits }, on(day)))).toEqual([12, 35])
    expect(state({ limits, readings: [read('2026-06-01', 20, 30)] })).toBe('in-band')
  })
})

describe('renewals of a year', () => {
  const how = (more: Partial<ReportBox>) =>
    storeReport([box('B', more)], year).renewals.done.map((one) => one.how)
  it.each([
    ['in-time', 'read at its limit or below', { readings: [read('2026-05-01', 5, 10)] }],
    ['late', 'read over it', { readings: [read('2026-05-01', 20, 30)] }],
    ['late', 'read over it on the day of the renewal', { readings: [read('2026-05-02', 20, 30)] }],
    ['unseen', 'not read at all', {}],
    ['unseen', 'read, but not so that it could be told', { readings: [read('2026-05-01', 10, 15)] }],
    [
      'late',
      'read over it, and then so that it could not be told',
      {
        readings: [read('2026-03-01', 20, 30), read('2026-05-01', 10, 15)],
      },
    ],
    [
      'in-time',
      'over for a while and back again',
      {
        readings: [logged('2026-03-01', 40), logged('2026-04-01', 8)],
      },
    ],
    [
      'unseen',
      'logged on the day itself, with both gels in the mean',
      { readings: [logged('2026-05-02', 40)] },
    ],
  ] as const)('are %s where the box was %s', (wanted, _, more) => {
    expect(how({ ...more, gel: [change('2026-05-02')] })).toEqual([wanted])
  })

  it('do not hear of what was read before the filling before', () => {
    const gel = [change('2025-06-01'), change('2026-05-02', 0.25)]
    expect(how({ readings: [read('2025-05-01', 20, 30)], gel })).toEqual(['unseen'])
  })

  it('are counted in kilograms, by room and by month', () => {
    const { gel, rooms, months } = storeReport(
      [
        box('a', { gel: [change('2026-05-02', 0.5, 0.6), change('2026-05-20', 1)] }),
        box('b', { room: 'Cold room', gel: [{ ...change('2026-07-02', 0.25), from: 'table' }] }),
        box('another-year', { gel: [change('2025-05-02', 9)] }),
      ],
      year,
    )
    expect(gel).toEqual({ putInKg: 1.75, takenOutKg: 0.6, changes: 3, takenOutUnwritten: 2, onlyInTable: 1 })
    expect(rooms.map(({ room, putInKg, boxes }) => [room, putInKg, boxes])).toEqual([
      ['Metal store', 1.5, 2],
      ['Cold room', 0.25, 1],
    ])
    expect(months).toHaveLength(24)
    expect(months.find(({ month }) => month === '2026-05')).toMatchObject({ putInKg: 1.5, unseen: 2 })
  })

  it('are overdue, likely or perhaps due, by when the gel is thought to be spent', () => {
    const dates = (early: string | null, likely: string | null) => ({
      renewOn: { early: early === null ? null : on(early), likely: likely === null ? null : on(likely) },
    })
    const { renewals, months } = storeReport(
      [
        box('far', dates('2029-01-01', '2030-01-01')),
        box('perhaps', dates('2027-10-01', '2028-04-01')),
        box('likely', dates('2026-12-01', '2027-04-01')),
        box('overdue', dates('2026-02-01', '2026-11-01')),
        box('never', dates(null, null)),
        box('untold'),
        box('nothing-limits', { limits: upTo(null), ...dates('2026-01-01', '2026-01-02') }),
      ],
      year,
    )
    expect(renewals.due.map(({ box: name, when }) => [name, when])).toEqual([
      ['overdue', 'overdue'],
      ['likely', 'likely'],
      ['perhaps', 'perhaps'],
    ])
    expect(renewals.untold).toEqual(['untold'])
    expect(months.filter(({ due }) => due > 0).map(({ month }) => month)).toEqual(['2027-04'])
  })
})

describe('finds at risk', () => {
  it('are those that lay in a box on a day on which it was over, by a logger or by a strip', () => {
    const lay = [
      { findId: 'stayed', from: null, to: null },
      { findId: 'left', from: null, to: on('2026-05-31') },
      { findId: 'came', from: on('2026-06-02'), to: null },
    ]
    const { atRisk, findsAtRisk, states } = storeReport(
      [
        box('quiet', { readings: [read('2026-06-01', 5, 10)] }),
        box('by-strip', { lay, readings: [read('2026-06-01', 20, 30), read('2026-06-09', 5, 10)] }),
        box('by-logger', {
          readings: [logged('2026-06-03', 5)],
          above: { hours: 41, worstRhPercent: 27, days: [on('2026-06-01'), on('2026-06-02')] },
        }),
      ],
      year,
    )
    expect(
      atRisk.map(({ box: name, state, findIds, hoursAbove, worstRhPercent }) => [
        name,
        state,
        findIds,
        hoursAbove,
        worstRhPercent,
      ]),
    ).toEqual([
      ['by-logger', 'in-band', ['f1', 'f2', 'f3'], 41, 27],
      ['by-strip', 'in-band', ['stayed'], 0, 20],
    ])
    expect(findsAtRisk).toBe(4)
    expect(states).toMatchObject({ over: [], 'in-band': ['quiet', 'by-strip', 'by-logger'] })
  })

  it('are not told of another year, or of a strip that leaves it open', () => {
    const { atRisk, restsOn, finds } = storeReport(
      [box('B', { readings: [read('2025-06-01', 20, 30), read('2026-06-01', 10, 15)] })],
      year,
    )
    expect(atRisk).toEqual([])
    expect(restsOn).toEqual({ strips: 1, loggerDays: 0, boxesRead: 1 })
    expect(finds).toBe(3)
  })
})
