import { msPerDay } from './civil.ts'
import { betterOrder, defer, noteDate, turnRound } from './date-order.ts'
import { learnLine } from './learn-line.ts'
import { stampCells, type Remark, type RowRead } from './read-row.ts'
import { civilMs, dayUnder, dateOrders, type StampText } from './stamp-text.ts'
import {
  makeRoom,
  missingIsTold,
  nextIs,
  numbersOnly,
  runsIntoNextDay,
  shortYear,
  type Store,
} from './store.ts'
import { keepTemplate, shallLearn, storeOf } from './tables.ts'
import type { WalkState } from './walk-state.ts'

type Reading = Extract<RowRead, { kind: 'reading' }>

interface Moment {
  readonly civilMs: number
  readonly offsetMinutes: number
  readonly dateForm: number
}

function dateForm(stamp: StampText): number {
  const { date, clock } = stamp
  if (!date) return 0
  const numbers = date.kind === 'numbers'
  const short = numbers ? !date.yearLast : date.shortYear
  return (
    (numbers ? numbersOnly : 0) |
    (short ? shortYear : 0) |
    ((clock?.ms ?? 0) >= msPerDay ? runsIntoNextDay : 0)
  )
}

/** The day of a stamp under the order in use, which it may overthrow. */
function dayOf(state: WalkState, stamp: StampText): number {
  const date = stamp.date!
  if (date.kind === 'numbers') noteDate(state.order, date)
  const better = date.kind === 'numbers' ? betterOrder(state.order) : null
  if (better) {
    for (const table of state.tables) {
      for (const store of table.stores.values()) turnRound(store, state.order.order, better)
    }
    state.order.order = better
    state.templates.list.length = 0
    state.templates.after.length = 0
    state.templates.current = -1
  }
  return dayUnder(date, state.order.order)
}

function momentOf(state: WalkState, stamp: Reading['stamp']): Moment {
  if ('countedMs' in stamp) {
    const { stamp: place } = state.table.layout
    const local = place.kind === 'counted' && place.counts === 'days'
    return { civilMs: stamp.countedMs, offsetMinutes: local ? Number.NaN : 0, dateForm: 0 }
  }
  return {
    civilMs: civilMs(dayOf(state, stamp), stamp.clock),
    offsetMinutes: stamp.offsetMinutes ?? Number.NaN,
    dateForm: dateForm(stamp),
  }
}

/** No order makes a day of it; under another it would be one, so that it may wait for the order to change. */
const neverADay = (stamp: StampText) =>
  stamp.date?.kind !== 'numbers' || dateOrders.every((order) => Number.isNaN(dayUnder(stamp.date!, order)))

function storeFor(state: WalkState, cells: readonly string[]): Store | null {
  const { layout, serials } = state.table
  const sensor = layout.channelColumns
    .map((column) => cells[column] ?? '')
    .join(' ')
    .trim()
  if (layout.serialColumn !== null) serials.set(sensor, cells[layout.serialColumn] ?? '')
  return storeOf(state.table, sensor, layout.channelColumns.length === 0 ? state.capacity : 1024)
}

const isRemarked = (reading: Reading, state: WalkState) => {
  const { stamp } = reading
  const mixed = 'countedMs' in stamp || !stamp.clock ? false : stamp.clock.meridiem !== state.twelveHours
  return { mixed, any: mixed || reading.remarks.length > 0 }
}

/** Puts a reading into its store; false where its date is no day. `bytes` is its line, for the quick reading to learn from. */
export function takeReading(
  state: WalkState,
  line: number,
  cells: readonly string[],
  reading: Reading,
  bytes: string | null,
): boolean {
  const store = storeFor(state, cells)
  if (!store) {
    state.book.note('too-many-sensors', line, cells.join(' | '))
    state.unreadable++
    return false
  }
  const { stamp } = reading
  const moment = momentOf(state, stamp)
  const dateless = Number.isNaN(moment.civilMs)
  if (dateless && !('countedMs' in stamp) && neverADay(stamp)) {
    state.book.note('date-does-not-exist', line, stampCells(cells, state.table.layout))
    state.unreadable++
    return false
  }
  const { mixed, any } = isRemarked(reading, state)
  if (mixed) state.book.note('clocks-mixed', line, stampCells(cells, state.table.layout))
  for (const { code, found, column } of reading.remarks) state.book.note(code, line, found, column)
  state.waiting.beforeReading()
  makeRoom(store)
  nextIs(store, line, moment.offsetMinutes, moment.dateForm)
  store.civilMs[store.count] = moment.civilMs
  for (const [slot, value] of reading.values.entries()) {
    store.values[slot]![store.count] = value
    const { heading } = store.slots[slot]!
    const isTold = ({ code, column }: Remark) =>
      column === heading || code === 'too-few-cells' || code === 'line-cut-short'
    if (Number.isNaN(value) && reading.remarks.some(isTold)) {
      missingIsTold(store, slot, store.count)
    }
  }
  if (dateless && !('countedMs' in stamp) && stamp.date?.kind === 'numbers') {
    defer(store, store.count, stamp.date.numbers, stamp.date.yearLast, stamp.clock?.ms ?? 0)
  }
  store.count++
  if (state.quick && bytes !== null && !any && !dateless && shallLearn(state.templates)) {
    const meridiem = 'countedMs' in stamp ? false : (stamp.clock?.meridiem ?? false)
    const template = learnLine(bytes, state.table.layout, {
      store,
      ...moment,
      meridiem,
      order: state.order.order,
      values: reading.values,
    })
    if (template) keepTemplate(state.templates, template)
  }
  return true
}
