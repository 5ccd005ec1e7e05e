import { civilDay, dayNumber, fullYear, msPerDay } from './civil.ts'
import type { DateOrder } from './log-answers.ts'
import { runsIntoNextDay, numbersOnly, shortYear, type Store } from './store.ts'
import { eachRun } from './runs.ts'
import { dateOrders, dayUnder, type DateText } from './stamp-text.ts'

/**
 * The order of the numbers in dates is decided over the whole column: until something decides it, dates are kept under the
 * order presumed and turned round when the presumption falls.
 */
export interface OrderSeen {
  order: DateOrder
  /** How many dates (a day counted once while it lasts) are no day under each order. */
  readonly misses: Record<DateOrder, number>
  dates: number
  lastDate: string
  /** Years of two digits only: then the year may stand first. */
  yearMayLead: boolean
}

export const orderPresumed = (order: DateOrder): OrderSeen => ({
  order,
  misses: { 'day-first': 0, 'month-first': 0, 'year-first': 0 },
  dates: 0,
  lastDate: '',
  yearMayLead: true,
})

export type NumberDate = Extract<DateText, { kind: 'numbers' }>

/** Takes note of a date. A day counts once while it lasts. */
export function noteDate(seen: OrderSeen, date: NumberDate): void {
  const text = date.numbers.join('.')
  if (text === seen.lastDate) return
  const possible = dateOrders.filter((order) => !Number.isNaN(dayUnder(date, order)))
  if (possible.length === 0) return
  seen.lastDate = text
  seen.dates++
  if (date.yearLast) seen.yearMayLead = false
  for (const order of dateOrders) if (!possible.includes(order)) seen.misses[order]++
}

/** The order that misses least, where the one in use misses more than twice as much: turning round stays rare that way. */
export function betterOrder(seen: OrderSeen): DateOrder | null {
  const least = dateOrders.reduce((a, b) => (seen.misses[b] < seen.misses[a] ? b : a))
  const now = seen.misses[seen.order]
  return now > 2 * seen.misses[least] ? least : null
}

/** The three numbers as they were written, from the day they were taken for. */
export function numbersOf(day: number, order: DateOrder, short: boolean): [number, number, number] {
  const { year, month, day: ofMonth } = civilDay(day)
  const written = short ? year % 100 : year
  if (order === 'year-first') return [written, month, ofMonth]
  return order === 'day-first' ? [ofMonth, month, written] : [month, ofMonth, written]
}

function dayOf(numbers: readonly [number, number, number], order: DateOrder, yearLast: boolean): number {
  const [first, second, third] = numbers
  if (order === 'year-first') return yearLast ? Number.NaN : dayNumber(fullYear(first, 2), second, third)
  const year = fullYear(third, yearLast ? 4 : 2)
  return order === 'day-first' ? dayNumber(year, second, first) : dayNumber(year, first, second)
}

/** Readings of a date that no order explained are kept as numbers, up to this many a store. */
const mostDeferred = 200_000

/** Reads the dates of a store that were numbers only under another order; what has no meaning under it waits. */
export function turnRound(store: Store, from: DateOrder, to: DateOrder): void {
  const waiting = store.deferred
  store.deferred = []
  const { civilMs } = store
  eachRun(store.dateForms, store.count, (start, end, form) => {
    if ((form & numbersOnly) === 0) return
    const short = (form & shortYear) !== 0
    const late = (form & runsIntoNextDay) === 0 ? 0 : msPerDay
    let lastDay = Number.NaN
    let turned = Number.NaN
    let numbers: [number, number, number] = [0, 0, 0]
    for (let at = start; at < end; at++) {
      const ms = civilMs[at]! - late
      if (Number.isNaN(ms)) continue
      const day = Math.floor(ms / msPerDay)
      if (day !== lastDay) {
        lastDay = day
        numbers = numbersOf(day, from, short)
        turned = dayOf(numbers, to, !short)
      }
      const clockMs = ms - day * msPerDay + late
      civilMs[at] = turned * msPerDay + clockMs
      if (Number.isNaN(turned)) defer(store, at, numbers, !short, clockMs)
    }
  })
  for (const held of waiting) {
    const day = dayOf(held.numbers, to, held.yearLast)
    if (Number.isNaN(day)) store.deferred.push(held)
    else civilMs[held.place] = day * msPerDay + held.clockMs
  }
}

export function defer(
  store: Store,
  place: number,
  numbers: readonly [number, number, number],
  yearLast: boolean,
  clockMs: number,
): void {
  if (store.deferred.length < mostDeferred) store.deferred.push({ place, numbers, yearLast, clockMs })
}
