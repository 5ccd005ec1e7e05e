import { describe, expect, test } from 'vitest'
import { noAnswers, type LogAnswers } from '../../../lib/logger/read/log-answers.ts'
import { readLog, readLogRows } from '../../../lib/logger/read/read-log.ts'

const read = (text: string, answers: Partial<LogAnswers> = {}) =>
  readLog(new TextEncoder().encode(text), { ...noAnswers, ...answers })
const channelsOf = (...given: Parameters<typeof read>) =>
  read(...given).channels.map(({ name, serial, series }) => ({
    name,
    serial,
    at: Array.from(series.atMs, (ms) => new Date(ms).toISOString().slice(0, 16)),
    t: [...series.temperatureC],
    rh: [...series.rhPercent],
  }))

describe('how a file is written', () => {
  test('is told as it was understood, with how each was decided', () => {
    const { form } = read(
      [
        'Logger type: small grey one',
        'Seriennummer: 40417',
        'Zeitzone: UTC+1',
        '',
        'Nr.;Datum;Uhrzeit;Temperatur [°F];rel. Feuchte [%];Taupunkt [°F]',
        '1;28.01.2024;11:50:00 PM;68,0;45,5;46,1',
        '2;29.01.2024;12:00:00 AM;68,0;45,5;46,1',
        '',
      ].join('\n'),
    )
    expect(form).toEqual({
      encoding: 'utf-8',
      delimiter: ';',
      decimalMark: ',',
      headingLine: 5,
      firstLine: 6,
      columns: [
        { column: 0, heading: 'Nr.', use: 'not-read', channel: '' },
        { column: 1, heading: 'Datum', use: 'date', channel: '' },
        { column: 2, heading: 'Uhrzeit', use: 'time', channel: '' },
        { column: 3, heading: 'Temperatur [°F]', use: 'temperature', channel: '' },
        { column: 4, heading: 'rel. Feuchte [%]', use: 'humidity', channel: '' },
        { column: 5, heading: 'Taupunkt [°F]', use: 'not-read', channel: '' },
      ],
      heading: [
        { line: 1, name: 'Logger type', value: 'small grey one' },
        { line: 2, name: 'Seriennummer', value: '40417' },
        { line: 3, name: 'Zeitzone', value: 'UTC+1' },
      ],
      serial: '40417',
      model: 'small grey one',
      dates: { order: 'day-first', how: 'day-above-12' },
      clock: '12-hour',
      timeZone: { zone: '+01:00', how: 'in-heading' },
      temperature: { unit: 'fahrenheit', how: 'in-heading' },
      humidity: { scale: 'percent', how: 'in-heading' },
    })
  })

  test.each<[string, string, string | null]>([
    ['2024-05-06 07:00', 'year-stands-first', 'year-first'],
    ['06-May-2024 07:00', 'month-named', null],
    ['1714978800', 'counted', null],
    ['26/05/2024 07:00', 'day-above-12', 'day-first'],
    ['06/05/2024 07:00', 'assumed', 'day-first'],
  ])('%s: %s', (stamp, how, order) => {
    expect(read(`time,t °C,rh %\n${stamp},20,45\n`).form!.dates).toEqual({ how, order })
  })
})

