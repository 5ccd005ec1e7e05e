import { dayNumber, fullYear, msPerDay } from './civil.ts'
import type { DateOrder } from './log-answers.ts'
import { monthOf } from './month-names.ts'

export const dateOrders = ['day-first', 'month-first', 'year-first'] as const satisfies readonly DateOrder[]

/** A date as it is written, before anybody knows which number is the day. */
export type DateText =
  | {
      readonly kind: 'day'
      /** Days since 1970-01-01; NaN where the calendar has no such day. */
      readonly day: number
      readonly written: 'year-first' | 'month-named'
      readonly shortYear: boolean
    }
  | {
      readonly kind: 'numbers'
      readonly numbers: readonly [number, number, number]
      /** The third has four digits, so it is the year. */
      readonly yearLast: boolean
    }

export interface ClockText {
  /** Since midnight [ms]; NaN where there is no such time. */
  readonly ms: number
  readonly meridiem: boolean
  readonly hour: number
  readonly special: 'hour-24' | 'leap-second' | null
}

export interface StampText {
  readonly date: DateText | null
  readonly clock: ClockText | null
  readonly offsetMinutes: number | null
}

interface Taken<Value> {
  readonly value: Value
  readonly rest: string
}

const weekday =
  /^(?:mon?|tue?s?|wed|thur?s?|fri?|sat?|sun?|mo|di|mi|do|fr|sa|so|lun|mar|mer|jeu|ven|sam|dim)[a-z]{0,7}\.?,?\s+(?=\d|[a-z]{3})/i
const yearFirst = /^(\d{4})\s?([-/._ ])\s?(\d{1,2})\s?\2\s?(\d{1,2})(?!\d)/
const threeNumbers = /^(\d{1,2})\s?([-/.])\s?(\d{1,2})\s?\2\s?(\d{4}|\d{2})(?!\d)/
const dayMonthYear = /^(\d{1,2})(?:st|nd|rd|th|\.)?[\s/-]*(\p{L}{3,10})\.?[\s/.,-]*(\d{4}|\d{2})(?!\d)/u
const monthDayYear = /^(\p{L}{3,10})\.?[\s/-]*(\d{1,2})(?:st|nd|rd|th)?[\s/,-]+(\d{4}|\d{2})(?!\d)/u
const yearMonthDay = /^(\d{4})[\s/-]*(\p{L}{3,10})\.?[\s/-]*(\d{1,2})(?!\d)/u
const squeezedDate = /^((?:19|20)\d{2})(\d{2})(\d{2})(?!\d)/
const squeezed = /^((?:19|20)\d{2})(\d{2})(\d{2})[T _-]?(\d{2})(\d{2})(\d{2})?(?![\d:.])/

function named(year: string, month: string, day: string, rest: string): Taken<DateText> | null {
  const number = monthOf(month)
  if (number === null) return null
  const days = dayNumber(fullYear(Number(year), year.length), number, Number(day))
  return { value: { kind: 'day', day: days, written: 'month-named', shortYear: year.length < 4 }, rest }
}

function takeDate(text: string): Taken<DateText> | null {
  const first = yearFirst.exec(text) ?? squeezedDate.exec(text)
  if (first) {
    const [month, dayOfMonth] = first.slice(-2)
    const day = dayNumber(Number(first[1]), Number(month), Number(dayOfMonth))
    return {
      value: { kind: 'day', day, written: 'year-first', shortYear: false },
      rest: text.slice(first[0].length),
    }
  }
  const three = threeNumbers.exec(text)
  if (three) {
    const numbers = [Number(three[1]), Number(three[3]), Number(three[4])] as const
    const yearLast = three[4]!.length === 4
    const value: DateText = { kind: 'numbers', numbers, yearLast }
    // 10.30.00 is a time of day: no order of it is a day.
    if (!yearLast && three[2] === '.' && dateOrders.every((order) => Number.isNaN(dayUnder(value, order))))
      return null
    return { value, rest: text.slice(three[0].length) }
  }
  const dayNamed = dayMonthYear.exec(text)
  if (dayNamed) return named(dayNamed[3]!, dayNamed[2]!, dayNamed[1]!, text.slice(dayNamed[0].length))
  const monthNamed = monthDayYear.exec(text)
  if (monthNamed)
    return named(monthNamed[3]!, monthNamed[1]!, monthNamed[2]!, text.slice(monthNamed[0].length))
  const year = yearMonthDay.exec(text)
  return year && named(year[1]!, year[2]!, year[3]!, text.slice(year[0].length))
}

const clock =
  /^(\d{1,2})(?:[:h](\d{2})|\.(\d{2})(?=\.\d{2}|$|\s))(?:[:.m](\d{2})s?)?(?:[.,](\d{1,9}))?(?!\d)(?:\s*(am|pm|a\.\s?m\.|p\.\s?m\.|a|p)(?![a-z]))?/i
const bareHour = /^(\d{1,2})\s*(am|pm)(?![a-z])/i

