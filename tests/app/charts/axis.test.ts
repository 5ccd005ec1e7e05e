import { describe, expect, test } from 'vitest'
import { numberScale, timeTicks } from '../../../lib/papers/store-axis.ts'
import { clockAt, instantOf } from '../../../lib/wording/chart-clock.ts'
import { instantWords, lastingWords, stretchWords } from '../../../lib/wording/chart-time.ts'

const at = (text: string) => Date.parse(text)
const london = 'Europe/London'

describe('clocks', () => {
  test('an instant and what the clock shows go both ways, in summer and in winter', () => {
    for (const text of ['2026-01-15T12:00:00Z', '2026-07-15T12:00:00Z', '2026-07-14T23:30:00Z']) {
      expect(instantOf(clockAt(at(text), london), london)).toBe(at(text))
    }
  })
  test('midnight is hour nought, and the day is that of the zone', () => {
    expect(clockAt(at('2026-07-14T23:00:00Z'), london)).toEqual({
      year: 2026,
      month: 7,
      day: 15,
      hour: 0,
      minute: 0,
    })
  })
  test('a time that the clocks skip is the one after the skip', () => {
    const skipped = instantOf({ year: 2026, month: 3, day: 29, hour: 1, minute: 30 }, london)
    expect(instantWords(skipped, london)).toBe('29 March 2026, 02:30')
  })
})

describe('ticks of time', () => {
  const ticks = (from: string, to: string, most: number, zone = london) =>
    timeTicks({ fromMs: at(from), toMs: at(to), zone }, most).map(({ words }) => words)
  test('a year is told in months, its turn by the year', () => {
    expect(ticks('2026-03-10T00:00:00Z', '2027-03-10T00:00:00Z', 6)).toEqual([
      'May',
      'Jul',
      'Sep',
      'Nov',
      '2027',
      'Mar',
    ])
  })
  test('a week is told in days that begin at midnight there, over the change of clocks too', () => {
    const found = timeTicks(
      { fromMs: at('2026-03-27T12:00:00Z'), toMs: at('2026-03-31T12:00:00Z'), zone: london },
      6,
    )
    expect(found.map(({ words }) => words)).toEqual(['28 Mar', '29 Mar', '30 Mar', '31 Mar'])
    expect(new Set(found.map((tick) => clockAt(tick.at, london).hour))).toEqual(new Set([0]))
  })
  test('a day is told in hours, midnight by the date', () => {
    expect(ticks('2026-01-10T20:00:00Z', '2026-01-11T13:00:00Z', 6)).toEqual([
      '21:00',
      '11 Jan',
      '03:00',
      '06:00',
      '09:00',
      '12:00',
    ])
  })
  test.each([2, 4, 6, 9])('never more than %i', (most) => {
    for (const days of [0.02, 0.3, 1, 3, 9, 40, 100, 400, 1500, 9000]) {
      const from = at('2020-05-17T09:13:00Z')
      const span = { fromMs: from, toMs: from + days * 86_400_000, zone: london }
      expect(timeTicks(span, most).length).toBeLessThanOrEqual(most + 1)
    }
  })
})

describe('scales of numbers', () => {
  test('round numbers around the values, never past what can be', () => {
    expect(numberScale([7.2, 27.4, 15], { least: 10, within: [0, 100] })).toEqual({
      from: 5,
      to: 30,
      ticks: [5, 10, 15, 20, 25, 30],
    })
    const full = numberScale([0, 100], { least: 10, within: [0, 100] })
    expect([full.from, full.to]).toEqual([0, 100])
  })
  test('a still line keeps some height', () => {
    const { from, to } = numberScale([12, 12], { least: 10, within: [0, 100] })
    expect(to - from).toBeGreaterThanOrEqual(10)
  })
})

describe('words of time', () => {
  test('a stretch names its day once', () => {
    expect(stretchWords(at('2026-03-14T13:00:00Z'), at('2026-03-14T19:00:00Z'), london)).toBe(
      '14 March 2026, 13:00 to 19:00',
    )
  })
  test('lasting: minutes, hours, days', () => {
    const hour = 3_600_000
    expect([0.5, 41, 76, 24 * 12].map((hours) => lastingWords(hours * hour))).toEqual([
      '30 min',
      '41 h',
      '3 days 4 h',
      '12 days',
    ])
  })
})
