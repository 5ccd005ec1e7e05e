import { describe, expect, it } from 'vitest'
import type { DiaryEntry } from '../../lib/services/diary.ts'
import { newestOf } from '../../lib/services/box-line.ts'
import { dayNumber, sightingsOf } from '../../lib/services/box-sightings.ts'
import { closedBox, gelSince } from '../../lib/services/closed-box.ts'
import { gelSpent } from '../../lib/services/gel-colour.ts'
import { landingsOf } from '../../lib/services/log-landing.ts'
import type { LoggerDay, LoggerDays } from '../../lib/services/logger-days.ts'
import type { Logger } from '../../lib/services/loggers.ts'
import { tubOf } from '../../lib/services/tub.ts'
import type { LoggerGiven } from '../../lib/record/store-loggers.ts'
import { assistant, day } from '../database/samples.ts'
import { knowledge } from '../knowledge-at-hand.ts'

const kept = { id: 'x', version: 1, createdAt: 0, updatedAt: 0, projectId: 'p' }
const entry = (told: object): DiaryEntry =>
  ({ ...kept, box: 'B1', room: null, findId: null, atMs: null, by: assistant, ...told }) as DiaryEntry
const logger = (given: Partial<LoggerGiven>): Logger => ({
  ...kept,
  id: given.serial ?? 'L1',
  given: { serial: 'L1', stood: [{ box: 'B1', from: day('2026-01-01') }], ...given },
})
const days = (floorRhPercent: number | null, ...told: readonly Partial<LoggerDay>[]): LoggerDays => ({
  channel: '',
  extent: {
    loggerId: 'L1',
    channel: '',
    firstDay: day('2026-01-01'),
    lastDay: day('2026-02-01'),
    days: 1,
    writtenAt: 0,
  },
  floorRhPercent,
  days: told.map((one, at) => ({
    day: day(`2026-01-${String(at + 1).padStart(2, '0')}`),
    readings: 24,
    meanRhPercent: 12,
    minRhPercent: 11,
    maxRhPercent: 13,
    meanTemperatureC: 20,
    lastMs: 0,
    atFloor: false,
    ...one,
  })),
})
const data = (loggers: readonly Logger[], read: LoggerDays, entries: readonly DiaryEntry[] = []) =>
  ({
    loggers,
    days: new Map(loggers.map(({ id }) => [id, read])),
    diary: new Map([['B1', entries]]),
    today: day('2026-11-25'),
  }) as never

describe('what was seen of a box', () => {
  it('are whole days of the logger that stood there, without the day of carrying', () => {
    const seen = sightingsOf(data([logger({})], days(null, {}, {}, {})), 'B1', undefined, knowledge)
    expect(seen.map(({ on }) => on)).toEqual([
      dayNumber(day('2026-01-02')) + 0.5,
      dayNumber(day('2026-01-03')) + 0.5,
    ])
    expect(seen[0]).toMatchObject({ kind: 'logger', rhPercent: 12, errorRhPercent: 3, serial: 'L1' })
    expect(sightingsOf(data([logger({})], days(null, {}, {})), 'B2', undefined, knowledge)).toEqual([])
  })

  it('are below range where the logger lay at its floor', () => {
    const seen = sightingsOf(data([logger({})], days(15, {}, { atFloor: true })), 'B1', undefined, knowledge)
    expect(seen).toMatchObject([{ kind: 'below-range', floorRhPercent: 15 }])
    expect(newestOf(seen)).toMatchObject({ by: 'logger', lowRhPercent: 0, highRhPercent: 15 })
  })

  it('are put right by what the logger read over salts, with the error of its register', () => {
    const salts = [
      { salt: 'LiCl', trueRhPercent: 11.31, readRhPercent: 13.8 },
      { salt: 'MgCl2', trueRhPercent: 33.07, readRhPercent: 34.6 },
    ]
    const own = logger({ salts, error_rh_percent: 1.5 })
    const [seen] = sightingsOf(data([own], days(null, {}, { meanRhPercent: 20 })), 'B1', undefined, knowledge)
    expect(seen).toMatchObject({ kind: 'logger', errorRhPercent: 1.5 })
    expect((seen as { rhPercent: number }).rhPercent).toBeCloseTo(17.796, 3)
  })

  it('are strips, spent gel and loose lids of rounds', () => {
    const round = (on: string, given: object) => entry({ kind: 'round', on: day(on), given })
    const entries = [
      round('2026-02-01', { strip_low: 10, strip_high: 15, gel_colour: 'orange', lid: 'seated' }),
      round('2026-05-01', { strip_high: 30, gel_colour: 'green', lid: 'not-seated' }),
      entry({ kind: 'lid', on: day('2026-06-01'), given: { lid: 'not-seated' } }),
      entry({ kind: 'lid', on: day('2026-06-02'), given: { lid: 'opened' } }),
    ]
    const seen = sightingsOf(data([], days(null), entries), 'B1', 'orange indicating', knowledge)
    expect(seen.map(({ kind }) => kind)).toEqual(['strip', 'strip', 'gel-spent', 'lid-loose', 'lid-loose'])
    expect(seen[1]).toMatchObject({ lowRhPercent: 0, highRhPercent: 30, errorRhPercent: 5 })
    expect(newestOf(seen)).toMatchObject({ on: '2026-05-01', by: 'strip' })
  })
})

