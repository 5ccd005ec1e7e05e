import ical, { ICalCalendarMethod, ICalEventTransparency } from 'ical-generator'
import type { IsoDate } from '../base/calendar.ts'

/** Something to be done on one day, or in the days up to `until`, that included. */
export interface CalendarEntry {
  /** The same for the same piece of work, whenever the calendar leaves: read in again, it replaces what was there. */
  readonly uid: string
  readonly on: IsoDate
  readonly until?: IsoDate
  readonly summary: string
  readonly description: string
}

export interface CalendarFile {
  readonly name: string
  /** When this was made [ms since 1970-01-01 UTC]; a later file replaces an earlier one. */
  readonly madeAtMs: number
  readonly entries: readonly CalendarEntry[]
}

/** An iCalendar file (RFC 5545): whole days that take up nobody's time, no people, no places of people. */
export function calendarText({ name, madeAtMs, entries }: CalendarFile): string {
  const calendar = ical({
    name: printable(name),
    prodId: { company: 'Quietmetal', product: 'Store', language: 'EN' },
    method: ICalCalendarMethod.PUBLISH,
  })
  for (const { uid, on, until = on, summary, description } of entries) {
    const event = calendar.createEvent({
      id: uid,
      start: midnight(on),
      end: nextMidnight(until),
      allDay: true,
      stamp: new Date(madeAtMs),
      // Programs keep the entry with the higher number; minutes only ever rise.
      sequence: Math.floor(madeAtMs / 60_000),
      summary: printable(summary),
      transparency: ICalEventTransparency.TRANSPARENT,
    })
    if (description !== '') event.description(printable(description))
  }
  return `${calendar.toString()}\r\n`
}

/** Text as the format allows it: no control signs but the end of a line. */
const printable = (text: string): string =>
  // oxlint-disable-next-line no-control-regex -- these are the signs to be taken out
  text.replace(/\r\n?/g, '\n').replace(/[\u0000-\u0009\u000b-\u001f\u007f]/g, ' ')

/** The library writes days as they are at Greenwich. */
const midnight = (day: IsoDate): Date => new Date(`${day}T00:00:00Z`)
const nextMidnight = (day: IsoDate): Date => new Date(midnight(day).getTime() + 86_400_000)
