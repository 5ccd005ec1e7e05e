import { everyBlock } from './blocks.ts'
import { openTally, printed } from './cell-tally.ts'
import type { ProblemBook } from './problem-book.ts'
import { lineOf, type Store } from './store.ts'
import { asCelsius, type Unit } from './units.ts'
import type { UnitsDecided } from './value-units.ts'

/** Above 100 % is condensation or a sensor a little off; beyond this it is no humidity. */
const dampest = 105
const coldest = -80
const warmest = 120

/** Most columns hold nothing out of range and no gap, and that is quickly seen. */
const isWithin = (column: Float32Array, count: number, low: number, high: number): boolean =>
  everyBlock(count, (from, to) => within(column, from, to, low, high))

function within(column: Float32Array, from: number, to: number, low: number, high: number): boolean {
  for (let at = from; at < to; at++) if (!(column[at]! >= low && column[at]! <= high)) return false
  return true
}

/** No step from one value to the next is longer than so much. */
function isSmooth(column: Float32Array, from: number, to: number, longest: number): boolean {
  let before = column[from]!
  for (let at = from + 1; at < to; at++) {
    const now = column[at]!
    if (now - before > longest || before - now > longest) return false
    before = now
  }
  return true
}

function checkHumidity(store: Store, slot: number, factor: number, book: ProblemBook): boolean {
  const column = store.values[slot]!
  if (factor === 1 && isWithin(column, store.count, 0, 100)) return false
  const tally = openTally(store, slot, book)
  for (let at = 0; at < store.count; at++) {
    const given = column[at]!
    const value = given * factor
    if (value >= 0 && value <= dampest) {
      if (value > 100) tally.add('humidity-over-100', at, value)
      if (factor !== 1) column[at] = value
    } else tally.refuse(at, given, 'humidity-out-of-range')
  }
  return tally.close()
}

function checkTemperature(store: Store, slot: number, unit: Unit, book: ProblemBook): boolean {
  const column = store.values[slot]!
  const plain = unit === 'celsius'
  if (plain && isWithin(column, store.count, coldest, warmest)) return false
  const tally = openTally(store, slot, book)
  for (let at = 0; at < store.count; at++) {
    const given = column[at]!
    const value = plain ? given : asCelsius(given, unit)
    if (value >= coldest && value <= warmest) {
      if (!plain) column[at] = value
    } else tally.refuse(at, given, 'temperature-out-of-range')
  }
  return tally.close()
}

/** Steady before, steady after, and between the two each goes on where the other stopped. */
function crosses(t: Float32Array, rh: Float32Array, at: number, last: number): boolean {
  const near = (a: number, b: number) => Math.abs(a - b) <= 2
  const before = Math.max(at - 2, 0)
  const after = Math.min(at + 1, last)
  return (
    near(t[at]!, rh[at - 1]!) &&
    near(rh[at]!, t[at - 1]!) &&
    near(t[at - 1]!, t[before]!) &&
    near(rh[at - 1]!, rh[before]!) &&
    near(t[at]!, t[after]!) &&
    near(rh[at]!, rh[after]!)
  )
}

/** Temperature and humidity that change places move by more than this [°C]. */
const longestStep = 10

/** Temperature and humidity that change places from one reading to the next: told, not mended. */
function checkSwap(store: Store, warm: number, damp: number, book: ProblemBook): void {
  const t = store.values[warm]!
  const rh = store.values[damp]!
  if (everyBlock(store.count, (from, to) => isSmooth(t, from, to, longestStep))) return
  let before = t[0]!
  for (let at = 1; at < store.count; at++) {
    const now = t[at]!
    if (Math.abs(now - before) > longestStep && crosses(t, rh, at, store.count - 1)) {
      book.note('columns-seem-swapped', lineOf(store, at), `${printed(now)} | ${printed(rh[at]!)}`)
    }
    before = now
  }
}

/** Takes out the moments of readings that hold no value at all; how many there were. */
function dropEmpty(store: Store): number {
  const [first, ...others] = store.values
  let dropped = 0
  for (let at = 0; at < store.count; at++) {
    if (!Number.isNaN(first![at]!) || others.some((column) => !Number.isNaN(column[at]!))) continue
    if (!Number.isNaN(store.civilMs[at]!)) dropped++
    store.civilMs[at] = Number.NaN
  }
  return dropped
}

/** Brings values into percent and °C, in place, and takes out what no sensor can have measured; the readings left empty. */
export function checkValues(store: Store, units: UnitsDecided, book: ProblemBook): number {
  let withGaps = 0
  for (const [slot, { quantity, unit, heading }] of store.slots.entries()) {
    if (quantity === 'humidity') {
      const fraction = unit === null && units.humidity.scale === 'fraction'
      if (fraction) book.note('humidity-as-fraction', null, heading, heading)
      if (checkHumidity(store, slot, fraction ? 100 : 1, book)) withGaps++
    } else {
      const given = unit ?? units.temperature.unit
      if (given === 'fahrenheit') book.note('read-as-fahrenheit', null, heading, heading)
      if (given === 'kelvin') book.note('read-as-kelvin', null, heading, heading)
      if (checkTemperature(store, slot, given, book)) withGaps++
    }
  }
  for (const [warm, slot] of store.slots.entries()) {
    const damp = store.slots.findIndex(
      (other) => other.quantity === 'humidity' && other.channel === slot.channel,
    )
    if (slot.quantity === 'temperature' && damp !== -1) checkSwap(store, warm, damp, book)
  }
  return withGaps === store.slots.length ? dropEmpty(store) : 0
}