describe('the colour of gel', () => {
  it.each([
    ['orange indicating', 'green', true],
    ['orange indicating', 'Orange', false],
    ['blue indicating', 'pink', true],
    ['blue indicating', 'half pink', null],
    ['plain', 'white', null],
    [undefined, 'pink', null],
    ['plain', 'spent', true],
    ['orange', undefined, null],
  ])('%s seen as %s is spent: %s', (kind, colour, spent) => {
    expect(gelSpent(kind, colour)).toBe(spent)
  })
})

describe('a box as the leak model sees it', () => {
  const box = {
    box: 'B1',
    volume_l: 10,
    gel_kg: 0.5,
    gel_conditioned_on: day('2026-01-01'),
    gel_rh_percent: 1,
    air_changes_per_day: 0.5,
  }
  const known = { room: undefined, entries: [], sightings: [], limitRhPercent: 15 }

  it('has its own figures, with what they may be off', () => {
    expect(closedBox({ ...known, box }, knowledge)).toMatchObject({
      volumeL: 10,
      gelKg: 0.5,
      airChangesPerDay: { low: 0.25, nominal: 0.5, high: 1 },
      startRhPercent: { low: 0, nominal: 1, high: 3 },
      startedOn: dayNumber(day('2026-01-01')),
      limitRhPercent: 15,
      temperatureC: 20,
    })
  })

  it.each([
    [{ kind: 'tub' }, 'tub'],
    [{ gel_kg: 0 }, 'no-gel'],
    [{ volume_l: undefined }, 'no-volume'],
    [{ gel_conditioned_on: undefined }, 'no-start'],
  ])('is not seen with %j', (without, why) => {
    expect(closedBox({ ...known, box: { ...box, ...without } as typeof box }, knowledge)).toBe(why)
  })

  it('begins with the newest gel, whoever told of it', () => {
    const change = entry({ kind: 'gel-change', on: day('2026-03-01'), given: { gel_kg: 1 } })
    expect(gelSince(box, [change])).toBe('2026-03-01')
    expect(gelSince({ ...box, gel_conditioned_on: day('2026-04-01') }, [change])).toBe('2026-04-01')
  })

  it('begins with the first that was read of it where nobody wrote when its gel was renewed', () => {
    const undated = { ...box, gel_conditioned_on: undefined } as never
    const strip = {
      kind: 'strip',
      on: 20_000,
      lowRhPercent: 10,
      highRhPercent: 15,
      errorRhPercent: 5,
    } as const
    const sightings = [{ kind: 'lid-loose', on: 19_000 } as const, strip]
    expect(closedBox({ ...known, box: undated, sightings }, knowledge)).toMatchObject({
      startedOn: 20_000,
      startRhPercent: { low: 10, nominal: 12.5, high: 15 },
    })
  })

  it('has the volume its measures make', () => {
    const measured = { ...box, volume_l: undefined, length_mm: 400, width_mm: 300, height_mm: 100 } as never
    expect(closedBox({ ...known, box: measured }, knowledge)).toMatchObject({ volumeL: 12 })
  })
})

describe('a tub', () => {
  const tub = { box: 'T1', kind: 'tub' }
  const today = day('2026-11-25')
  const stay = (from: string) => ({ findId: 'f', box: 'T1', from: day(from), to: null })

  it('counts the days since the first of its finds was put in', () => {
    const held = tubOf(tub, 2, [], [stay('2026-11-20'), stay('2026-11-01')], today, knowledge)
    expect(held).toMatchObject({
      filledOn: '2026-11-01',
      daysHeld: 24,
      daysAllowed: 14,
      pastItsDays: true,
      waterDue: true,
    })
  })

  it('is due for water a week after it was changed, and at once where nobody knows', () => {
    const changed = entry({ kind: 'water-change', on: day('2026-11-20'), given: {} })
    expect(tubOf(tub, 1, [changed], [stay('2026-11-19')], today, knowledge)).toMatchObject({
      waterChangedOn: '2026-11-20',
      waterDueOn: '2026-11-27',
      waterDue: false,
      pastItsDays: false,
    })
    expect(tubOf(tub, 1, [], [], today, knowledge)).toMatchObject({
      daysHeld: null,
      waterDueOn: null,
      waterDue: true,
    })
  })

  it('that is empty waits for nobody', () => {
    expect(tubOf(tub, 0, [], [], today, knowledge)).toMatchObject({ daysHeld: null, waterDue: false })
    expect(tubOf({ box: 'B1' }, 3, [], [], today, knowledge)).toBeNull()
  })
})

describe('where readings land', () => {
  const hours = (from: string, count: number) => {
    const first = Date.parse(`${from}T00:00Z`)
    const atMs = Float64Array.from({ length: count }, (_, hour) => first + hour * 3_600_000)
    return { atMs, rhPercent: new Float32Array(count), temperatureC: new Float32Array(count) }
  }

  it('is by the clock of the store, and nothing is lost', () => {
    const stood = [
      { box: 'B1', from: day('2026-06-02'), to: day('2026-06-02') },
      { room: 'Hall', from: day('2026-06-04') },
    ]
    const { lands, nowhere } = landingsOf(hours('2026-06-01', 4 * 24), stood, 'Europe/London')
    expect(lands.map(({ box, room, readings }) => [box, room, readings])).toEqual([
      ['B1', null, 24],
      [null, 'Hall', 25],
    ])
    expect(nowhere).toMatchObject({ readings: 47 })
    // Midnight of the store in summer is an hour before that of UTC.
    expect(lands[0]!.fromMs).toBe(Date.parse('2026-06-01T23:00Z'))
  })

  it('is nowhere where a logger has no place', () => {
    expect(landingsOf(hours('2026-06-01', 5), [], 'UTC')).toMatchObject({
      lands: [],
      nowhere: { readings: 5 },
    })
  })
})
