import { describe, expect, test } from 'vitest'
import type { IsoDate } from '../../lib/base/calendar.ts'
import {
  dueSentence,
  gelSentence,
  riskSentence,
  statesSentence,
  stockSentence,
} from '../../lib/wording/store-report.ts'
import { eventsSentence, movementsSentence, waterLine } from '../../lib/wording/store-report-events.ts'
import { gelRestLines, statesRestLines } from '../../lib/wording/store-report-rests.ts'

const on = (day: string) => day as IsoDate
const report = {
  from: on('2026-01-01'),
  to: on('2026-11-25'),
  ahead: on('2027-12-31'),
  boxes: 6,
  finds: 40,
  states: {
    'in-band': ['B1', 'B2'],
    over: ['B3'],
    'cannot-tell': [],
    'renewed-unread': ['B4'],
    'not-read': ['B5'],
    'no-limit': ['B6'],
  },
  hangsOnStrip: ['B1'],
  gel: { putInKg: 1.75, takenOutKg: 0.5, changes: 3, takenOutUnwritten: 2, onlyInTable: 1 },
  renewals: {
    done: [{ how: 'in-time' }, { how: 'late' }, { how: 'unseen' }],
    due: [{ when: 'overdue' }, { when: 'likely' }, { when: 'likely' }, { when: 'perhaps' }],
    untold: ['B5'],
  },
  atRisk: [
    { hoursAbove: 41, worstRhPercent: 27 },
    { hoursAbove: 0, worstRhPercent: 30 },
  ],
  findsAtRisk: 5,
  restsOn: { strips: 20, loggerDays: 300, boxesRead: 4 },
} as const

describe('a year of the store in sentences', () => {
  test('how the boxes stood', () => {
    expect(statesSentence(report)).toBe(
      'Of 6 boxes, tubs apart, 2 stood in band, 1 stood over what its finds bear, 1 has new gel and was not read since, 1 was not read and 1 holds nothing that asks for a humidity.',
    )
    expect(statesRestLines(report).join(' ')).toMatch(
      /20 strips and 300 days of loggers, in 4 of 6 boxes.*B1/,
    )
  })
  test('gel, renewals, and what falls due', () => {
    expect(gelSentence(report)).toBe(
      '1.8 kg of dry gel went in, in 3 renewals: 1 in time, 1 late and 1 of a box that nobody had read so that it could be told.',
    )
    expect(gelRestLines(report)[0]).toContain(
      '500 g of spent gel was taken out of 1; of the others nobody wrote it',
    )
    expect(dueSentence(report)).toBe(
      'Of 4 boxes whose renewal can be told, 1 was overdue on 25 November 2026 and 2 are likely to fall due by 31 December 2027, 1 more perhaps. Of 1 box more it cannot be told.',
    )
    expect(gelSentence({ ...report, gel: { ...report.gel, changes: 0 } })).toBe('No gel was renewed.')
    expect(
      dueSentence({ ...report, renewals: { ...report.renewals, untold: ['a', 'b', 'c', 'd', 'e'] } }),
    ).toBe('When gel falls due can be told of no box.')
  })
  test('finds at risk', () => {
    expect(riskSentence(report)).toBe(
      '5 finds in 2 boxes lay at some time in air they do not bear; loggers recorded 41 h of it; the worst was 30 %.',
    )
    expect(riskSentence({ ...report, atRisk: [] })).toBe('No reading was over what the finds bear.')
  })
  test('water, lids and movements', () => {
    expect(eventsSentence({ water: [], lids: [] })).toBe('No water came in; no lid was found loose.')
    const water = {
      on: on('2026-03-03'),
      room: 'Hall',
      cause: 'leak',
      boxes: ['B1', 'B2'],
      note: 'Pipe.',
    } as const
    expect(waterLine(water)).toBe('3 March 2026, Hall, by a leak: it reached B1 and B2. Pipe.')
    expect(waterLine({ ...water, boxes: null, note: '' })).toContain('nobody wrote which boxes it reached.')
    const out = [
      { days: 37, needsHumidity: true, to: null },
      { days: 90, needsHumidity: false, to: on('2026-05-01') },
    ]
    expect(movementsSentence(out)).toBe(
      'Finds were taken out 2 times: 37 days outside of their boxes for the one that asks for a humidity; 1 still out.',
    )
    expect(movementsSentence([])).toBe('No find was taken out.')
  })
  test('the stock, as far as somebody keeps it', () => {
    expect(stockSentence(12, null)).toBe('In stock today: 12 kg of dry gel.')
    expect(stockSentence(null, null)).toBe('')
  })
})
