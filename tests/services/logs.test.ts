import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { given } from '../../lib/base/outcome.ts'
import { noAnswers } from '../../lib/logger/read/log-answers.ts'
import { engines } from '../database/engines.ts'
import { day, record } from '../database/samples.ts'
import { logBytes, logText } from './log-files.ts'
import { bytes, stage, value, type Stage } from './world.ts'

const manager = { name: 'Cy Warden', role: 'store-manager', device: 'store computer' } as const

const tables = [
  'room,rh_low,rh_high\nMetal store,28,42\n',
  'box,room,model,volume_l,gel_kg,gel_conditioned_on,gel_rh_percent\nB1,Metal store,clip,10,0.5,2026-01-01,5\nB2,Metal store,clip,10,0.5,2026-01-01,5\n',
  'serial,box,from,to,floor_rh_percent\nL1,B1,2026-01-05,2026-02-10,\nL1,B2,2026-02-10,,\nL2,,,,15\n',
]

describe.each(engines)('logger files on %s', (engine) => {
  let at: Stage
  beforeAll(async () => {
    at = await stage(engine)
  })
  afterAll(() => at.opened.close())

  const project = async (name: string) => {
    const { id } = value(await at.services.startProject({ name }, manager))
    for (const table of tables)
      value(await at.services.keepPlaces({ projectId: id, bytes: bytes(table) }, manager))
    const records = ['B1', 'B1', 'B2'].map((box, number) =>
      record(`TW-${number}`, { box, recorded_on: day('2026-01-02'), state_now: 'dry', burial: ['marine'] }),
    )
    value(await at.services.addRecords({ projectId: id, records }, manager))
    return id
  }
  const keep = async (projectId: string, content: Uint8Array, more: object = {}) =>
    value(await at.services.keepLog({ projectId, name: 'log.csv', bytes: content, ...more }, manager))
  const loggerId = async (projectId: string, serial: string) =>
    value(
      await at.opened.store.read(async (reads) =>
        given((await reads.loggers.bySerials(projectId, [serial]))[0]!.id),
      ),
    )
  const readings = async (id: string) =>
    value(await at.opened.store.read(async (reads) => given(await reads.readings.extents([id]))))

  const sixWeeks = logBytes({
    serial: 'L1',
    from: '2026-01-01',
    hours: 60 * 24,
    rh: (hour) => 5 + hour / 300,
  })

  it('tell in a dry run what they would bring and where it belongs, and keep nothing', async () => {
    const projectId = await project('Dry run')
    const read = value(await at.services.readLogFile({ projectId, name: 'log.csv', bytes: sixWeeks }))
    expect(read).toMatchObject({ asks: [], kept: null })
    const [channel] = read.channels
    expect(channel).toMatchObject({ serial: 'L1', readings: 1440, withHumidity: 1440 })
    expect(channel!.lands.map(({ box, from, to, readings: count }) => [box, from, to, count])).toEqual([
      ['B1', '2026-01-05', '2026-02-09', 36 * 24],
      ['B2', '2026-02-10', null, 20 * 24],
    ])
    expect(channel!.nowhere).toMatchObject({ readings: 4 * 24, fromMs: Date.parse('2026-01-01T00:00Z') })
    expect(await readings(await loggerId(projectId, 'L1'))).toEqual([])
  })

  it('are kept whole under their hash, and read again change nothing', async () => {
    const projectId = await project('Again')
    const first = await keep(projectId, sixWeeks)
    expect(first).toMatchObject({ alreadyThere: false, readingsAdded: 1440, conflicts: 0, newLoggers: [] })
    expect(await keep(projectId, sixWeeks)).toMatchObject({
      alreadyThere: true,
      readingsAdded: 0,
      fileId: first.fileId,
    })
    const original = value(await at.services.logOriginal({ fileId: first.fileId }))
    expect(original).toMatchObject({ sound: true, file: { name: 'log.csv' } })
    expect(Buffer.from(original.bytes).equals(Buffer.from(sixWeeks))).toBe(true)
    const [extent] = await readings(await loggerId(projectId, 'L1'))
    expect(extent).toMatchObject({ firstDay: '2026-01-01', lastDay: '2026-03-01', days: 60 })
  })

  it('that overlap bring only what is new', async () => {
    const projectId = await project('Overlap')
    await keep(projectId, sixWeeks)
    const longer = logBytes({
      serial: 'L1',
      from: '2026-02-01',
      hours: 60 * 24,
      rh: (hour) => 5 + (hour + 31 * 24) / 300,
    })
    expect(await keep(projectId, longer)).toMatchObject({ readingsAdded: 31 * 24, conflicts: 0 })
    const other = logBytes({ serial: 'L1', from: '2026-03-31', hours: 48, rh: () => 50 })
    expect(await keep(projectId, other)).toMatchObject({ readingsAdded: 0, conflicts: 48 })
  })

  it('of a logger nobody has listed enter it, where it was said to stand', async () => {
    const projectId = await project('New logger')
    const log = logBytes({ serial: 'L9', from: '2026-03-01', hours: 72, rh: () => 12 })
    const kept = await keep(projectId, log, { stood: { L9: { box: 'B1' } } })
    expect(kept.newLoggers).toEqual(['L9'])
    expect(kept.read.channels[0]).toMatchObject({ nowhere: null, lands: [{ box: 'B1', readings: 72 }] })
  })

  it('that do not say whose they are wait for a person to say it', async () => {
    const projectId = await project('Whose')
    const log = logBytes({ from: '2026-03-01', hours: 72, rh: () => 12 })
    const file = { projectId, name: 'log.csv', bytes: log }
    expect(await at.services.keepLog(file, manager)).toMatchObject({
      ok: false,
      problems: { field: 'serial', because: 'empty' },
    })
    const kept = await keep(projectId, log, { serials: { '': 'L1' } })
    expect(kept.read.channels[0]).toMatchObject({ serial: 'L1', lands: [{ box: 'B2' }] })
    expect(await keep(projectId, log)).toMatchObject({ alreadyThere: true })
  })

  it('that leave the clock open are read with what was answered, and anew with another answer', async () => {
    const projectId = await project('Clock')
    const text = logText({
      serial: 'L1',
      from: '2026-06-01',
      hours: 48,
      rh: (hour) => 10 + hour / 10,
    }).replaceAll('Z,', ',')
    const file = { projectId, name: 'log.csv', bytes: bytes(text) }
    expect(await at.services.keepLog(file, manager)).toMatchObject({
      ok: false,
      problems: { field: 'time-zone' },
    })
    const inUtc = await keep(projectId, file.bytes, { answers: { ...noAnswers, timeZone: 'UTC' } })
    expect(inUtc.readingsAdded).toBe(48)
    expect(value(await at.services.showStoreSetting(projectId)).setting.timeZone).toBe('UTC')
    const id = await loggerId(projectId, 'L1')
    const first = async () => value(await at.services.logView({ loggerId: id })).firstMs
    expect(await first()).toBe(Date.parse('2026-06-01T00:00Z'))
    const inSummer = await keep(projectId, file.bytes, {
      answers: { ...noAnswers, timeZone: 'Europe/London' },
    })
    expect(inSummer).toMatchObject({ readAnew: true, fileId: inUtc.fileId })
    expect(await first()).toBe(Date.parse('2026-05-31T23:00Z'))
    // A further file of the same logger is read as this one was.
    const next = logText({ serial: 'L1', from: '2026-06-10', hours: 24, rh: () => 12 }).replaceAll('Z,', ',')
    const read = value(await at.services.readLogFile({ projectId, name: 'next.csv', bytes: bytes(next) }))
    expect(read).toMatchObject({ asks: [], answers: { timeZone: 'Europe/London' } })
  })

  it('that hold no reading are not kept, and say so', async () => {
    const projectId = await project('Nothing')
    for (const text of ['', 'just words\n', 'timestamp,temperature_c,relative_humidity_percent\n']) {
      const file = { projectId, name: 'log.csv', bytes: bytes(text) }
      expect(await at.services.keepLog(file, manager)).toMatchObject({
        ok: false,
        problems: { field: 'file' },
      })
      expect(value(await at.services.readLogFile(file)).problems.length).toBeGreaterThan(0)
    }
  })

  it('of one logger read in at the same moment are both kept', async () => {
    const projectId = await project('Both')
    const months = ['2026-03-01', '2026-03-20', '2026-04-05'].map((from) =>
      logBytes({
        serial: 'L1',
        from,
        hours: 30 * 24,
        rh: (hour) => (Date.parse(from) / 3_600_000 + hour) % 40,
      }),
    )
    const kept = await Promise.all(months.map((log) => keep(projectId, log)))
    expect(kept.reduce((sum, { readingsAdded }) => sum + readingsAdded, 0)).toBe(65 * 24)
    const [extent] = await readings(await loggerId(projectId, 'L1'))
    expect(extent).toMatchObject({ firstDay: '2026-03-01', lastDay: '2026-05-04', days: 65 })
  })

  it('are drawn in few stretches that lose no peak', async () => {
    const projectId = await project('View')
    await keep(
      projectId,
      logBytes({
        serial: 'L1',
        from: '2026-01-01',
        hours: 200 * 24,
        rh: (hour) => (hour === 1234 ? 77 : 12),
      }),
    )
    const loggerIdOf = await loggerId(projectId, 'L1')
    const whole = value(await at.services.logView({ loggerId: loggerIdOf }))
    expect(whole.buckets.length).toBeLessThanOrEqual(1200)
    expect(Math.max(...whole.buckets.map(({ maxRhPercent }) => maxRhPercent ?? 0))).toBe(77)
    const peak = Date.parse('2026-01-01T00:00Z') + 1234 * 3_600_000
    const near = value(
      await at.services.logView({ loggerId: loggerIdOf, fromMs: peak - 7_200_000, toMs: peak + 7_200_000 }),
    )
    expect(near.buckets.length).toBeLessThan(8)
    expect(near.buckets.map(({ maxRhPercent }) => maxRhPercent)).toContain(77)
  })

  it('tell what an excursion meant for each find that lay in the box', async () => {
    const projectId = await project('Excursions')
    const damp = (hour: number) => (hour > 20 * 24 && hour < 21 * 24 ? 55 : 8)
    await keep(projectId, logBytes({ serial: 'L1', from: '2026-01-06', hours: 50 * 24, rh: damp }))
    const { boxes } = value(await at.services.listPlaces(projectId))
    const shown = value(await at.services.showBox({ boxId: boxes[0]!.box.id }))
    expect(shown.excursions).toHaveLength(1)
    const [excursion] = shown.excursions
    expect(excursion).toMatchObject({ box: 'B1', serial: 'L1', side: 'above', worstRhPercent: 55 })
    expect(excursion!.hours).toBeCloseTo(23, 5)
    expect(
      excursion!.meanings.map(({ findNumber, meaning }) => [findNumber, meaning.answer === 'none']),
    ).toEqual([
      ['TW-0', false],
      ['TW-1', false],
    ])
    const other = value(await at.services.showBox({ boxId: boxes[1]!.box.id }))
    expect(other.excursions).toEqual([])
    const logger = value(await at.services.showLogger({ loggerId: await loggerId(projectId, 'L1') }))
    expect(logger.excursions).toHaveLength(1)
    expect(logger.channels[0]).toMatchObject({
      readings: 50 * 24,
      told: { statistics: { readings: 50 * 24 } },
    })
    expect(logger.files.map(({ name }) => name)).toEqual(['log.csv'])
  })

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})
