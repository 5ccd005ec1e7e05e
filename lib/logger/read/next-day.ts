import { dayNumber, fullYear, msPerDay } from './civil.ts'
import { betterOrder, noteDate, type OrderSeen } from './date-order.ts'
import type { DatePlace, LineTemplate } from './fast-line.ts'

export interface DateFound {
  readonly numbers: readonly [number, number, number]
  /** Days since 1970-01-01; NaN where there is no such day. */
  readonly day: number
}

function digits(bytes: Uint8Array, from: number, count: number): number {
  let number = 0
  for (let at = from; at < from + count; at++) {
    const digit = bytes[at]! - 48
    if (!(digit >= 0 && digit <= 9)) return Number.NaN
    number = number * 10 + digit
  }
  return number
}

/** The date of fixed width that stands in a line beginning at `from`; null where no digits stand there. */
export function dateAt(bytes: Uint8Array, from: number, place: DatePlace): DateFound | null {
  const first = from + place.at
  const step = place.parted ? 1 : 0
  const widths = place.numbers ? [2, 2, place.yearDigits] : [4, 2, 2]
  const a = digits(bytes, first, widths[0]!)
  const b = digits(bytes, first + widths[0]! + step, widths[1]!)
  const c = digits(bytes, first + widths[0]! + widths[1]! + 2 * step, widths[2]!)
  if (Number.isNaN(a + b + c)) return null
  if (!place.numbers) return { numbers: [a, b, c], day: dayNumber(a, b, c) }
  if (place.order === 'year-first') return { numbers: [a, b, c], day: dayNumber(fullYear(a, 2), b, c) }
  const year = fullYear(c, place.yearDigits)
  const day = place.order === 'day-first' ? dayNumber(year, b, a) : dayNumber(year, a, b)
  return { numbers: [a, b, c], day }
}

/** Four bytes at a time; the last four may overlap those before. */
export function wordsOf(head: Uint8Array): Int32Array {
  const view = new DataView(head.buffer, head.byteOffset, head.length)
  const words: number[] = []
  for (let at = 0; at < head.length - 4; at += 4) words.push(view.getInt32(at))
  if (head.length >= 4) words.push(view.getInt32(head.length - 4))
  return Int32Array.from(words)
}

/** The column's beginning in the line: the stamp may stand behind others. */
function stampFrom(bytes: Uint8Array, at: number, template: LineTemplate): number {
  let from = at
  for (let column = 0; column < template.stampAt; column++) {
    while (bytes[from] !== template.delimiter) {
      const byte = bytes[from]
      if (byte === undefined || byte === 10 || byte === 34) return -1
      from++
    }
    from++
  }
  return from
}

/**
 * The template with the date of the line at `at`, where nothing but the date differs before the time of day; null where that is
 * for the careful reading to judge. Dates of numbers alone are noted as evidence of their order, as every date is.
 */
export function nextDay(
  template: LineTemplate,
  bytes: Uint8Array,
  at: number,
  seen: OrderSeen,
): LineTemplate | null {
  const { date, head } = template
  if (!date || template.stampAt < 0) return null
  const from = stampFrom(bytes, at, template)
  if (from < 0 || from + head.length > bytes.length) return null
  const length = date.parted ? 6 + date.yearDigits : 8
  for (let w = 0; w < head.length; w++) {
    const dated = w >= date.at && w < date.at + length
    const expected = head[w]!
    const isDigit = expected >= 48 && expected <= 57
    if (!(dated && isDigit) && bytes[from + w] !== expected) return null
  }
  const now = dateAt(bytes, from, date)
  const before = dateAt(head, 0, date)
  if (!now || !before || Number.isNaN(now.day) || now.day === before.day) return null
  if (date.numbers) {
    noteDate(seen, { kind: 'numbers', numbers: now.numbers, yearLast: date.yearDigits === 4 })
    if (betterOrder(seen)) return null
  }
  const dated = bytes.slice(from, from + head.length)
  return {
    ...template,
    head: dated,
    words: wordsOf(dated),
    baseMs: template.baseMs + (now.day - before.day) * msPerDay,
  }
}
