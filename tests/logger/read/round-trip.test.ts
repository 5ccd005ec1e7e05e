import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { LogAnswers } from '../../../lib/logger/read/log-answers.ts'
import { readLog } from '../../../lib/logger/read/read-log.ts'
import { formArbitrary, readingsArbitrary, type DrawnForm, type DrawnReading } from './drawn-log.ts'
import { printedTemperature, printLog } from './print-log.ts'

const orders = { 'slash-month': 'month-first', 'slash-day': 'day-first', dots: 'day-first' } as const

function answersFor(form: DrawnForm): LogAnswers {
  return {
    timeZone: form.zone.startsWith('stamped') ? null : form.zone,
    dateOrder: (orders as Partial<Record<DrawnForm['date'], LogAnswers['dateOrder']>>)[form.date] ?? null,
    temperatureUnit: null,
  }
}

function expected(reading: DrawnReading, form: DrawnForm) {
  const { temperature, humidity } = reading
  const printed =
    temperature === null ? Number.NaN : printedTemperature(temperature, form) / 10 ** form.temperatureDecimals
  const celsius = form.fahrenheit ? (Math.fround(printed) - 32) / 1.8 : printed
  return {
    atMs: reading.atMs,
    temperatureC: Math.fround(celsius) + 0,
    rhPercent: Math.fround(humidity === null ? Number.NaN : humidity / 10),
  }
}

/** Where clocks change, a gap beside the change leaves in doubt which showing of an hour is meant. */
function unbroken(readings: readonly DrawnReading[]): readonly DrawnReading[] {
  const step = readings[1]!.atMs - readings[0]!.atMs
  const broken = readings.findIndex(({ atMs }, at) => at > 0 && atMs - readings[at - 1]!.atMs !== step)
  return broken === -1 ? readings : readings.slice(0, broken)
}

describe('what a logger prints, in whatever form', () => {
  test('is read as it was', () => {
    fc.assert(
      fc.property(readingsArbitrary, formArbitrary, (drawn, form) => {
        const readings = form.zone.includes('/') ? unbroken(drawn) : drawn
        const read = readLog(printLog(readings, form), answersFor(form))
        expect(read.channels).toHaveLength(1)
        const { series } = read.channels[0]!
        const got = Array.from(series.atMs, (atMs, at) => ({
          atMs,
          temperatureC: series.temperatureC[at]! + 0,
          rhPercent: series.rhPercent[at]! + 0,
        }))
        expect(got).toEqual(readings.map((reading) => expected(reading, form)))
        expect(read.asks).toEqual([])
        expect(read.rows.unreadable).toBe(0)
        expect(read.problems.filter(({ severity }) => severity !== 'note')).toEqual([])
      }),
      { numRuns: 120 },
    )
  })
})
