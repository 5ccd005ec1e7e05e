import { civilText, msPerDay } from './civil.ts'
import { everyBlock } from './blocks.ts'
import type { ProblemBook } from './problem-book.ts'
import { lineOf, type Store } from './store.ts'

/** Clocks that were never set, or lost their battery, show years that no logger file is from. */
const earliest = Date.UTC(1990, 0, 1)
const latest = Date.UTC(2080, 0, 1)

/** What one look at the stamps of a store shows: most files are in order, and need no second look. */
export interface StampSpan {
  readonly first: number
  readonly last: number
  readonly forward: number
  readonly backward: number
  readonly longestStep: number
}

/** The longest step of stamps that rise all the way; -1: they do not. */
function longestRise(civilMs: Float64Array, from: number, to: number, longest: number): number {
  let before = civilMs[from]!
  let most = longest
  for (let at = from + 1; at < to; at++) {
    const ms = civilMs[at]!
    const step = ms - before
    if (!(step > 0)) return -1
    if (step > most) most = step
    before = ms
  }
  return most
}

/** Files in order, which are the most, are looked through quickly; null: this one is not. */
function risingSpan({ civilMs, count }: Store): StampSpan | null {
  let longestStep = 0
  const rising = everyBlock(count, (from, to) => {
    longestStep = longestRise(civilMs, from, to, longestStep)
    return longestStep >= 0
  })
  if (!rising || count === 0 || Number.isNaN(civilMs[0]!)) return null
  return { first: civilMs[0]!, last: civilMs[count - 1]!, forward: count - 1, backward: 0, longestStep }
}

export function spanOf(store: Store): StampSpan {
  const rising = risingSpan(store)
  if (rising) return rising
  const { civilMs, count } = store
  let first = Number.POSITIVE_INFINITY
  let last = Number.NEGATIVE_INFINITY
  let forward = 0
  let backward = 0
  let longestStep = 0
  let before = Number.NaN
  for (let at = 0; at < count; at++) {
    const ms = civilMs[at]!
    const step = ms - before
    if (step > 0) {
      forward++
      if (step > longestStep) longestStep = step
    } else if (step < 0) backward++
    if (ms < first) first = ms
    if (ms > last) last = ms
    if (!Number.isNaN(ms)) before = ms
  }
  return { first, last, forward, backward, longestStep }
}

/** Takes out readings whose clock was not set; how many there were. */
function dropUnsetClock(store: Store, book: ProblemBook): number {
  const { civilMs, count } = store
  let first = -1
  let dropped = 0
  for (let at = 0; at < count; at++) {
    const ms = civilMs[at]!
    if (!(ms < earliest || ms >= latest)) continue
    if (dropped++ === 0) first = at
  }
  if (dropped === 0) return 0
  book.note('clock-not-set', lineOf(store, first), civilText(civilMs[first]!), null, dropped)
  for (let at = first; at < count; at++) {
    if (civilMs[at]! < earliest || civilMs[at]! >= latest) civilMs[at] = Number.NaN
  }
  return dropped
}

/** Stamps later than the day the file was handed over; they are kept. */
export function tellFuture(store: Store, receivedAtMs: number | null, book: ProblemBook): void {
  if (receivedAtMs === null) return
  const limit = receivedAtMs + msPerDay
  let first = -1
  let later = 0
  for (let at = 0; at < store.count; at++) if (store.civilMs[at]! > limit && later++ === 0) first = at
  if (later > 0) {
    book.note('stamps-in-future', lineOf(store, first), civilText(store.civilMs[first]!), null, later)
  }
}

/** Newest first in the file: turned round, so that everything after sees time run forward. */
function turnNewestFirst(store: Store, book: ProblemBook): void {
  const { civilMs, count } = store
  book.note('newest-first', lineOf(store, 0), civilText(civilMs[0]!))
  civilMs.subarray(0, count).reverse()
  for (const column of store.values) column.subarray(0, count).reverse()
  store.reversed = true
}

export interface ClockChecked {
  readonly dropped: number
  /** Null: the stamps were changed since they were looked at. */
  readonly span: StampSpan | null
}

/** Clocks that were not set, and files that begin with their newest reading. */
export function checkClock(store: Store, book: ProblemBook): ClockChecked {
  const span = spanOf(store)
  const dropped = span.first < earliest || span.last >= latest ? dropUnsetClock(store, book) : 0
  const { forward, backward } = dropped > 0 ? spanOf(store) : span
  const turned = backward > 2 * forward
  if (turned) turnNewestFirst(store, book)
  return { dropped, span: dropped > 0 || turned ? null : span }
}
