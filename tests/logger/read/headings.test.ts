import { describe, expect, test } from 'vitest'
import { channelsOf } from '../../../lib/logger/read/channels.ts'
import { readHeading } from '../../../lib/logger/read/heading-words.ts'

describe('a heading', () => {
  test.each([
    ['Temp (°C)', 'temperature', 'celsius'],
    ['tempF', 'temperature', 'fahrenheit'],
    ['temperature_c', 'temperature', 'celsius'],
    ['T1', 'temperature', null],
    ['°C', 'temperature', 'celsius'],
    ['Innentemperatur', 'temperature', null],
    ['Température de l’air', 'temperature', null],
    ['RH (%)', 'humidity', 'percent'],
    ['rel. Feuchte', 'humidity', null],
    ['%rF', 'humidity', 'percent'],
    ['HR %', 'humidity', 'percent'],
    ['Luftfuktighet', 'humidity', null],
    ['Vochtigheid', 'humidity', null],
    ['Dew point (°C)', 'other-quantity', 'celsius'],
    ['Taupunkt °C', 'other-quantity', 'celsius'],
    ['Absolute humidity (g/m³)'.normalize('NFKC'), 'other-quantity', null],
    ['Battery', 'other-quantity', null],
    ['Temp min', 'other-quantity', null],
    ['Case by the door RH %', 'humidity', 'percent'],
    ['Zeitstempel', 'stamp', null],
    ['Date/Time', 'stamp', null],
    ['Datum', 'date', null],
    ['Uhrzeit', 'time', null],
    ['Heure', 'time', null],
    ['Serial number', 'channel', null],
    ['#', 'counter', null],
    ['constructor', null, null],
    ['', null, null],
  ])('%s', (heading, sense, unit) => {
    expect(readHeading(heading)).toEqual({ sense, unit })
  })
})

describe('which columns are one sensor’s', () => {
  const channels = (...headings: readonly string[]) =>
    channelsOf(
      headings.map((heading, column) => {
        const { sense, unit } = readHeading(heading)
        return {
          column,
          heading,
          quantity: sense as 'temperature' | 'humidity',
          unit,
          sensor: null,
          group: '',
        }
      }),
    ).map(({ channel }) => channel)

  test.each<[readonly string[], readonly string[]]>([
    [
      ['Temp', 'RH'],
      ['', ''],
    ],
    [
      ['Raumtemperatur', 'Luftfeuchte'],
      ['', ''],
    ],
    [
      ['Box 12 Temperature', 'Box 12 RH'],
      ['Box 12', 'Box 12'],
    ],
    [
      ['temp_a', 'rh_a', 'temp_b', 'rh_b'],
      ['a', 'a', 'b', 'b'],
    ],
    [
      ['RH 1', 'RH 2', 'Temp 1', 'Temp 2'],
      ['1', '2', '1', '2'],
    ],
    [
      ['Temp', 'RH', 'Temp', 'RH'],
      ['1', '1', '2', '2'],
    ],
    [
      ['Temp', 'RH', 'Probe temp'],
      ['', '', 'Probe'],
    ],
    [
      ['East temp', 'West temp', 'East humid', 'West humid'],
      ['East', 'West', 'East', 'West'],
    ],
  ])('%j', (headings, expected) => {
    expect(channels(...headings)).toEqual(expected)
  })
})
