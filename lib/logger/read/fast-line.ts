import { countedMs, type Counts } from './layout.ts'
import type { DateOrder } from './log-answers.ts'
import type { Store } from './store.ts'

/** Where a date of fixed width stands in what precedes the time of day. */
export interface DatePlace {
  /** First of its bytes. */
  readonly at: number
  /** Numbers only, in this order. */
  readonly numbers: boolean
  readonly order: DateOrder
  readonly yearDigits: 2 | 4
  /** A mark stands between the numbers. */
  readonly parted: boolean
}

/**
 * What the bytes of a regular line look like, learnt from one that was read with care. Everything but the time of day, the
 * numbers and the columns not read must stand there byte for byte; a line that differs is read with care again.
 */
export interface LineTemplate {
  readonly store: Store
  readonly offsetMinutes: number
  readonly dateForm: number
  readonly delimiter: number
  readonly decimalMark: number
  readonly columns: number
  /** First column of the stamp; -1 where it is counted. */
  readonly stampAt: number
  /** Last column of the stamp. */
  readonly stampTo: number
  readonly counts: Counts | null
  /** What stands before the time of day: the bytes, and four at a time, of which the last four may overlap. */
  readonly head: Uint8Array
  readonly words: Int32Array
  readonly date: DatePlace | null
  /** The moment, less the time of day as printed [ms]. */
  readonly baseMs: number
  readonly seconds: boolean
  readonly fractionDigits: number
  readonly twelveHours: boolean
  /** What stands between the time of day and the next column. */
  readonly behind: Uint8Array
  /** For each column: where its values go, or what else it is. */
  readonly slots: Int32Array
  /** For each column: what stands behind its number, or what it must hold. */
  readonly texts: readonly Uint8Array[]
  readonly quoted: Uint8Array
  /** No value has a unit behind it or quotation marks about it. */
  readonly plain: boolean
}

export const skipped = -1
export const counted = -2
export const literal = -3

const powers = [1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9]
/** Numbers of more digits are not exact as they are built up here. */
const mostDigits = 15
/** Bytes that a look ahead may touch beyond a line's own. */
const ahead = 48

const lineFeed = 10
const carriageReturn = 13
const tab = 9
const space = 32
const quote = 34
const plus = 43
const minus = 45
const colon = 58

/**
 * Reads lines from `at` on into the store as long as they fit the template and there is room; returns where the first line
 * begins that does not. `end` is where a line ends. One function, and long, because every byte of a large file passes here.
 */
export function readFast(
  bytes: Uint8Array,
  view: DataView,
  at: number,
  end: number,
  template: LineTemplate,
): number {
  const { store, columns, stampAt, stampTo, head, words, baseMs, seconds, twelveHours, behind } = template
  const { delimiter, counts, fractionDigits, slots, texts, quoted, plain } = template
  const { civilMs, values } = store
  const decimal = template.decimalMark - 48
  const room = civilMs.length
  const headLength = head.length
  const lastWord = headLength - 4
  const behindLength = behind.length
  const last = columns - 1
  const headTo = bytes.length - headLength
  const safeEnd = Math.min(end, headTo - ahead)
  let count = store.count
  line: while (at < safeEnd && count < room) {
    let p = at
    for (let k = 0; k < columns; k++) {
      if (k === stampAt) {
        if (p > headTo) break line
        if (lastWord >= 0) {
          for (let w = 0; w < lastWord; w += 4) if (view.getInt32(p + w) !== words[w >> 2]) break line
          if (view.getInt32(p + lastWord) !== words[words.length - 1]) break line
        } else {
          for (let w = 0; w < headLength; w++) if (bytes[p + w] !== head[w]) break line
        }
        p += headLength
        let hour = bytes[p++]! - 48
        if (hour < 0 || hour > 9) break line
        const unit = bytes[p]! - 48
        if (unit >= 0 && unit <= 9) {
          hour = hour * 10 + unit
          p++
        }
        const ten = bytes[p + 1]! - 48
        const one = bytes[p + 2]! - 48
        if (bytes[p] !== colon || hour > 23 || ten < 0 || ten > 5 || one < 0 || one > 9) break line
        if (twelveHours) {
          if (hour < 1 || hour > 12) break line
          hour %= 12
        }
        let ms = (hour * 60 + ten * 10 + one) * 60_000
        p += 3
        if (seconds) {
          const ten = bytes[p + 1]! - 48
          const one = bytes[p + 2]! - 48
          if (bytes[p] !== colon || ten < 0 || ten > 5 || one < 0 || one > 9) break line
          ms += (ten * 10 + one) * 1000
          p += 3
          if (fractionDigits > 0) {
            let part = 0
            const mark = bytes[p++]
            if (mark !== 46 && mark !== 44) break line
            for (let w = 0; w < fractionDigits; w++) {
              const digit = bytes[p++]! - 48
              if (digit < 0 || digit > 9) break line
              part = part * 10 + digit
            }
            ms += Math.round((part / powers[fractionDigits]!) * 1000)
          }
        }
        civilMs[count] = baseMs + ms
        for (let w = 0; w < behindLength; w++) if (bytes[p + w] !== behind[w]) break line
        p += behindLength
        k = stampTo
        continue
      }
      const slot = slots[k]!
      let c = bytes[p]!
      while (c === space) c = bytes[++p]!
      if (slot === skipped) {
        while (c !== delimiter && c !== lineFeed && c !== carriageReturn) {
          if (c === quote || c > 126 || (c < space && c !== tab)) break line
          c = bytes[++p]!
        }
      } else if (slot === literal) {
        const text = texts[k]!
        for (let w = 0; w < text.length; w++) if (bytes[p++] !== text[w]) break line
      } else {
        const inQuotes = !plain && quoted[k] === 1
        if (inQuotes) {
          if (c !== quote) break line
          c = bytes[++p]!
        }
        const negative = c === minus
        const signed = negative || c === plus
        if (signed) c = bytes[++p]!
        let mantissa = c - 48
        if (mantissa >= 0 && mantissa <= 9) {
          const from = p
          c = bytes[++p]! - 48
          while (c >= 0 && c <= 9) {
            mantissa = mantissa * 10 + c
            c = bytes[++p]! - 48
          }
          let number = mantissa
          if (c === decimal) {
            const point = ++p
            c = bytes[p]! - 48
            while (c >= 0 && c <= 9) {
              mantissa = mantissa * 10 + c
              c = bytes[++p]! - 48
            }
            const digits = p - point
            if (digits === 0 || digits > 9) break line
            number = mantissa / powers[digits]!
          }
          if (p - from > mostDigits) break line
          if (negative) number = -number
          if (slot >= 0) values[slot]![count] = number
          else civilMs[count] = countedMs(number, counts!)
          if (!plain) {
            const unit = texts[k]!
            for (let w = 0; w < unit.length; w++) if (bytes[p++] !== unit[w]) break line
            if (inQuotes && bytes[p++] !== quote) break line
          }
          if (delimiter !== space) while (bytes[p] === space) p++
        } else {
          // An empty cell is a value that is missing; a sign or a word is for the careful reading.
          if (slot === counted || !plain || signed) break line
          if (c !== delimiter && c !== lineFeed && c !== carriageReturn) break line
          values[slot]![count] = Number.NaN
        }
      }
      if (k < last && bytes[p++] !== delimiter) break line
    }
    while (bytes[p] === space) p++
    if (bytes[p] === carriageReturn) p++
    if (bytes[p++] !== lineFeed) break
    count++
    at = p
  }
  store.count = count
  return at
}
