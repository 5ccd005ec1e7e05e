import { afterAll, describe, expect, it } from 'vitest'
import { workedDay } from '../logger/at-hand.ts'
import { workplace } from './call.ts'

const place = workplace()
afterAll(() => place.clear())

const two = (value: number) => String(value).padStart(2, '0')
/** The worked day, an hour a line; `stamp` prints the moment. */
const log = (stamp: (hour: number) => string, heading = 'Time,Temperature (°C),Humidity (%RH)') =>
  `${heading}\n${workedDay.map((rh, hour) => `${stamp(hour)},20.0,${rh}.0\n`).join('')}`

const utc = place.file(
  'worked.csv',
  log((hour) => `2026-03-01T${two(hour)}:00:00Z`),
)
const local = place.file(
  'local.csv',
  log((hour) => `2026-03-01 ${two(hour)}:00`),
)
const unclear = place.file(
  'unclear.csv',
  log((hour) => `03/04/2026 ${two(hour)}:00`),
)

interface Told {
  readonly readings: number
  readonly from: string
  readonly to: string
  readonly gaps: readonly unknown[]
  readonly flatFloor: unknown
  readonly percentTimeAbove: number
  readonly excursions: readonly {
    readonly hours: number
    readonly worstRhPercent: number
    readonly from: string
  }[]
  readonly doseRhPercentHours: number
  readonly percentiles: Readonly<Record<string, number>>
  readonly meanRhPercent: number
  readonly worstRolling24hPercent: number
  readonly problems: readonly { readonly code: string; readonly text: string }[]
  readonly channels: readonly { readonly readings: number }[]
  readonly [key: string]: unknown
}

async function told(...args: readonly string[]): Promise<Told & { readonly code: number }> {
  const { code, out } = await place.call('logger', ...args, '--format', 'json')
  return { ...(JSON.parse(out) as Told), code }
}

describe('logger FILE', () => {
  it('tells every key of the contract, with units, as one line of JSON', async () => {
    const { out } = await place.call('logger', utc, '--limit-rh-percent', '15', '--format', 'json')
    expect(out.trimEnd().split('\n')).toHaveLength(1)
    expect(await told(utc, '--limit-rh-percent', '15')).toMatchObject({
      code: 0,
      readings: 24,
      from: '2026-03-01T00:00:00Z',
      to: '2026-03-01T23:00:00Z',
      gaps: [],
      flatFloor: null,
      percentTimeAbove: 45.833333,
      excursions: [{ from: '2026-03-01T07:00:00Z', hours: 11, worstRhPercent: 27 }],
      doseRhPercentHours: 66,
      percentiles: { p7: 13, p50: 15, p93: 25.39 },
      meanRhPercent: 17.25,
      worstRolling24hPercent: 17.25,
      problems: [],
      percentMethod: 'linear',
      doseMethod: 'rectangle',
      sensorErrorRhPercent: 3,
      verdict: 'outside',
      chanceOverLimit: { readRhPercent: 15, chancePercent: 50 },
    })
  })

  it('counts by the methods it is told', async () => {
    const other = await told(
      utc,
      '--limit-rh-percent',
      '20',
      '--dose-method',
      'trapezoid',
      '--percent-method',
      'weibull',
    )
    expect(other.doseRhPercentHours).toBeCloseTo(24.333333, 5)
    expect(other.percentiles['p93']).toBe(26.25)
    expect(other).toMatchObject({ doseMethod: 'trapezoid', percentMethod: 'weibull' })
  })

  it('takes the error of the sensor it is told', async () => {
    const exact = await told(utc, '--limit-rh-percent', '15', '--sensor-error-rh-percent', '0')
    expect(exact).toMatchObject({ sensorErrorRhPercent: 0, chanceOverLimit: { chancePercent: 0 } })
  })

  it('holds readings against both ends of a band', async () => {
    const both = await told(utc, '--limit-rh-percent', '25', '--low-limit-rh-percent', '14')
    expect(both).toMatchObject({ percentTimeAbove: 8.333333, percentTimeBelow: 12.5 })
  })

  it('takes a limit where none is given, and says whose', async () => {
    expect((await told(utc)).limitRhPercent).toBe(15)
    expect((await place.call('logger', utc)).out).toMatch(/No limit was given: held against 15 %/)
    expect((await place.call('logger', utc, '--limit-rh-percent', '15')).out).not.toContain('No limit')
  })

  it('says in plain words how long, how far, and how sure that is', async () => {
    const { code, out } = await place.call('logger', utc, '--limit-rh-percent', '15')
    expect(code).toBe(0)
    expect(out).toContain('11 h above 15 %, 46 % of the time, at one time; worst 27 % on 1 March 2026, 12:00')
    expect(out.replaceAll(/\s+/g, ' ')).toContain('50 % chance that a reading of 15 % was really over 15 %.')
    expect(out).not.toMatch(/percentile|posterior|\bP\d/)
  })
})

