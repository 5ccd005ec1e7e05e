import fc from 'fast-check'
import { Temporal } from 'temporal-polyfill'
import { describe, expect, test } from 'vitest'
import { guessClock, clockSeen } from '../../../lib/logger/read/clock-evidence.ts'
import { changesOf, fixedOffset, offsetName, zoneBetween } from '../../../lib/logger/read/zone.ts'
import { walkZone } from '../../../lib/logger/read/zone-walk.ts'

const minute = 60_000
const hour = 60 * minute

/** What clocks of a zone show at a moment. */
function shown(zone: string, ms: number): number {
  const { offsetNanoseconds } = Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO(zone)
  return ms + offsetNanoseconds / 1e6
}

const zones = fc.constantFrom(
  'Europe/London',
  'Europe/Berlin',
  'America/New_York',
  'America/St_Johns',
  'Australia/Lord_Howe',
  'Africa/Casablanca',
  'Asia/Kolkata',
  'Pacific/Auckland',
)
const run = fc.record({
  zone: zones,
  startMinute: fc.integer({ min: 16_000_000, max: 32_000_000 }),
  stepMinutes: fc.constantFrom(1, 5, 10, 15, 30, 60, 120, 240),
  days: fc.integer({ min: 2, max: 420 }),
})

interface Run {
  readonly zone: string
  readonly startMinute: number
  readonly stepMinutes: number
  readonly days: number
}

const moments = ({ startMinute, stepMinutes, days }: Run) =>
  Float64Array.from(
    { length: Math.min(20_000, Math.floor((days * 1440) / stepMinutes)) },
    (_, at) => (startMinute + at * stepMinutes) * minute,
  )

describe('stamps of a clock that is changed', () => {
  test('become the moments they were written at', () => {
    fc.assert(
      fc.property(run, (given) => {
        const wanted = moments(given)
        const zone = zoneBetween(given.zone, wanted[0]! - 2 * 24 * hour, wanted.at(-1)! + 2 * 24 * hour)!
        const ms = wanted.map((moment) => moment + offsetAt(zone, moment))
        const walked = walkZone(ms, 0, ms.length, zone, given.stepMinutes * minute)
        // The first stamps of a file may fall into an hour shown twice, and nothing stands before them.
        const begins = changesOf(zone).some(
          ({ civilMs, byMs }) =>
            byMs < 0 &&
            wanted[0]! + offsetAt(zone, wanted[0]!) < civilMs &&
            wanted[0]! + offsetAt(zone, wanted[0]!) >= civilMs + byMs,
        )
        if (begins) return
        expect(walked.skipped).toBe(0)
        expect([...ms]).toEqual([...wanted])
      }),
      { numRuns: 120 },
    )
  })

  test('are never taken for those of a clock left alone, nor the other way round', () => {
    fc.assert(
      fc.property(run, (given) => {
        const wanted = moments(given)
        const zone = zoneBetween(given.zone, wanted[0]! - 2 * 24 * hour, wanted.at(-1)! + 2 * 24 * hour)!
        const usual = given.stepMinutes * minute
        const changed = wanted.map((moment) => moment + offsetAt(zone, moment))
        const left = wanted.map((moment) => moment + zone.offset[0]!)
        const changes = changesOf(zone)
        expect(clockSeen(changed, 0, changed.length, changes, usual)).not.toBe('fixed')
        expect(clockSeen(left, 0, left.length, changes, usual)).not.toBe('changed')
      }),
      { numRuns: 120 },
    )
  })

  test('show it, over a spring and an autumn', () => {
    const wanted = Float64Array.from(
      { length: 366 * 144 },
      (_, at) => Date.UTC(2024, 0, 1) + at * 10 * minute,
    )
    const berlin = wanted.map((ms) => shown('Europe/Berlin', ms))
    expect(guessClock(berlin, 0, berlin.length, 10 * minute)).toEqual({
      clock: 'changed',
      zones: ['Europe/Berlin'],
    })
    expect(guessClock(wanted, 0, wanted.length, 10 * minute)).toEqual({ clock: 'fixed', zones: [] })
    const winter = wanted.subarray(0, 60 * 144)
    expect(guessClock(winter, 0, winter.length, 10 * minute)).toEqual({ clock: null, zones: [] })
    expect(guessClock(berlin, 0, berlin.length, null)).toEqual({ clock: null, zones: [] })
  })
})

function offsetAt(
  zone: { readonly from: readonly number[]; readonly offset: readonly number[] },
  ms: number,
): number {
  return zone.offset[zone.from.findLastIndex((from) => from <= ms)]!
}

describe('a zone', () => {
  test('is what Temporal says, as arithmetic', () => {
    const from = Date.UTC(2000, 0, 1)
    const to = Date.UTC(2037, 0, 1)
    for (const name of ['Europe/London', 'America/St_Johns', 'Australia/Lord_Howe', 'Asia/Kolkata']) {
      const zone = zoneBetween(name, from, to)!
      for (let ms = from; ms < to; ms += 37.25 * 24 * hour)
        expect(ms + offsetAt(zone, ms)).toBe(shown(name, ms))
    }
  })

  test('that is fixed may be written in several ways', () => {
    expect(['+01:00', 'UTC+1', 'GMT+01', '+0100', 'utc +1'].map(fixedOffset)).toEqual([60, 60, 60, 60, 60])
    expect(['UTC', 'GMT', 'Z'].map(fixedOffset)).toEqual([0, 0, 0])
    expect(fixedOffset('-03:30')).toBe(-210)
    expect(['+19:00', 'CET', 'Europe/London', ''].map(fixedOffset)).toEqual([null, null, null, null])
    expect([60, 0, -210].map(offsetName)).toEqual(['+01:00', 'UTC', '-03:30'])
    expect(zoneBetween('Mars/Olympus', 0, 1)).toBeNull()
  })
})
