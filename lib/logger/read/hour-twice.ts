import { msPerHour } from './civil.ts'
import type { ClockChange } from './zone.ts'

/** Sorts readings of an hour that clocks show twice into its first and its second showing. */
export interface HourTwice {
  /** The moment of a reading in such an hour; `before` is the moment of the reading before it. */
  readonly take: (place: number, civilMs: number, change: ClockChange, before: number) => number
  /** The first reading after such an hour, with the one before it: readings in doubt may be moved now. */
  readonly leave: (place: number, moment: number, before: number) => void
  readonly isOpen: () => boolean
  /** Readings that nothing told apart: how many, and the first place. */
  readonly doubtful: () => { readonly count: number; readonly first: number }
}

/**
 * A reading belongs to the second showing once the stamps have run back, or where the usual step from the reading before leads
 * there. Readings after a gap are in doubt until the step out of the hour tells.
 */
export function openHourTwice(ms: Float64Array, usualStep: number | null): HourTwice {
  // A stamp told again at once is a repeat, unless readings are an hour or more apart.
  const sameIsSecond = usualStep === null || usualStep >= msPerHour
  let current: ClockChange | null = null
  let doubtFrom = -1
  let doubts = 0
  let count = 0
  let first = -1

  function keepDoubt() {
    if (doubtFrom >= 0) {
      count += doubts
      if (first < 0) first = doubtFrom
    }
    doubtFrom = -1
    doubts = 0
  }
  return {
    take(place, civilMs, change, before) {
      if (change !== current) keepDoubt()
      current = change
      const once = civilMs - change.before
      const again = civilMs - change.after
      if (once < before || (sameIsSecond && once === before)) {
        // Having run back, those before it were of the first showing.
        doubtFrom = -1
        doubts = 0
        return again
      }
      if (once - before === usualStep) {
        if (doubtFrom >= 0) doubts++
        return once
      }
      if (again - before === usualStep) return again
      if (doubtFrom < 0) doubtFrom = place
      doubts++
      return once
    },
    leave(place, moment, before) {
      if (current && doubtFrom >= 0 && moment - before === (usualStep ?? Number.NaN) - current.byMs) {
        for (let at = doubtFrom; at < place; at++) ms[at] = ms[at]! - current.byMs
        doubtFrom = -1
        doubts = 0
      }
      keepDoubt()
      current = null
    },
    isOpen: () => current !== null,
    doubtful() {
      keepDoubt()
      return { count, first }
    },
  }
}