describe('several sensors', () => {
  test('side by side share their moments', () => {
    const { channels } = read(
      'time,East temp °C,East RH %,West temp °C,West RH %\n2024-05-06 07:00Z,20,45,21,46\n2024-05-06 07:10Z,20.5,,21.5,47\n',
    )
    expect(channels.map(({ name }) => name)).toEqual(['East', 'West'])
    expect(channels[0]!.series.atMs).toBe(channels[1]!.series.atMs)
    expect([...channels[0]!.series.rhPercent]).toEqual([45, Number.NaN])
    expect([...channels[1]!.series.rhPercent]).toEqual([46, 47])
  })

  test('one below the other are told apart by the column that names them', () => {
    const lines = Array.from({ length: 400 }, (_, at) =>
      ['40417', '40418', '40419'].map(
        (serial) => `${new Date(1.7e12 + at * 600_000).toISOString()};${serial};${at / 100};45`,
      ),
    ).flat()
    const found = channelsOf(`time;serial number;t °C;rh %\n${lines.join('\n')}\n`)
    expect(found.map(({ name, serial, at }) => [name, serial, at.length])).toEqual([
      ['40417', '40417', 400],
      ['40418', '40418', 400],
      ['40419', '40419', 400],
    ])
    expect(found[2]!.t).toEqual(Array.from({ length: 400 }, (_, at) => Math.fround(at / 100)))
  })

  test('under a line of groups are named by it', () => {
    expect(
      channelsOf(',Box 1,,Box 2,\nTime,T,RH,T,RH\n2024-05-06 07:00Z,20,45,21,46\n').map(({ name }) => name),
    ).toEqual(['Box 1', 'Box 2'])
  })

  test('of which one gave nothing are one', () => {
    const text = 'time,A t °C,A rh %,B t °C,B rh %\n2024-05-06 07:00Z,20,45,,\n2024-05-06 07:10Z,20,45,,\n'
    expect(channelsOf(text).map(({ name }) => name)).toEqual(['A'])
  })
})

describe('columns that a person named', () => {
  const text = 'when|one|two|three\n2024-05-06 07:00Z|25|20|7\n2024-05-06 07:10Z|26|21|7\n'

  test('are asked for, with a guess that it was read by', () => {
    const { asks, channels } = read(text)
    expect(asks).toHaveLength(1)
    expect(asks[0]).toMatchObject({
      about: 'columns',
      because: 'headings-not-known',
      columns: [
        { column: 0, heading: 'when', use: 'stamp' },
        { column: 1, heading: 'one', use: 'humidity', examples: ['25', '26'] },
        { column: 2, heading: 'two', use: 'temperature' },
        { column: 3, heading: 'three', use: 'temperature' },
      ],
    })
    expect(channels.length).toBeGreaterThan(0)
  })

  test('are read as they were named, and nothing is asked', () => {
    const columns = [
      { column: 1, use: 'temperature', channel: 'shelf' },
      { column: 2, use: 'humidity', channel: 'shelf' },
      { column: 3, use: 'not-read' },
    ] as const
    expect(read(text, { columns }).asks).toEqual([])
    expect(channelsOf(text, { columns })).toEqual([
      {
        name: 'shelf',
        serial: null,
        at: ['2024-05-06T07:00', '2024-05-06T07:10'],
        t: [25, 26],
        rh: [20, 21],
      },
    ])
  })

  test('count for more than their headings', () => {
    const swapped = 'time,t °C,rh %\n2024-05-06 07:00Z,45,20\n'
    const columns = [
      { column: 1, use: 'humidity' },
      { column: 2, use: 'temperature' },
    ] as const
    expect(channelsOf(swapped, { columns })[0]).toMatchObject({ t: [20], rh: [45] })
  })
})

describe('rows out of a workbook', () => {
  test('are read as lines are', () => {
    const rows = [
      ['Store, east wall'],
      [],
      ['Date', 'Temp °C', 'RH %', 'Remark'],
      ['2024-05-06T07:00:00Z', '20.5', '45', 'a\tb\nc'],
      ['2024-05-06T07:10:00Z', '---', '46'],
      ['45418.3', '20', '45'],
    ]
    const found = readLogRows(rows, noAnswers)
    expect(found.form).toMatchObject({ delimiter: 'cells', headingLine: 3, firstLine: 4 })
    expect([...found.channels[0]!.series.rhPercent]).toEqual([45, 46])
    expect(found.problems.map(({ code, line }) => [code, line])).toEqual([
      ['column-not-read', 3],
      ['sensor-error', 5],
      ['stamp-unreadable', 6],
    ])
  })
})