describe('what a file leaves open', () => {
  it('without a time zone is read as UTC, and says so', async () => {
    const { code, out } = await place.call('logger', local, '--limit-rh-percent', '15')
    expect(code).toBe(0)
    expect(out).toMatch(/names no time zone.*read as UTC.*--time-zone/)
    expect(await told(local)).toMatchObject({ timeZone: 'UTC', from: '2026-03-01T00:00:00Z' })
  })

  it('is read by the clock it is told', async () => {
    expect(await told(local, '--time-zone', 'Asia/Tokyo')).toMatchObject({
      from: '2026-02-28T15:00:00Z',
      timeZone: 'Asia/Tokyo',
    })
  })

  it('and not by one that does not exist', async () => {
    const { code, err } = await place.call('logger', local, '--time-zone', 'Tollgate/Wharf')
    expect(code).toBe(2)
    expect(err).toContain('--time-zone')
  })

  it('the order of day and month must be told first', async () => {
    const { code, out, err } = await place.call('logger', unclear)
    expect([code, out]).toEqual([2, ''])
    expect(err).toContain('In which order are its dates written?')
    expect(err).toContain('--date-order day-first|month-first|year-first')
    expect((await told(unclear, '--date-order', 'day-first')).from).toBe('2026-04-03T00:00:00Z')
    expect((await told(unclear, '--date-order', 'month-first')).from).toBe('2026-03-04T00:00:00Z')
  })
})

describe('files that are not whole', () => {
  it('what cannot be read is named, the rest is told, and it ends with 1', async () => {
    const broken = place.file(
      'broken.csv',
      log((hour) => (hour === 5 ? 'yesterday' : `2026-03-01T${two(hour)}:00:00Z`)),
    )
    const { code, err } = await place.call('logger', broken)
    expect(code).toBe(1)
    expect(err).toContain('yesterday')
    const { problems, readings } = await told(broken)
    expect(readings).toBe(23)
    expect(problems.length).toBeGreaterThan(0)
    expect(problems.every(({ text }) => text.length > 10)).toBe(true)
  })

  it('a gap and a flat floor are told', async () => {
    const flat = workedDay.map((_, hour) => (hour < 12 ? 10 : 10 + hour / 2))
    const lines = flat.flatMap((rh, hour) =>
      hour === 18 || hour === 19 || hour === 20 ? [] : [`2026-03-01T${two(hour)}:00:00Z,${rh}`],
    )
    const file = place.file('flat.csv', `Time,Humidity (%RH)\n${lines.join('\n')}\n`)
    expect(await told(file, '--limit-rh-percent', '18')).toMatchObject({
      gaps: [{ from: '2026-03-01T17:00:00Z', to: '2026-03-01T21:00:00Z', hours: 4 }],
      flatFloor: { atRhPercent: 10, readings: 12 },
      meanIsAtMost: true,
    })
    expect(await told(file, '--floor-rh-percent', '5')).toMatchObject({ flatFloor: null })
  })

  it.each([
    ['14', 'outside'],
    ['25', 'cannot-tell'],
    ['30', 'within'],
  ])('against %s %% the verdict leaves the error of the sensor on the safe side', async (limit, verdict) => {
    expect(await told(utc, '--limit-rh-percent', limit)).toMatchObject({ verdict })
  })

  it('at a floor above the limit there is no verdict', async () => {
    const flat = place.file(
      'floor.csv',
      `Time,Humidity (%RH)\n${workedDay.map((_, hour) => `2026-03-01T${two(hour)}:00:00Z,15`).join('\n')}\n`,
    )
    const at = await told(flat, '--limit-rh-percent', '8')
    expect(at).toMatchObject({ verdict: 'cannot-tell', percentTimeAbove: 0, excursions: [] })
    expect(at['above']).toMatchObject({ hoursCannotTell: 24 })
  })

  it('each sensor of a file is told by itself', async () => {
    const file = place.file(
      'two.csv',
      `Time,Box 1 RH (%),Box 2 RH (%)\n${workedDay.map((rh, hour) => `2026-03-01T${two(hour)}:00:00Z,${rh},${rh + 10}`).join('\n')}\n`,
    )
    const { channels } = await told(file, '--limit-rh-percent', '15')
    expect(channels).toHaveLength(2)
    expect(channels).toMatchObject([{ meanRhPercent: 17.25 }, { meanRhPercent: 27.25 }])
  })

  it.each([
    ['empty.csv', ''],
    ['words.csv', 'nothing here is a reading\nnor here\n'],
  ])('%s gives nothing and ends with 2', async (name, content) => {
    const { code, out, err } = await place.call('logger', place.file(name, content))
    expect([code, out]).toEqual([2, ''])
    expect(err).toContain('nothing is told')
  })

  it('one that is not there is named', async () => {
    const { code, err } = await place.call('logger', `${place.folder}/none.csv`)
    expect(code).toBe(2)
    expect(err).toContain('There is no such file.')
  })
})

describe('a wrong call', () => {
  it('has all its faults named at once', async () => {
    const { code, err } = await place.call(
      'logger',
      utc,
      '--limit-rh-percent',
      'dry',
      '--date-order',
      'upside-down',
      '--percent-method',
      'best',
      '--columns',
      'stamp,colour',
    )
    expect(code).toBe(2)
    for (const name of ['--limit-rh-percent', '--date-order', '--percent-method', '--columns'])
      expect(err).toContain(name)
  })

  it('with limits the wrong way round is refused', async () => {
    const { code, err } = await place.call(
      'logger',
      utc,
      '--limit-rh-percent',
      '15',
      '--low-limit-rh-percent',
      '20',
    )
    expect(code).toBe(2)
    expect(err).toContain('nothing could be within both')
  })
})
