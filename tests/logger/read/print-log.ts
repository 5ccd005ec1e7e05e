import { Temporal } from 'temporal-polyfill'
import type { DrawnForm, DrawnReading } from './drawn-log.ts'

const two = (number: number) => String(number).padStart(2, '0')
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']

interface Civil {
  readonly year: number
  readonly month: number
  readonly day: number
  readonly hour: number
  readonly minute: number
  readonly offset: string
}

function civil(atMs: number, zone: DrawnForm['zone']): Civil {
  const name = zone === 'stamped-z' ? 'UTC' : zone === 'stamped-offset' ? 'Europe/Berlin' : zone
  const { year, month, day, hour, minute, offset } =
    Temporal.Instant.fromEpochMilliseconds(atMs).toZonedDateTimeISO(name)
  return { year, month, day, hour, minute, offset }
}

function date({ year, month, day }: Civil, form: DrawnForm['date']): string {
  switch (form) {
    case 'iso':
    case 'iso-t':
      return `${year}-${two(month)}-${two(day)}`
    case 'dots':
      return `${two(day)}.${two(month)}.${year}`
    case 'slash-day':
      return `${day}/${month}/${year}`
    case 'slash-month':
      return `${two(month)}/${two(day)}/${year}`
    case 'year-slash':
      return `${year}/${month}/${day}`
    case 'named':
      return `${two(day)}-${months[month - 1]}-${year}`
    case 'squeezed':
      return `${year}${two(month)}${two(day)}`
  }
}

function clock({ hour, minute }: Civil, form: DrawnForm['clock']): string {
  if (form === 'half-days')
    return `${hour % 12 === 0 ? 12 : hour % 12}:${two(minute)}:00 ${hour < 12 ? 'AM' : 'PM'}`
  return `${two(hour)}:${two(minute)}:00${form === 'fractions' ? '.000' : ''}`
}

const words = {
  english: {
    date: 'Date',
    time: 'Time',
    stamp: 'Date/Time',
    temperature: 'Temperature',
    humidity: 'Relative humidity',
  },
  german: {
    date: 'Datum',
    time: 'Uhrzeit',
    stamp: 'Zeitstempel',
    temperature: 'Temperatur',
    humidity: 'rel. Feuchte',
  },
  french: {
    date: 'Date',
    time: 'Heure',
    stamp: 'Horodatage',
    temperature: 'Température',
    humidity: 'Humidité relative',
  },
} as const

const scaled = (count: number, decimals: number, mark: string) =>
  (count / 10 ** decimals).toFixed(decimals).replace('.', mark)

/** Temperatures are drawn in hundredths: rounded to what the form prints. */
export const printedTemperature = (hundredths: number, { temperatureDecimals }: DrawnForm): number =>
  Math.round(hundredths / 10 ** (2 - temperatureDecimals))

function cells(reading: DrawnReading, form: DrawnForm, at: number): readonly string[] {
  const local = civil(reading.atMs, form.zone)
  const suffix = form.zone === 'stamped-z' ? 'Z' : form.zone === 'stamped-offset' ? local.offset : ''
  const day = date(local, form.date)
  const time = `${clock(local, form.clock)}${suffix && form.clock === 'half-days' ? ' ' : ''}${suffix}`
  const stamp = form.twoColumns ? [day, time] : [`${day}${form.date === 'iso-t' ? 'T' : ' '}${time}`]
  const value = (count: number | null, decimals: number, unit: string) =>
    count === null
      ? form.missing
      : `${scaled(count, decimals, form.decimalMark)}${form.unitsBehind ? ` ${unit}` : ''}`
  const { temperature } = reading
  return [
    ...(form.counter ? [String(at + 1)] : []),
    ...stamp,
    value(
      temperature === null ? null : printedTemperature(temperature, form),
      form.temperatureDecimals,
      form.fahrenheit ? '°F' : '°C',
    ),
    value(reading.humidity, 1, '%RH'),
  ]
}

function headings(form: DrawnForm): readonly string[] {
  const names = words[form.headings]
  const units = form.unitsBehind ? ['', ''] : [form.fahrenheit ? ' [°F]' : ' [°C]', ' [%]']
  return [
    ...(form.counter ? ['#'] : []),
    ...(form.twoColumns ? [names.date, names.time] : [names.stamp]),
    names.temperature + units[0],
    names.humidity + units[1],
  ]
}

const windows = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0))

function encoded(text: string, encoding: DrawnForm['encoding']): Uint8Array {
  if (encoding === 'windows-1252') return windows(text)
  if (encoding === 'utf-16le') return new Uint8Array(Buffer.from(`\ufeff${text}`, 'utf16le'))
  return new TextEncoder().encode(encoding === 'utf-8-mark' ? `\ufeff${text}` : text)
}

/** The file that a logger of this form would write. */
export function printLog(readings: readonly DrawnReading[], form: DrawnForm): Uint8Array {
  const line = (row: readonly string[]) =>
    row.map((cell) => (form.quoted ? `"${cell}"` : cell)).join(form.delimiter)
  const lines = [
    ...(form.block ? ['Logger: stores, east wall', 'Serial number: 40417', 'Interval: 10 min', ''] : []),
    line(headings(form)),
    ...readings.map((reading, at) => line(cells(reading, form, at))),
    ...(form.footer ? ['', 'End of data'] : []),
  ]
  return encoded(lines.map((text) => text + form.lineEnd).join(''), form.encoding)
}
