import fc from 'fast-check'
import { afterEach, describe, expect, it } from 'vitest'
import { addDays } from '../../lib/base/calendar.ts'
import { calendarText, type CalendarEntry } from '../../lib/exchange/calendar.ts'
import { day } from '../database/samples.ts'
import { plainText, readCalendar, valueOf } from './calendar-lines.ts'

const madeAtMs = Date.UTC(2026, 10, 25, 9, 30)
const entry: CalendarEntry = {
  uid: 'b1-2026@quietmetal',
  on: day('2026-12-31'),
  summary: 'Gel of TW-B01',
  description: 'Metal store, shelf A1; 0.5 kg of dry gel.\nSafe until then, as far as can be told.',
}
const file = (...entries: readonly CalendarEntry[]) =>
  calendarText({ name: 'Tollgate Wharf: gel', madeAtMs, entries })

describe('a calendar file', () => {
  const zone = process.env['TZ']
  afterEach(() => {
    if (zone === undefined) delete process.env['TZ']
    else process.env['TZ'] = zone
  })

  it('keeps to the format and says what it was given', () => {
    const { flaws, own, events } = readCalendar(file(entry))
    expect(flaws).toEqual([])
    expect(valueOf(own, 'VERSION')).toBe('2.0')
    expect(valueOf(own, 'X-WR-CALNAME')).toBe('Tollgate Wharf: gel')
    const [event] = events
    expect(valueOf(event!, 'UID')).toBe('b1-2026@quietmetal')
    expect(valueOf(event!, 'DTSTAMP')).toBe('20261125T093000Z')
    expect(plainText(valueOf(event!, 'SUMMARY')!)).toBe(entry.summary)
    expect(plainText(valueOf(event!, 'DESCRIPTION')!)).toBe(entry.description)
  })

  it.each(['UTC', 'America/Los_Angeles', 'Pacific/Auckland', 'Europe/London'])(
    'has whole days, the same ones where the clock is that of %s',
    (place) => {
      process.env['TZ'] = place
      const [event, long] = readCalendar(
        file(entry, { ...entry, uid: 'x', on: day('2027-03-26'), until: day('2027-03-29') }),
      ).events
      const days = (of: typeof event) =>
        of!
          .filter(({ name }) => name.startsWith('DT') && name !== 'DTSTAMP')
          .map(({ name, params, value }) => `${name}${params}:${value}`)
      expect(days(event)).toEqual(['DTSTART;VALUE=DATE:20261231', 'DTEND;VALUE=DATE:20270101'])
      expect(days(long)).toEqual(['DTSTART;VALUE=DATE:20270326', 'DTEND;VALUE=DATE:20270330'])
    },
  )

  it('takes up nobody’s time and names nobody', () => {
    const text = file(entry)
    expect(valueOf(readCalendar(text).events[0]!, 'TRANSP')).toBe('TRANSPARENT')
    expect(text).not.toMatch(/ORGANIZER|ATTENDEE|CONTACT|mailto/i)
  })

  it('is the same for the same work, and replaces an earlier one', () => {
    expect(file(entry)).toBe(file(entry))
    const later = readCalendar(calendarText({ name: 'x', madeAtMs: madeAtMs + 90_000, entries: [entry] }))
      .events[0]!
    const earlier = readCalendar(file(entry)).events[0]!
    expect(valueOf(later, 'UID')).toBe(valueOf(earlier, 'UID'))
    expect(Number(valueOf(later, 'SEQUENCE'))).toBeGreaterThan(Number(valueOf(earlier, 'SEQUENCE')))
  })

  it('carries any text unharmed, in lines of 75 octets at most', () => {
    const words = fc.string({
      unit: fc.constantFrom(...'aZ9 ,;:\\"\n\u00e9\u20ac\ud83d\ude00\u0301\u200b=|'),
      maxLength: 200,
    })
    const sent = fc.record({ summary: words, description: words, days: fc.integer({ min: 0, max: 800 }) })
    fc.assert(
      fc.property(fc.array(sent, { minLength: 1, maxLength: 4 }), (given) => {
        const entries = given.map(({ summary, description, days }, at) => ({
          uid: `u${at}`,
          on: addDays(day('2026-01-01'), days),
          summary,
          description,
        }))
        const { flaws, events } = readCalendar(file(...entries))
        expect(flaws).toEqual([])
        events.forEach((event, at) => {
          expect(plainText(valueOf(event, 'SUMMARY')!)).toBe(entries[at]!.summary)
          expect(plainText(valueOf(event, 'DESCRIPTION') ?? '')).toBe(entries[at]!.description)
        })
      }),
    )
  })

  it('takes out what no calendar may hold', () => {
    const { flaws, events } = readCalendar(file({ ...entry, summary: 'bell\u0007, tab\t, return\r\nend' }))
    expect(flaws).toEqual([])
    expect(plainText(valueOf(events[0]!, 'SUMMARY')!)).toBe('bell , tab , return\nend')
  })
})

describe('the reader of calendars', () => {
  it('is not content with everything', () => {
    const good = file(entry)
    expect(readCalendar(good.replaceAll('\r\n', '\n')).flaws).not.toEqual([])
    expect(readCalendar(good.replace(/UID:.*\r\n/, '')).flaws).toContain('UID stands 0 times')
    expect(readCalendar(good.replace('SUMMARY:', `SUMMARY:${'x'.repeat(80)}`)).flaws.join()).toMatch(/octets/)
    expect(readCalendar(good.replace('END:VEVENT\r\n', '')).flaws).not.toEqual([])
    expect(readCalendar(calendarText({ name: 'x', madeAtMs, entries: [] })).flaws).toEqual(['no component'])
  })
})
