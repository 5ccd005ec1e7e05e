import { noRuns, runAt, runFrom, type Runs } from './runs.ts'
import type { Unit } from './units.ts'

export type Quantity = 'temperature' | 'humidity'

/** Where the values of one column go. */
export interface Slot {
  readonly quantity: Quantity
  readonly channel: string
  readonly unit: Unit | null
  readonly heading: string
}

/** How the date of a stretch of readings was written, as bits: what a later change of the date order must know. */
export const numbersOnly = 1
export const shortYear = 2
export const runsIntoNextDay = 4

/**
 * Readings as they come, in the order of the file, with the stamps as the logger's own clock shows them. Columns are longer
 * than what was read; only the first `count` places mean anything.
 */
export interface Store {
  readonly channel: string
  readonly slots: readonly Slot[]
  civilMs: Float64Array
  values: Float32Array[]
  count: number
  /** Line of the file less place of the reading. */
  readonly lines: Runs
  /** Minutes east of Greenwich where the stamps say it; NaN where they do not. */
  readonly offsets: Runs
  readonly dateForms: Runs
  /** Readings whose date has no meaning under the order in use: place and numbers. Their stamp is NaN until it has one. */
  deferred: DeferredDate[]
  /** For each slot the places whose value is missing for a reason that was told, up to a number. */
  readonly told: readonly Set<number>[]
  /** Newest first in the file: turned round since. */
  reversed: boolean
}

export interface DeferredDate {
  readonly place: number
  readonly numbers: readonly [number, number, number]
  readonly yearLast: boolean
  readonly clockMs: number
}

export function openStore(channel: string, slots: readonly Slot[], capacity: number): Store {
  return {
    channel,
    slots,
    civilMs: new Float64Array(capacity),
    values: slots.map(() => new Float32Array(capacity)),
    count: 0,
    lines: noRuns(),
    offsets: noRuns(),
    dateForms: noRuns(),
    deferred: [],
    told: slots.map(() => new Set()),
    reversed: false,
  }
}

function longer<Column extends Float32Array | Float64Array>(
  column: Column,
  wider: Column,
  count: number,
): Column {
  wider.set(column.subarray(0, count))
  return wider
}

/** Room for one more reading at least. */
export function makeRoom(store: Store): void {
  if (store.count < store.civilMs.length) return
  const capacity = Math.max(1024, Math.ceil(store.civilMs.length * 1.6))
  store.civilMs = longer(store.civilMs, new Float64Array(capacity), store.count)
  store.values = store.values.map((column) => longer(column, new Float32Array(capacity), store.count))
}

/** Says of the readings from the next one on what they have in common. */
export function nextIs(store: Store, line: number, offsetMinutes: number, dateForm: number): void {
  runFrom(store.lines, store.count, line - store.count)
  runFrom(store.offsets, store.count, offsetMinutes)
  runFrom(store.dateForms, store.count, dateForm)
}

/** The line that a reading came from. */
export function lineOf(store: Store, place: number): number {
  const original = store.reversed ? store.count - 1 - place : place
  return original + runAt(store.lines, original)
}

const mostTold = 10_000

export function missingIsTold(store: Store, slot: number, place: number): void {
  const places = store.told[slot]!
  if (places.size < mostTold) places.add(place)
}