function clockText(
  hour: number,
  minute: number,
  second: number,
  fraction: string,
  meridiem: string | undefined,
): ClockText {
  const half = meridiem?.[0]?.toLowerCase()
  const twelve = half === undefined || hour < 1 || hour > 12 ? hour : (hour % 12) + (half === 'p' ? 12 : 0)
  const part = fraction === '' ? 0 : Math.round((Number(fraction) / 10 ** fraction.length) * 1000)
  const ms = ((twelve * 60 + minute) * 60 + second) * 1000 + part
  const base = { meridiem: half !== undefined, hour }
  if (twelve === 24 && minute === 0 && second === 0 && part === 0) return { ...base, ms, special: 'hour-24' }
  if (minute === 59 && second === 60) return { ...base, ms, special: 'leap-second' }
  return { ...base, ms: twelve > 23 || minute > 59 || second > 59 ? Number.NaN : ms, special: null }
}

function takeClock(text: string): Taken<ClockText> | null {
  const found = clock.exec(text)
  if (found) {
    const value = clockText(
      Number(found[1]),
      Number(found[2] ?? found[3]),
      Number(found[4] ?? 0),
      found[5] ?? '',
      found[6],
    )
    return { value, rest: text.slice(found[0].length) }
  }
  const bare = bareHour.exec(text)
  return bare && { value: clockText(Number(bare[1]), 0, 0, '', bare[2]), rest: text.slice(bare[0].length) }
}

/** Abbreviations that mean one offset wherever loggers print them beside a stamp [min]. */
const abbreviations: ReadonlyMap<string, number> = new Map([
  ...['z', 'utc', 'gmt', 'ut', 'wet'].map((name) => [name, 0] as const),
  ...['cet', 'mez', 'bst', 'west', 'hnec'].map((name) => [name, 60] as const),
  ...['cest', 'mesz', 'eet', 'oez', 'haec'].map((name) => [name, 120] as const),
  ...['eest', 'oesz'].map((name) => [name, 180] as const),
  ['est', -300],
  ['edt', -240],
  ['cdt', -300],
  ['mst', -420],
  ['pst', -480],
  ['pdt', -420],
])
const zone = /^\s*\(?\s*([a-z]{1,4})?\s*(?:([+-])(\d{1,2})(?::?(\d{2}))?)?\s*\)?\s*(?:\[[\w/+-]+\])?$/i

/** Minutes east of Greenwich of what stands behind a stamp; undefined where it is no offset, null where nothing stands. */
export function offsetOf(text: string): number | null | undefined {
  if (text.trim() === '') return null
  const found = zone.exec(text)
  if (!found || (found[1] === undefined && found[2] === undefined)) return undefined
  const from = found[1] === undefined ? 0 : abbreviations.get(found[1].toLowerCase())
  if (from === undefined) return undefined
  if (found[2] === undefined) return from
  const minutes = Number(found[3]) * 60 + Number(found[4] ?? 0)
  return minutes > 18 * 60 ? undefined : from + (found[2] === '-' ? -minutes : minutes)
}

const between = /^(?:\s*[T_,;@|-]\s*|\s+(?:at|um|a)\s+|\s+)(?=\d)/i

function squeezedStamp(text: string): StampText | null {
  const found = squeezed.exec(text)
  if (!found) return null
  const day = dayNumber(Number(found[1]), Number(found[2]), Number(found[3]))
  const offset = offsetOf(text.slice(found[0].length))
  if (offset === undefined) return null
  const clock = clockText(Number(found[4]), Number(found[5]), Number(found[6] ?? 0), '', undefined)
  return {
    date: { kind: 'day', day, written: 'year-first', shortYear: false },
    clock,
    offsetMinutes: offset,
  }
}

/** A date, a time of day, or both in either order, with nothing else in the text; null otherwise. */
export function readStamp(text: string): StampText | null {
  const bare = text.trim()
  if (bare.length < 4 || bare.length > 60) return null
  const rest = bare.replace(weekday, '')
  const joined = squeezedStamp(rest)
  if (joined) return joined
  const date = takeDate(rest)
  if (date) {
    const clock = takeClock(date.rest.replace(between, ''))
    const offset = offsetOf(clock ? clock.rest : date.rest)
    if (offset === undefined) return null
    return { date: date.value, clock: clock?.value ?? null, offsetMinutes: offset }
  }
  const clock = takeClock(rest)
  if (!clock) return null
  const later = takeDate(clock.rest.replace(/^[\s,]+/, ''))
  const offset = offsetOf(later ? later.rest : clock.rest)
  return offset === undefined
    ? null
    : { date: later?.value ?? null, clock: clock.value, offsetMinutes: offset }
}

/** The day of the calendar under an order of its numbers; NaN where there is none. */
export function dayUnder(date: DateText, order: DateOrder): number {
  if (date.kind === 'day') return date.day
  const [first, second, third] = date.numbers
  if (order === 'year-first') return date.yearLast ? Number.NaN : dayNumber(fullYear(first, 2), second, third)
  const year = fullYear(third, date.yearLast ? 4 : 2)
  return order === 'day-first' ? dayNumber(year, second, first) : dayNumber(year, first, second)
}

/** Since 1970-01-01 on the clock of the logger [ms]; a leap second and hour 24 run into the next day. */
export const civilMs = (day: number, clock: ClockText | null): number => day * msPerDay + (clock?.ms ?? 0)
