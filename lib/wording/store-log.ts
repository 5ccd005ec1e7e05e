import type { LogQuestion } from '../logger/read/log-answers.ts'
import type { LogForm } from '../logger/read/log-form.ts'
import type { IsoDate } from '../base/calendar.ts'
import { numberWords } from './band.ts'
import { instantDayWords } from './chart-time.ts'
import { dayWords } from './day.ts'
import { countWords } from './list.ts'

type Ask = LogQuestion['about']

/** What is asked of a file that leaves it open, once. */
export const logAskWords: Readonly<Record<Ask, string>> = {
  'date-order': 'In which order are its dates written?',
  'time-zone': 'By which clock were they written?',
  'temperature-unit': 'Is its temperature in °C or °F?',
  'humidity-scale': 'Is its humidity in % or in parts of one?',
  columns: 'What stands in its columns?',
}

const because: Readonly<Record<LogQuestion['because'], string>> = {
  'both-orders-fit': 'Every date in it is a date in either order.',
  'stamps-contradict': 'Its dates fit no one order.',
  'hour-skipped-or-repeated':
    'An hour is missing in spring or stands there twice in autumn: its clock was changed.',
  'no-hour-skipped':
    'It runs over a change of the clocks and neither skips nor repeats an hour: its clock was left alone.',
  'cannot-tell': 'Nothing in it tells of the clock.',
  'named-in-heading': 'Its heading names a clock that several places share.',
  'not-a-zone': 'What was answered is no clock that is known here.',
  'no-unit-and-warm': 'It names no unit, and the figures would be hot for °C.',
  'no-unit-and-none-above-one': 'It names no unit, and no figure is above one.',
  'no-headings': 'It has no headings.',
  'headings-not-known': 'Its headings are not known here.',
}

export const logBecauseWords = (question: LogQuestion): string => because[question.because]

export const dateOrderWords = {
  'day-first': 'day, month, year',
  'month-first': 'month, day, year',
  'year-first': 'year, month, day',
} as const

/** A date read by one order, and what it is by the other: `3 April 2026, or 4 March 2026`. Null: it is no such date. */
export function eitherDateWords(read: string): string | null {
  const found = /^(\d{4})-(\d{2})-(\d{2})/.exec(read)
  const [, year, month, day] = found ?? []
  // Both can be a month, or nobody would ask.
  if (year === undefined || Number(day) > 12) return null
  const words = (date: string) => dayWords(date as IsoDate)
  return `${words(`${year}-${month}-${day}`)}, or ${words(`${year}-${day}-${month}`)}`
}

export const temperatureUnitWords = {
  celsius: 'degrees Celsius, °C',
  fahrenheit: 'degrees Fahrenheit, °F',
} as const

export const humidityScaleWords = { percent: 'per cent, 0 to 100', fraction: 'parts of one, 0 to 1' } as const

export const columnUseWords = {
  stamp: 'date and time',
  date: 'date',
  time: 'time',
  temperature: 'temperature',
  humidity: 'relative humidity',
  channel: 'which sensor',
  'not-read': 'something else: leave it out',
} as const

interface ChannelSpan {
  readonly readings: number
  readonly withHumidity: number
  readonly fromMs: number | null
  readonly toMs: number | null
}

/** What a channel brings: `9,412 readings, 3 March 2026 to 10 June 2026`. */
export function channelWords({ readings, withHumidity, fromMs, toMs }: ChannelSpan, zone: string): string {
  if (readings === 0 || fromMs === null || toMs === null) return 'no readings'
  const humid =
    withHumidity === readings ? '' : `, ${withHumidity.toLocaleString('en-GB')} of them with a humidity`
  return `${countWords(readings, 'reading')}${humid}, ${instantDayWords(fromMs, zone)} to ${instantDayWords(toMs, zone)}`
}

/** How the file was understood, so that a person can trust it or not. */
export function logFormWords({
  delimiter,
  decimalMark,
  dates,
  timeZone,
  temperature,
  humidity,
}: LogForm): readonly string[] {
  const columns = {
    ',': 'commas',
    ';': 'semicolons',
    '\t': 'tabs',
    '|': 'upright strokes',
    spaces: 'spaces',
    cells: 'cells',
  }[delimiter]
  const order = dates.order === null ? 'counted from a fixed day' : dateOrderWords[dates.order]
  return [
    `Columns parted by ${columns}, decimal ${decimalMark === ',' ? 'comma' : 'point'}.`,
    `Dates: ${order} (${howWords[dates.how]}).`,
    `Clock: ${timeZone.zone} (${howWords[timeZone.how]}).`,
    `Temperature in ${{ celsius: '°C', fahrenheit: '°F', kelvin: 'K' }[temperature.unit]} (${howWords[temperature.how]}); humidity in ${humidity.scale === 'percent' ? '%' : 'parts of one'} (${howWords[humidity.how]}).`,
  ]
}

const howWords = {
  'year-stands-first': 'the year stands first',
  'month-named': 'the month is named',
  'day-above-12': 'a day above 12 tells',
  'order-of-readings': 'the readings follow each other so',
  answered: 'as answered',
  assumed: 'supposed',
  counted: 'counted',
  'in-stamps': 'it stands in the stamps',
  'in-heading': 'it stands in the heading',
  'clock-not-changed': 'the clock was not changed',
  'behind-values': 'it stands behind the values',
  'by-values': 'the values tell',
} as const

interface Kept {
  readonly alreadyThere: boolean
  readonly readAnew: boolean
  readonly readingsAdded: number
  readonly conflicts: number
  readonly newLoggers: readonly string[]
}

/** What became of a file. */
export function logKeptWords({ alreadyThere, readAnew, readingsAdded, conflicts, newLoggers }: Kept): string {
  if (alreadyThere) return 'This file is kept already; nothing was changed.'
  const said = [
    readAnew ? 'Read anew with these answers' : `${countWords(readingsAdded, 'reading')} kept`,
    ...(conflicts === 0
      ? []
      : [`${countWords(conflicts, 'moment')} told otherwise by an earlier file, which stays`]),
    ...(newLoggers.length === 0 ? [] : [`${newLoggers.join(', ')} entered in the register`]),
  ]
  return `${said.join('; ')}.`
}

export const floorWords = (floor: number | undefined): string =>
  floor === undefined ? 'not written down' : `${numberWords(floor)} %`
