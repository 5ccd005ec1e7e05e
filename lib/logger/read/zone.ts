import { Temporal } from 'temporal-polyfill'
import { msPerMinute } from './civil.ts'

/** A zone as arithmetic: from each moment on, clocks stand so many milliseconds ahead of UTC. */
export interface Zone {
  readonly name: string
  /** [ms since 1970-01-01 UTC], ascending; the first is -Infinity. */
  readonly from: readonly number[]
  /** [ms] */
  readonly offset: readonly number[]
}

export const fixedZone = (name: string, offsetMinutes: number): Zone => ({
  name,
  from: [Number.NEGATIVE_INFINITY],
  offset: [offsetMinutes * msPerMinute],
})

export const offsetName = (offsetMinutes: number): string => {
  if (offsetMinutes === 0) return 'UTC'
  const size = Math.abs(offsetMinutes)
  const two = (number: number) => String(Math.floor(number)).padStart(2, '0')
  return `${offsetMinutes < 0 ? '-' : '+'}${two(size / 60)}:${two(size % 60)}`
}

const fixed = /^(?:(?:utc|gmt|z)\s*)?([+-])(\d{1,2})(?::?([0-5]\d))?$/i

/** Minutes of a fixed offset as people and loggers write it (`+01:00`, `UTC+1`, `GMT`); null where it is none. */
export function fixedOffset(text: string): number | null {
  const bare = text.trim().replaceAll('−', '-')
  if (/^(?:utc|gmt|z|etc\/utc)$/i.test(bare)) return 0
  const found = fixed.exec(bare)
  if (!found) return null
  const minutes = Number(found[2]) * 60 + Number(found[3] ?? 0)
  return minutes > 18 * 60 ? null : found[1] === '-' ? -minutes : minutes
}

/** Zones change their clocks a few times a year at most; more is no zone of the years that loggers know. */
const mostChanges = 1000

/**
 * The zone of that name between two moments [ms since 1970-01-01 UTC], looked up once so that each reading is converted by
 * arithmetic; null where there is no such zone.
 */
export function zoneBetween(name: string, fromMs: number, toMs: number): Zone | null {
  const minutes = fixedOffset(name)
  if (minutes !== null) return fixedZone(offsetName(minutes), minutes)
  try {
    const start = Temporal.Instant.fromEpochMilliseconds(Math.floor(fromMs)).toZonedDateTimeISO(name)
    const from = [Number.NEGATIVE_INFINITY]
    const offset = [start.offsetNanoseconds / 1e6]
    let next = start.getTimeZoneTransition('next')
    while (next && next.epochMilliseconds <= toMs && from.length < mostChanges) {
      from.push(next.epochMilliseconds)
      offset.push(next.offsetNanoseconds / 1e6)
      next = next.getTimeZoneTransition('next')
    }
    return { name, from, offset }
  } catch {
    return null
  }
}

/** A change of the clocks, in the time that clocks show: from `at` on they show what `at + by` says. */
export interface ClockChange {
  readonly civilMs: number
  /** Ahead (an hour that no clock shows) or back (an hour shown twice) [ms]. */
  readonly byMs: number
  readonly before: number
  readonly after: number
}

export function changesOf(zone: Zone): readonly ClockChange[] {
  return zone.from.slice(1).flatMap((moment, at) => {
    const before = zone.offset[at]!
    const after = zone.offset[at + 1]!
    return before === after ? [] : [{ civilMs: moment + before, byMs: after - before, before, after }]
  })
}
