import { describe, expect, test } from 'vitest'
import { civilDay, dayNumber } from '../../../lib/logger/read/civil.ts'
import type { DateOrder } from '../../../lib/logger/read/log-answers.ts'
import { civilMs, dayUnder, offsetOf, readStamp } from '../../../lib/logger/read/stamp-text.ts'

function shown(text: string, order: DateOrder = 'day-first'): string | null {
  const stamp = readStamp(text)
  if (!stamp) return null
  const ms = stamp.date ? civilMs(dayUnder(stamp.date, order), stamp.clock) : (stamp.clock?.ms ?? Number.NaN)
  const offset = stamp.offsetMinutes === null ? '' : ` ${stamp.offsetMinutes}`
  return Number.isNaN(ms)
    ? 'none'
    : new Date(ms)
        .toISOString()
        .replace(/:00\.000Z$/, '')
        .replace('.000Z', '') + offset
}

describe('a stamp', () => {
  test.each([
    ['2024-05-06T07:08:09Z', '2024-05-06T07:08:09 0'],
    ['2024-05-06 07:08', '2024-05-06T07:08'],
    ['2024/5/6 7:08', '2024-05-06T07:08'],
    ['20240506 0708', '2024-05-06T07:08'],
    ['20240506T070809Z', '2024-05-06T07:08:09 0'],
    ['20240506 07:08:09', '2024-05-06T07:08:09'],
    ['20240506', '2024-05-06T00:00'],
    ['6.5.2024, 07:08', '2024-05-06T07:08'],
    ['6. 5. 24 7.08.09', '2024-05-06T07:08:09'],
    ['06/05/2024 07:08:09.250', '2024-05-06T07:08:09.250Z'],
    ['06/05/2024 07:08:09,5', '2024-05-06T07:08:09.500Z'],
    ['06/05/2024 07:08:09 PM', '2024-05-06T19:08:09'],
    ['06/05/2024 12:08 a.m.', '2024-05-06T00:08'],
    ['06/05/2024 7 pm', '2024-05-06T19:00'],
    ['Mon 6 May 2024 07:08', '2024-05-06T07:08'],
    ['6th May 2024 07:08', '2024-05-06T07:08'],
    ['May 6, 2024 07:08', '2024-05-06T07:08'],
    ['2024-May-06 07:08', '2024-05-06T07:08'],
    ['06-MAI-24 07:08', '2024-05-06T07:08'],
    ['1 févr. 2024 07h08', '2024-02-01T07:08'],
    ['1 juillet 2024 07:08', '2024-07-01T07:08'],
    ['1. Dezember 2024 um 07:08', '2024-12-01T07:08'],
    ['07:08:09 06/05/2024', '2024-05-06T07:08:09'],
    ['2024-05-06 07:08 +02:00', '2024-05-06T07:08 120'],
    ['2024-05-06 07:08 -0330', '2024-05-06T07:08 -210'],
    ['2024-05-06 07:08 CEST', '2024-05-06T07:08 120'],
    ['2024-05-06 07:08 (UTC+1)', '2024-05-06T07:08 60'],
    ['2024-05-06T07:08:09+01:00[Europe/London]', '2024-05-06T07:08:09 60'],
    ['2016-12-31T23:59:60Z', '2017-01-01T00:00 0'],
    ['2024-02-29 24:00', '2024-03-01T00:00'],
    ['2023-02-29 07:00', 'none'],
    ['2024-05-06 24:01', 'none'],
    ['2024-05-06 07:60', 'none'],
    ['31/06/2024 07:00', 'none'],
  ])('%s', (text, expected) => {
    expect(shown(text)).toBe(expected)
  })

  test.each([
    '21.5',
    '45,2',
    '1714978800',
    '',
    'May',
    'Box 5 2024',
    '2024-05-06 07:00 lost',
    '2024-05-06 07:00 EAST',
    '5',
    '12-34',
    '99999999',
  ])('is none: %j', (text) => {
    expect(shown(text)).toBeNull()
  })

  test('of numbers is read in the order that is said', () => {
    expect(shown('05/06/2024 07:00', 'day-first')).toBe('2024-06-05T07:00')
    expect(shown('05/06/2024 07:00', 'month-first')).toBe('2024-05-06T07:00')
    expect(shown('05/06/07 07:00', 'year-first')).toBe('2005-06-07T07:00')
    expect(shown('05/13/2024 07:00', 'day-first')).toBe('none')
    expect(shown('05/06/2024 07:00', 'year-first')).toBe('none')
  })

  test('has an offset only where one stands', () => {
    expect(offsetOf('')).toBeNull()
    expect(offsetOf(' Z')).toBe(0)
    expect(offsetOf('+19:00')).toBeUndefined()
    expect(offsetOf('%')).toBeUndefined()
  })
})

describe('days since 1970', () => {
  test('are those of the calendar, there and back', () => {
    for (let day = dayNumber(1969, 1, 1); day < dayNumber(2101, 3, 2); day++) {
      const { year, month, day: ofMonth } = civilDay(day)
      expect(Date.UTC(year, month - 1, ofMonth)).toBe(day * 86_400_000)
      if (dayNumber(year, month, ofMonth) !== day) expect.unreachable(`${year}-${month}-${ofMonth}`)
    }
  })
})
