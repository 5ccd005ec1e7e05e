import type { ProblemBook } from './problem-book.ts'
import { lineOf, type Store } from './store.ts'

/** Numbers that loggers write where the sensor gave nothing: nines, and the ends of sixteen bits with their decimals. */
const stand = new Set(
  [
    999, 999.9, 999.99, 9999, 9999.9, 99_999, 99.9, 850, 32_767, 3276.7, 327.67, 32_768, 3276.8, 327.68,
    65_535, 6553.5, 655.35,
  ].map(Math.fround),
)

export const printed = (value: number) => String(Number(value.toPrecision(7)))

type CellCode =
  | 'empty-cells'
  | 'sensor-error'
  | 'humidity-over-100'
  | 'humidity-out-of-range'
  | 'temperature-out-of-range'

/** Counts what one column has, so that a million of the same is one entry from the start. */
export function openTally(store: Store, slot: number, book: ProblemBook) {
  const seen = new Map<string, { code: CellCode; place: number; found: string; count: number }>()
  const add = (code: CellCode, place: number, value: number) => {
    const key = code === 'sensor-error' ? `${code} ${value}` : code
    const known = seen.get(key)
    if (known) known.count++
    else seen.set(key, { code, place, found: Number.isNaN(value) ? '' : printed(value), count: 1 })
  }
  return {
    /** A value that is none, or none that a sensor can have measured: it is taken out. */
    refuse(place: number, value: number, code: CellCode) {
      if (Number.isNaN(value)) {
        if (!store.told[slot]!.has(place)) add('empty-cells', place, value)
        return
      }
      add(stand.has(Math.fround(Math.abs(value))) ? 'sensor-error' : code, place, value)
      store.values[slot]![place] = Number.NaN
    },
    add,
    /** Whether a value of the column is missing. */
    close() {
      let missing = false
      for (const { code, place, found, count } of seen.values()) {
        book.note(code, lineOf(store, place), found, store.slots[slot]!.heading, count)
        missing ||= code !== 'humidity-over-100'
      }
      return missing || store.told[slot]!.size > 0
    },
  }
}
