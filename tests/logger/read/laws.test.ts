import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { noAnswers } from '../../../lib/logger/read/log-answers.ts'
import { sortPlaces } from '../../../lib/logger/read/merge-runs.ts'
import { readLog } from '../../../lib/logger/read/read-log.ts'
import { formArbitrary, readingsArbitrary, type DrawnForm } from './drawn-log.ts'
import { printLog } from './print-log.ts'

const bytes = (text: string) => new TextEncoder().encode(text)
const plain: DrawnForm = {
  delimiter: ';',
  decimalMark: '.',
  temperatureDecimals: 2,
  date: 'iso',
  clock: 'seconds',
  twoColumns: false,
  zone: 'stamped-z',
  fahrenheit: false,
  unitsBehind: false,
  quoted: false,
  counter: false,
  block: false,
  headings: 'english',
  missing: '---',
  lineEnd: '\n',
  encoding: 'utf-8',
  footer: false,
}

describe('a logger file', () => {
  test('gives the same series in whatever order its lines stand, and told twice over', () => {
    fc.assert(
      fc.property(
        readingsArbitrary,
        fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
        (readings, draws) => {
          const [heading, ...lines] = new TextDecoder()
            .decode(printLog(readings, plain))
            .trimEnd()
            .split('\n')
          const shuffled = lines
            .map((line) => ({ line, key: draws.next().value as number }))
            .toSorted((a, b) => a.key - b.key)
            .map(({ line }) => line)
          const read = (rows: readonly string[]) =>
            readLog(bytes(`${[heading, ...rows].join('\n')}\n`), noAnswers)
          const { series } = read(lines).channels[0]!
          const disordered = read(shuffled)
          expect(disordered.channels[0]!.series).toEqual(series)
          expect(disordered.rows.unreadable).toBe(0)
          const twice = read([...lines, ...shuffled])
          expect(twice.channels[0]!.series).toEqual(series)
          expect(twice.rows.repeated).toBe(lines.length)
          expect(twice.rows.disagreeing).toBe(0)
        },
      ),
      { numRuns: 60 },
    )
  })

  test('is never read in a wrong order of dates without being asked about it', () => {
    fc.assert(
      fc.property(
        readingsArbitrary,
        formArbitrary,
        fc.constantFrom('dots', 'slash-day', 'slash-month'),
        (readings, form, date) => {
          const printed = printLog(readings, { ...form, date, zone: 'stamped-z' })
          const read = readLog(printed, noAnswers)
          const ask = read.asks.find(({ about }) => about === 'date-order')
          const order = date === 'slash-month' ? 'month-first' : 'day-first'
          if (ask) expect(ask.answers).toContain(order)
          else {
            expect(read.form!.dates.order).toBe(order)
            expect([...read.channels[0]!.series.atMs]).toEqual(readings.map(({ atMs }) => atMs))
          }
        },
      ),
      { numRuns: 100 },
    )
  })

  test('whose stamps say no zone is never kept without one', () => {
    fc.assert(
      fc.property(readingsArbitrary, formArbitrary, (readings, form) => {
        const asks = readLog(printLog(readings, form), { ...noAnswers, dateOrder: 'day-first' }).asks
        expect(asks.some(({ about }) => about === 'time-zone')).toBe(!form.zone.startsWith('stamped'))
      }),
      { numRuns: 80 },
    )
  })

  test('is never told a reading that does not stand in it', () => {
    fc.assert(
      fc.property(readingsArbitrary, formArbitrary, fc.nat(), (readings, form, cut) => {
        const whole = printLog(readings, { ...form, zone: 'stamped-z', date: 'iso' })
        const read = readLog(whole.subarray(0, cut % whole.length), noAnswers)
        const known = new Set(readLog(whole, noAnswers).channels.flatMap(({ series }) => told(series)))
        const heard = read.channels.flatMap(({ series }) => told(series))
        // The very last reading may lack what was cut off; what it says is said in full.
        expect(heard.slice(0, -1).filter((reading) => !known.has(reading))).toEqual([])
      }),
      { numRuns: 100 },
    )
  })
})

interface Told {
  readonly atMs: Float64Array
  readonly rhPercent: Float32Array
  readonly temperatureC: Float32Array
}

const told = ({ atMs, rhPercent, temperatureC }: Told) =>
  Array.from(atMs, (ms, at) => `${ms} ${rhPercent[at]} ${temperatureC[at]}`)

describe('sorting by stretches that are in order', () => {
  test('is sorting, and keeps equals as they stand', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 30 }), { maxLength: 200 }), (moments) => {
        const atMs = Float64Array.from(moments)
        const places = Uint32Array.from(moments, (_, at) => at)
        const expected = [...places].toSorted((a, b) => atMs[a]! - atMs[b]! || a - b)
        expect([...sortPlaces(places, atMs)]).toEqual(expected)
      }),
    )
  })
})
