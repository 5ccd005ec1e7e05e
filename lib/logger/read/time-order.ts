import { civilText, msPerDay } from './civil.ts'
import { spanOf, type StampSpan } from './clock-range.ts'
import { sortPlaces } from './merge-runs.ts'
import type { ProblemBook } from './problem-book.ts'
import { lineOf, type Store } from './store.ts'

/** Readings in the order of time, each moment once. */
export interface Ordered {
  readonly atMs: Float64Array
  readonly values: readonly Float32Array[]
  readonly repeated: number
  readonly disagreeing: number
  readonly backward: number
}

/** Places that have a moment. */
function datedPlaces(store: Store): Uint32Array {
  const { civilMs: atMs, count } = store
  const places = new Uint32Array(count)
  let kept = 0
  for (let at = 0; at < count; at++) if (!Number.isNaN(atMs[at]!)) places[kept++] = at
  return places.subarray(0, kept)
}

/** A moment told twice: each fills in what the other lacks; where both say something they may differ. */
function complete(
  values: readonly Float32Array[],
  into: number,
  from: number,
): 'same' | 'filled' | 'differs' {
  let told: 'same' | 'filled' | 'differs' = 'same'
  for (const column of values) {
    const kept = column[into]!
    const other = column[from]!
    if (Number.isNaN(other) || other === kept) continue
    if (Number.isNaN(kept)) {
      column[into] = other
      if (told === 'same') told = 'filled'
    } else told = 'differs'
  }
  return told
}

interface Thinned {
  readonly places: Uint32Array
  readonly dropped: Uint8Array
  readonly repeats: readonly number[]
  readonly disagreements: readonly number[]
}

/** Each moment once: the first of the file is kept. Lists hold first place and number. */
function eachOnce(sorted: Uint32Array, store: Store): Thinned {
  const { civilMs: atMs, values } = store
  const dropped = new Uint8Array(store.count)
  const repeats = [-1, 0]
  const disagreements = [-1, 0]
  let kept = 0
  for (let at = 0; at < sorted.length; at++) {
    const place = sorted[at]!
    const before = kept > 0 ? sorted[kept - 1]! : -1
    if (before === -1 || atMs[before]! !== atMs[place]!) {
      sorted[kept++] = place
      continue
    }
    const told = complete(values, before, place)
    dropped[place] = 1
    if (told === 'filled') continue
    const tally = told === 'differs' ? disagreements : repeats
    if (tally[1]!++ === 0 || place < tally[0]!) tally[0] = place
  }
  return { places: sorted.subarray(0, kept), dropped, repeats, disagreements }
}

/** Steps against time, as the file has them; readings that only repeat others are no such steps. */
function tellSteps(places: Uint32Array, dropped: Uint8Array, store: Store, book: ProblemBook): number {
  const { civilMs: atMs } = store
  const small = { at: -1, count: 0 }
  const large = { at: -1, count: 0 }
  let backward = 0
  for (let at = 1; at < places.length; at++) {
    const step = atMs[places[at]!]! - atMs[places[at - 1]!]!
    if (step >= 0) continue
    backward++
    if (dropped[places[at]!] === 1) continue
    const tally = step < -msPerDay ? large : small
    if (tally.count++ === 0) tally.at = at
  }
  for (const [code, { at, count }] of [
    ['stamps-backward', small],
    ['clock-set-back', large],
  ] as const) {
    if (count === 0) continue
    const found = `${civilText(atMs[places[at - 1]!]!)} → ${civilText(atMs[places[at]!]!)}`
    book.note(code, lineOf(store, places[at]!), found, null, count)
  }
  return backward
}

/** A leap of more than a year is told: a gap so long, or a clock set wrongly. */
const longLeap = 366 * msPerDay

function tellLeaps(store: Store, book: ProblemBook): void {
  const { civilMs: atMs, count } = store
  let last = Number.NaN
  for (let at = 0; at < count; at++) {
    const ms = atMs[at]!
    if (ms - last > longLeap)
      book.note('clock-jumps-ahead', lineOf(store, at), `${civilText(last)} → ${civilText(ms)}`)
    if (!Number.isNaN(ms)) last = ms
  }
}

const gathered = <Column extends Float32Array | Float64Array>(
  column: Column,
  places: Uint32Array,
  into: Column,
) => {
  for (let at = 0; at < places.length; at++) into[at] = column[places[at]!]!
  return into
}

export function inTimeOrder(store: Store, known: StampSpan | null, book: ProblemBook): Ordered {
  const { count } = store
  const { forward, longestStep } = known ?? spanOf(store)
  if (longestStep > longLeap) tellLeaps(store, book)
  if (forward === count - 1) {
    const atMs = store.civilMs.subarray(0, count)
    const values = store.values.map((column) => column.subarray(0, count))
    return { atMs, values, repeated: 0, disagreeing: 0, backward: 0 }
  }
  const places = datedPlaces(store)
  const thinned = eachOnce(sortPlaces(places.slice(), store.civilMs), store)
  const backward = tellSteps(places, thinned.dropped, store, book)
  const [firstRepeat, repeated] = thinned.repeats as [number, number]
  const [firstOther, disagreeing] = thinned.disagreements as [number, number]
  const at = (place: number) => (place < 0 ? '' : `${civilText(store.civilMs[place]!)} UTC`)
  if (repeated > 0) book.note('reading-repeated', lineOf(store, firstRepeat), at(firstRepeat), null, repeated)
  if (disagreeing > 0) {
    const code = thinned.places.length === 1 ? 'all-in-one-moment' : 'readings-disagree'
    book.note(code, lineOf(store, firstOther), at(firstOther), null, disagreeing)
  }
  const length = thinned.places.length
  const atMs = gathered(store.civilMs, thinned.places, new Float64Array(length))
  const values = store.values.map((column) => gathered(column, thinned.places, new Float32Array(length)))
  return { atMs, values, repeated, disagreeing, backward }
}
