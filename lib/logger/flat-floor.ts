import type { Series } from './series.ts'

/** Readings at the lowest value the logger prints: the truth was there or anywhere below. */
export interface FlatFloor {
  readonly atRhPercent: number
  readonly readings: number
  /** Of all readings with a humidity [one]. */
  readonly share: number
  /** `register`: the logger is known not to read lower. `flat`: told from the readings alone. */
  readonly from: 'register' | 'flat'
}

export interface FloorOptions {
  /** The highest relative humidity [%] that any logger is known to stop at: a flat run above it is no floor. */
  readonly highestFloorRhPercent: number
  /** What the register says of this logger, where it says anything [%]. */
  readonly registeredRhPercent?: number | null
}

/** A flat run is told from a quiet box by its length: so many readings at least, and so many times what runs are elsewhere. */
const shortestRun = 6
const timesElsewhere = 4
/** A few single readings below it, sparks of a bad contact, do not hide a floor. [one] */
const strayShare = 0.001

/** The floor that the readings lie on, or null where they lie on none. */
export function flatFloorOf({ rhPercent }: Series, options: FloorOptions): FlatFloor | null {
  const registered = options.registeredRhPercent ?? null
  if (registered !== null) {
    const { at, under, all } = countAt(rhPercent, registered)
    const readings = at + under
    return readings === 0
      ? null
      : { atRhPercent: registered, readings, share: readings / all, from: 'register' }
  }
  // Most logs never come near a floor, and are told by one look.
  if (!reaches(rhPercent, options.highestFloorRhPercent)) return null
  const flattest = longestRun(rhPercent, options.highestFloorRhPercent)
  if (flattest === null || flattest.length < shortestRun) return null
  const { at, under, all } = countAt(rhPercent, flattest.rhPercent)
  if (under > all * strayShare) return null
  if (flattest.length < timesElsewhere * usualRunElsewhere(rhPercent, flattest.rhPercent)) return null
  return { atRhPercent: flattest.rhPercent, readings: at, share: at / all, from: 'flat' }
}

const hundredths = (value: number) => Math.round(value * 100)

function reaches(rhPercent: Float32Array, highest: number): boolean {
  const line = Math.fround(highest + 0.005)
  for (let i = 0; i < rhPercent.length; i += 1) if (rhPercent[i]! <= line) return true
  return false
}

/** The longest run of one value at or below the highest floor. */
function longestRun(rhPercent: Float32Array, highest: number) {
  let [length, value] = [0, 0]
  for (let i = 0; i < rhPercent.length;) {
    const rh = rhPercent[i]!
    let to = i + 1
    while (to < rhPercent.length && rhPercent[to] === rh) to += 1
    if (to - i > length && hundredths(rh) <= hundredths(highest)) [length, value] = [to - i, rh]
    i = to
  }
  return length === 0 ? null : { length, rhPercent: hundredths(value) / 100 }
}

function countAt(rhPercent: Float32Array, level: number) {
  const line = hundredths(level)
  let [at, under, all] = [0, 0, 0]
  for (const rh of rhPercent) {
    if (Number.isNaN(rh)) continue
    all += 1
    const here = hundredths(rh)
    if (here === line) at += 1
    else if (here < line) under += 1
  }
  return { at, under, all }
}

const longestCounted = 4096

/** The length that nine runs in ten elsewhere do not pass; 0 where there are none. */
function usualRunElsewhere(rhPercent: Float32Array, floor: number): number {
  const line = hundredths(floor)
  const lengths = new Float64Array(longestCounted + 1)
  let runs = 0
  for (let i = 0; i < rhPercent.length;) {
    const rh = rhPercent[i]!
    let to = i + 1
    while (to < rhPercent.length && rhPercent[to] === rh) to += 1
    if (hundredths(rh) > line) {
      lengths[Math.min(to - i, longestCounted)]! += 1
      runs += 1
    }
    i = to
  }
  let seen = 0
  for (let length = 1; length <= longestCounted; length += 1) {
    seen += lengths[length]!
    if (runs > 0 && seen >= runs * 0.9) return length
  }
  return 0
}
