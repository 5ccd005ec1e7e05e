import type { LogProblemCode } from '../log-problem.ts'
import { countedMs, countsOf, type Layout } from './layout.ts'
import { readCell, type CellRead } from './number.ts'
import { readStamp, type StampText } from './stamp-text.ts'
import type { Slot } from './store.ts'
import { asCelsius, isTemperatureUnit, type Unit } from './units.ts'

export interface Remark {
  readonly code: LogProblemCode
  readonly found: string
  readonly column: string | null
}

export type RowRead =
  | {
      readonly kind: 'reading'
      readonly stamp: StampText | { readonly countedMs: number }
      /** By value column of the layout; NaN where there is none. */
      readonly values: readonly number[]
      readonly remarks: readonly Remark[]
    }
  /** A line of the table that gives no reading. */
  | { readonly kind: 'fault'; readonly remarks: readonly Remark[] }
  | { readonly kind: 'text' }

/** Words that open a line of sums below a table. */
const sums =
  /^\W*(?:min|max|avg|aver|mean|mittel|moy|media|sum|total|std|stand|count|anzahl|nombre|end|fin|stat|percent|range|number|limit|alarm)/i

function stampOf(
  cells: readonly string[],
  layout: Layout,
): StampText | { readonly countedMs: number } | null {
  const { stamp } = layout
  if (stamp.kind === 'whole') {
    const read = readStamp(cells[stamp.column] ?? '')
    return read?.date ? read : null
  }
  if (stamp.kind === 'split') {
    const date = readStamp(cells[stamp.date] ?? '')
    const time = readStamp(cells[stamp.time] ?? '')
    if (!date?.date || (!time?.clock && (cells[stamp.time] ?? '') !== '')) return null
    return {
      date: date.date,
      clock: time?.clock ?? date.clock,
      offsetMinutes: time?.offsetMinutes ?? date.offsetMinutes,
    }
  }
  const read = readCell(cells[stamp.column] ?? '')
  if (read.kind !== 'number' || countsOf(read.value) !== stamp.counts) return null
  return { countedMs: countedMs(read.value, stamp.counts) }
}

const fahrenheit = (celsius: number) => celsius * 1.8 + 32
const inUnit = (celsius: number, unit: Unit) =>
  unit === 'fahrenheit' ? fahrenheit(celsius) : unit === 'kelvin' ? celsius + 273.15 : celsius

/** A number with the unit that stands behind it, in the unit of its column; null where the unit is of something else. */
function inColumnUnit(value: number, unit: Unit | null, slot: Slot): number | null {
  if (unit === null || unit === slot.unit) return value
  if (slot.quantity === 'humidity') return unit === 'percent' ? value : null
  if (!isTemperatureUnit(unit) || slot.unit === null) return null
  return inUnit(asCelsius(value, unit), slot.unit)
}

interface ValueRead {
  readonly value: number
  readonly remarks: readonly Remark[]
}

function valueOf(read: CellRead, cell: string, slot: Slot, layout: Layout): ValueRead {
  const remark = (code: LogProblemCode, found = cell): Remark => ({ code, found, column: slot.heading })
  const none = (code: LogProblemCode): ValueRead => ({ value: Number.NaN, remarks: [remark(code)] })
  if (read.kind === 'empty') return { value: Number.NaN, remarks: [] }
  if (read.kind === 'gap') return none('sensor-error')
  if (read.kind === 'formula') return none('formula-cell')
  if (read.kind === 'unit-unknown') return none('wrong-unit')
  if (read.kind === 'text') return none('value-unreadable')
  const value = inColumnUnit(read.value, read.unit, slot)
  if (value === null) return none('wrong-unit')
  const remarks: Remark[] = []
  if (read.mark !== null && read.mark !== layout.decimalMark) remarks.push(remark('decimal-marks-mixed'))
  if (read.thousands) remarks.push(remark('thousands-marks'))
  return { value, remarks }
}

function stampRemarks(
  stamp: StampText,
  text: string,
): { readonly faults: readonly Remark[]; readonly notes: readonly Remark[] } {
  const remark = (code: LogProblemCode): Remark => ({ code, found: text, column: null })
  if (stamp.date?.kind === 'day' && Number.isNaN(stamp.date.day)) {
    return { faults: [remark('date-does-not-exist')], notes: [] }
  }
  if (stamp.clock && Number.isNaN(stamp.clock.ms))
    return { faults: [remark('time-does-not-exist')], notes: [] }
  const notes = stamp.clock?.special
    ? [remark(stamp.clock.special)]
    : stamp.clock
      ? []
      : [remark('stamp-without-time')]
  return { faults: [], notes }
}

export function stampCells(cells: readonly string[], layout: Layout): string {
  const { stamp } = layout
  if (stamp.kind === 'split') return `${cells[stamp.date] ?? ''} ${cells[stamp.time] ?? ''}`.trim()
  return cells[stamp.column] ?? ''
}

/** One line of a table, already parted into cells. */
export function readRow(cells: readonly string[], layout: Layout): RowRead {
  const stamp = stampOf(cells, layout)
  const reads = layout.values.map(({ column }) => readCell(cells[column] ?? ''))
  const text = stampCells(cells, layout)
  if (!stamp) {
    if (!reads.some(({ kind }) => kind === 'number') || sums.test(text)) return { kind: 'text' }
    if (cells.length < 2) return { kind: 'text' }
    const code = text === '' ? 'stamp-missing' : 'stamp-unreadable'
    return {
      kind: 'fault',
      remarks: [{ code, found: text === '' ? cells.join(' ').trim() : text, column: null }],
    }
  }
  const values = layout.values.map((slot, at) => valueOf(reads[at]!, cells[slot.column] ?? '', slot, layout))
  const said = 'countedMs' in stamp ? { faults: [], notes: [] } : stampRemarks(stamp, text)
  if (said.faults.length > 0) return { kind: 'fault', remarks: said.faults }
  const remarks: Remark[] = [...said.notes, ...values.flatMap(({ remarks }) => remarks)]
  if (cells.length < layout.width && layout.values.some(({ column }) => column >= cells.length)) {
    remarks.push({ code: 'too-few-cells', found: cells.join(' | '), column: null })
  }
  const beyond = cells.slice(layout.width).filter((cell) => cell !== '')
  if (beyond.length > 0) remarks.push({ code: 'too-many-cells', found: cells.join(' | '), column: null })
  return { kind: 'reading', stamp, values: values.map(({ value }) => value), remarks }
}
