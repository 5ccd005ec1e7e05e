import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { LogAnswers } from '../../../lib/logger/read/log-answers.ts'
import { openReading } from '../../../lib/logger/read/open-reading.ts'
import { readLog, readLogFile } from '../../../lib/logger/read/read-log.ts'
import { formArbitrary, readingsArbitrary } from './drawn-log.ts'
import { printLog } from './print-log.ts'

const answersArbitrary = fc.record<LogAnswers>({
  timeZone: fc.constantFrom(null, 'UTC', 'Europe/London', '+05:30', 'nowhere'),
  dateOrder: fc.constantFrom(null, 'day-first', 'month-first', 'year-first'),
  temperatureUnit: fc.constantFrom(null, 'celsius', 'fahrenheit'),
})

/** One thing that happens to the bytes of a file on its way. */
interface Mishap {
  readonly at: number
  readonly what: 'lost' | 'put' | 'line-again' | 'cut' | 'joined'
  readonly bytes: readonly number[]
}

const mishapArbitrary = fc.record<Mishap>({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  what: fc.constantFrom('lost', 'put', 'put', 'line-again', 'cut', 'joined'),
  bytes: fc.oneof(
    fc.array(fc.integer({ min: 0, max: 255 }), { minLength: 1, maxLength: 3 }),
    fc
      .constantFrom('"', ',', ';', '\r', '\n', '-', '---', '24:00', 'PM', '-999', '#', '%', '.', '°', '31')
      .map((text) => [...new TextEncoder().encode(text)]),
  ),
})

function befall(file: Uint8Array, { at, what, bytes }: Mishap): Uint8Array {
  const place = Math.min(Math.floor(at * file.length), file.length - 1)
  const before = file.subarray(0, place)
  const join = (...parts: readonly (Uint8Array | readonly number[])[]) =>
    Uint8Array.from(parts.flatMap((part) => [...part]))
  const lineEnd = file.indexOf(10, place) + 1 || file.length
  switch (what) {
    case 'lost':
      return join(before, file.subarray(place + bytes.length))
    case 'put':
      return join(before, bytes, file.subarray(place))
    case 'line-again':
      return join(file.subarray(0, lineEnd), file.subarray(place, lineEnd), file.subarray(lineEnd))
    case 'cut':
      return before.slice()
    case 'joined':
      return join(file.subarray(0, lineEnd - 1), file.subarray(lineEnd))
  }
}

const damagedArbitrary = fc
  .tuple(readingsArbitrary, formArbitrary, fc.array(mishapArbitrary, { maxLength: 6 }))
  .map(([readings, form, mishaps]) => mishaps.reduce(befall, printLog(readings, form)))

describe('the quick reading of lines', () => {
  test('says what the careful one says, whatever happened to the file', () => {
    fc.assert(
      fc.property(damagedArbitrary, answersArbitrary, (file, answers) => {
        const quick = readLog(file, answers)
        const careful = readLog(file, answers, { quick: false })
        expect(quick).toEqual(careful)
      }),
      { numRuns: 200 },
    )
  })

  test.each([
    ['2024-05-06T07:MM:00Z,20.5,45.2', 0.98],
    ['06.05.2024;07:MM:00;20,5;45,2', 0.98],
    ['1,"05/06/24 07:MM:00 AM","20.5","45.2",', 0.98],
    ['17,06-May-2024 7:MM,20.5 °C,45.2 %RH', 0.98],
    ['20.5|45.2|2024-05-06 07:MM:00.125', 0.98],
    ['A17;2024-05-06 07:MM;20.5;45.2', 0.98],
    ['20240506 0007MM  20.5  45.2', 0],
  ])('is the one that reads lines like %s', (line, share) => {
    const lines = Array.from({ length: 600 }, (_, at) => line.replace('MM', String(at % 60).padStart(2, '0')))
    const reading = openReading({ timeZone: 'UTC', dateOrder: 'day-first', temperatureUnit: null }, {})
    reading.feed(new TextEncoder().encode(`${lines.join('\n')}\n`))
    const { outcome } = reading.end()
    expect('state' in outcome && outcome.state.quickLines / lines.length).toBeGreaterThanOrEqual(share)
  })
})

describe('a file that comes in pieces', () => {
  test('is read as the whole, wherever it is cut', async () => {
    await fc.assert(
      fc.asyncProperty(
        damagedArbitrary,
        answersArbitrary,
        fc.array(fc.integer({ min: 1, max: 3000 }), { minLength: 1, maxLength: 20 }),
        async (file, answers, lengths) => {
          async function* pieces() {
            for (let at = 0, next = 0; at < file.length; next++) {
              const length = lengths[next % lengths.length]!
              yield file.subarray(at, at + length)
              at += length
            }
          }
          expect(await readLogFile(pieces(), answers)).toEqual(readLog(file, answers))
        },
      ),
      { numRuns: 80 },
    )
  })
})
