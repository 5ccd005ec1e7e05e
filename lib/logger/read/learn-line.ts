import { msPerDay } from './civil.ts'
import { counted, literal, readFast, skipped, type DatePlace, type LineTemplate } from './fast-line.ts'
import type { DateOrder } from './log-answers.ts'
import { dateAt, wordsOf } from './next-day.ts'
import type { Layout } from './layout.ts'
import { numbersOnly, openStore, type Store } from './store.ts'

/** What the careful reading of a line found, for the template to be learnt from. */
export interface LineSeen {
  readonly store: Store
  readonly civilMs: number
  readonly offsetMinutes: number
  readonly dateForm: number
  readonly meridiem: boolean
  readonly order: DateOrder
  /** Values by slot. */
  readonly values: readonly number[]
}

interface Span {
  readonly from: number
  readonly to: number
}

/** Where the cells of a line stand, where each is bare or wholly within plain quotation marks; null otherwise. */
function spansOf(line: string, delimiter: string): readonly Span[] | null {
  const spans: Span[] = []
  if (delimiter === ' ') {
    for (const found of line.matchAll(/[^ ]+/g))
      spans.push({ from: found.index, to: found.index + found[0].length })
    return spans
  }
  let from = 0
  for (;;) {
    const next = line.indexOf(delimiter, from)
    const to = next === -1 ? line.length : next
    const cell = line.slice(from, to)
    if (cell.includes('"') && !/^ *"[^"]*" *$/.test(cell)) return null
    spans.push({ from, to })
    if (next === -1) return spans
    from = next + 1
  }
}

const clock = /(?<!\d)(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?(?!\d)/
const bytesOf = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0))
const delimiters: Readonly<Record<string, string>> = { spaces: ' ' }
/** Lines with anything else in them are always read with care. One letter here is one byte of the file. */
const printable = /^[\t -~\u0080-\u00ff]*$/

function stampColumns(layout: Layout): readonly [number, number] | null {
  const { stamp } = layout
  if (stamp.kind === 'whole') return [stamp.column, stamp.column]
  if (stamp.kind === 'counted') return [-1, -1]
  const first = Math.min(stamp.date, stamp.time)
  return Math.max(stamp.date, stamp.time) === first + 1 ? [first, first + 1] : null
}

const yearFirst = /^\D*(\d{4})([-/.]?)(\d{2})\2(\d{2})\D*$/
const yearLast = /^\D*(\d{2})([-/.])(\d{2})\2(\d{4}|\d{2})\D*$/

/** Where the date stands, if its numbers have a fixed width and mean the day that was read. */
function datePlace(head: string, seen: LineSeen): DatePlace | null {
  const numbers = (seen.dateForm & numbersOnly) !== 0
  const found = (numbers ? yearLast : yearFirst).exec(head)
  if (!found) return null
  const yearDigits = numbers ? (found[4]!.length as 2 | 4) : 4
  const place: DatePlace = {
    at: head.search(/\d/),
    numbers,
    order: seen.order,
    yearDigits,
    parted: found[2] !== '',
  }
  return dateAt(bytesOf(head), 0, place)?.day === Math.floor(seen.civilMs / msPerDay) ? place : null
}

function clockPart(line: string, spans: readonly Span[], columns: readonly [number, number], seen: LineSeen) {
  const none = { head: new Uint8Array(), words: new Int32Array(), behind: new Uint8Array(), date: null }
  if (columns[0] === -1) {
    return { ...none, baseMs: 0, seconds: false, fractionDigits: 0, twelveHours: false }
  }
  // A stamp of the first column begins where the line does, one of a later column right behind the mark before it.
  const from = columns[0] === 0 ? 0 : spans[columns[0] - 1]!.to + 1
  const to = columns[1] === spans.length - 1 ? spans[columns[1]]!.to : spans[columns[1]]!.to + 1
  const region = line.slice(from, to)
  const found = clock.exec(region)
  if (!found) return null
  const head = bytesOf(region.slice(0, found.index))
  const hour = Number(found[1])
  const fraction = found[4] ?? ''
  const part = fraction === '' ? 0 : Math.round((Number(fraction) / 10 ** fraction.length) * 1000)
  const printed =
    (((seen.meridiem ? hour % 12 : hour) * 60 + Number(found[2])) * 60 + Number(found[3] ?? 0)) * 1000 + part
  return {
    head,
    words: wordsOf(head),
    date: datePlace(region.slice(0, found.index), seen),
    behind: bytesOf(region.slice(found.index + found[0].length)),
    baseMs: seen.civilMs - printed,
    seconds: found[3] !== undefined,
    fractionDigits: fraction.length,
    twelveHours: seen.meridiem,
  }
}

/** The template that a line gives (its bytes as letters), tried on that line itself; null where its kind is only ever read with care. */
export function learnLine(line: string, layout: Layout, seen: LineSeen): LineTemplate | null {
  const delimiter = delimiters[layout.delimiter] ?? layout.delimiter
  const columns = stampColumns(layout)
  if (layout.pairedFrom !== null || delimiter.length !== 1 || columns === null || !printable.test(line))
    return null
  const spans = spansOf(line, delimiter)
  if (spans?.length !== layout.width) return null
  const stamp = clockPart(line, spans, columns, seen)
  if (!stamp) return null
  const slots = new Int32Array(layout.width).fill(skipped)
  const texts = spans.map(() => new Uint8Array())
  const quoted = new Uint8Array(layout.width)
  for (const column of layout.channelColumns) {
    slots[column] = literal
    texts[column] = bytesOf(line.slice(spans[column]!.from, spans[column]!.to).trimStart())
  }
  for (const [slot, { column }] of layout.values.entries()) {
    const cell = line.slice(spans[column]!.from, spans[column]!.to).trim()
    const behind = /^"?[+-]?\d+(?:[.,]\d+)?(\D*?)"?$/.exec(cell)
    slots[column] = slot
    quoted[column] = cell.startsWith('"') ? 1 : 0
    texts[column] = bytesOf(behind?.[1] ?? '')
  }
  if (layout.stamp.kind === 'counted') slots[layout.stamp.column] = counted
  const template: LineTemplate = {
    ...stamp,
    store: seen.store,
    offsetMinutes: seen.offsetMinutes,
    dateForm: seen.dateForm,
    delimiter: delimiter.charCodeAt(0),
    decimalMark: layout.decimalMark.charCodeAt(0),
    columns: layout.width,
    stampAt: columns[0],
    stampTo: columns[1],
    counts: layout.stamp.kind === 'counted' ? layout.stamp.counts : null,
    slots,
    texts,
    quoted,
    plain: layout.values.every(({ column }) => quoted[column] === 0 && texts[column]!.length === 0),
  }
  return fits(line, template, seen) ? template : null
}

/** The quick reading of the line it was learnt from must say what the careful one said. */
function fits(line: string, template: LineTemplate, seen: LineSeen): boolean {
  const bytes = new Uint8Array(line.length + 128)
  bytes.set(bytesOf(`${line}\n`))
  const store = openStore('', seen.store.slots, 1)
  const stop = readFast(bytes, new DataView(bytes.buffer), 0, line.length + 1, { ...template, store })
  return (
    stop === line.length + 1 &&
    store.civilMs[0] === seen.civilMs &&
    seen.values.every((value, slot) => Object.is(store.values[slot]![0], Math.fround(value)))
  )
}
