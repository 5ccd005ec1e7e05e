import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { StoreYear } from '../../lib/services/store-report.ts'
import { engines } from '../database/engines.ts'
import { assistant, day, record } from '../database/samples.ts'
import { logBytes } from './log-files.ts'
import { bytes, stage, value, type Stage } from './world.ts'

const manager = { name: 'Cy Warden', role: 'store-manager', device: 'store computer' } as const

const tables = [
  'room,rh_low,rh_high\nMetal store,40,50\nHall,30,60\n',
  [
    'box,room,kind,volume_l,gel_kg,gel_conditioned_on,gel_rh_percent',
    'B1,Metal store,box,10,0.5,2026-01-05,5',
    'B2,Metal store,box,10,0.5,2024-01-05,5',
    'B3,Hall,box,10,,,',
    'B4,Hall,box,,,,',
    'T1,Hall,tub,20,,,',
    "'=EVIL(),Hall,box,,,,",
    '',
  ].join('\n'),
  'serial,box,from,to\nL1,B1,2026-01-01,\n',
  [
    'box,on,strip_low,strip_high,gel_colour,lid,by',
    'B1,2025-06-01,5,10,,seated,CW',
    'B2,2025-06-01,20,30,,seated,CW',
    'B2,2026-03-01,20,30,,not-seated,CW',
    'B3,2026-03-01,5,10,,seated,CW',
    '',
  ].join('\n'),
]

const dry = { state_now: 'dry', burial: ['marine'] } as const

describe.each(engines)('a year of the store on %s', (engine) => {
  let at: Stage
  let projectId: string
  beforeAll(async () => {
    at = await stage(engine)
    projectId = value(await at.services.startProject({ name: 'Store' }, manager)).id
    for (const table of tables)
      value(await at.services.keepPlaces({ projectId, bytes: bytes(table) }, manager))
    const records = [
      record('TW-1', { box: 'B1', recorded_on: day('2025-01-02'), ...dry }),
      record('TW-2', { box: 'B1', recorded_on: day('2026-09-01'), ...dry }),
      record('TW-3', { box: 'B2', recorded_on: day('2025-01-02'), ...dry }),
      record('TW-4', { box: 'B3', recorded_on: day('2025-01-02'), ...dry }),
    ]
    value(await at.services.addRecords({ projectId, records }, assistant))
    // Two days and a half over what iron bears, in May; otherwise dry.
    const rh = (hour: number) => (hour >= 120 * 24 && hour < 122.5 * 24 ? 27 : 6)
    const log = logBytes({ serial: 'L1', from: '2026-01-01', hours: 320 * 24, rh })
    value(await at.services.keepLog({ projectId, name: 'b1.csv', bytes: log }, manager))
    const renewed = {
      projectId,
      box: 'B2',
      version: null,
      on: day('2026-03-02'),
      gel_kg: 0.6,
      removed_kg: 0.5,
    }
    value(await at.services.renewGel(renewed, manager))
    const flood = {
      projectId,
      room: 'Hall',
      boxes: ['B3'],
      on: day('2026-10-01'),
      how: 'leak',
      note: '',
    } as const
    value(await at.services.enterFlood(flood, manager))
    const { finds } = value(await at.services.listFinds({ projectId, order: 'number', limit: 9 }))
    const out = {
      projectId,
      findId: finds[2]!.findId,
      on: day('2026-11-01'),
      move: 'out',
      where: 'laboratory',
      why: '',
    }
    value(await at.services.moveFind(out as Parameters<typeof at.services.moveFind>[0], manager))
  })
  afterAll(() => at.opened.close())

  const year = async (of = 2026): Promise<StoreYear> =>
    value(await at.services.reportYear({ projectId, year: of }))

  it('runs still, and knows of all years before it', async () => {
    const told = await year()
    expect(told).toMatchObject({ running: true, year: 2026, years: [2026, 2025, 2024] })
    expect(told.report).toMatchObject({ from: '2026-01-01', to: '2026-11-25', ahead: '2027-12-31' })
    expect((await year(2025)).running).toBe(false)
  })

  it('tells how boxes stood by their newest reading of the year', async () => {
    const { states, boxes, restsOn } = (await year()).report
    expect(boxes).toBe(5)
    expect(states).toMatchObject({
      'in-band': ['B1', 'B3'],
      'renewed-unread': ['B2'],
      'no-limit': ['=EVIL()', 'B4'],
    })
    expect(restsOn).toMatchObject({ strips: 2, boxesRead: 3 })
    const before = (await year(2025)).report
    expect(before.states).toMatchObject({ 'in-band': ['B1'], over: ['B2'], 'not-read': ['B3'] })
  })

  it('counts gel by room, and whether it was renewed in time', async () => {
    const { gel, renewals, rooms } = (await year()).report
    expect(gel).toMatchObject({ putInKg: 1.1, takenOutKg: 0.5, changes: 2, takenOutUnwritten: 1 })
    expect(renewals.done.map(({ box, how }) => [box, how])).toEqual([
      ['B1', 'in-time'],
      ['B2', 'late'],
    ])
    expect(rooms.map(({ room, putInKg }) => [room, putInKg]).toSorted()).toEqual([
      ['Hall', 0],
      ['Metal store', 1.1],
    ])
    expect((await year(2025)).report.gel.changes).toBe(0)
  })

  it('counts hours over what lay in the box at the time, and which finds', async () => {
    const { atRisk, findsAtRisk } = (await year()).report
    expect(
      atRisk.map(({ box, hoursAbove, worstRhPercent, findIds, stripsOver }) => ({
        box,
        hoursAbove: Math.round(hoursAbove),
        worstRhPercent,
        finds: findIds.length,
        stripsOver,
      })),
    ).toEqual([
      { box: 'B1', hoursAbove: 60, worstRhPercent: 27, finds: 1, stripsOver: 0 },
      { box: 'B2', hoursAbove: 0, worstRhPercent: 20, finds: 1, stripsOver: 1 },
    ])
    expect(findsAtRisk).toBe(2)
    expect((await year(2025)).report.atRisk.map(({ box }) => box)).toEqual(['B2'])
  })

  it('tells of water, lids and finds that were out', async () => {
    const { water, lids, movements, tubs } = await year()
    expect(water).toEqual([{ on: '2026-10-01', room: 'Hall', cause: 'leak', boxes: ['B3'], note: '' }])
    expect(lids).toEqual([
      { box: 'B2', room: 'Metal store', notSeatedOn: ['2026-03-01'], opened: 0, minutesOpen: 0 },
    ])
    expect(movements).toMatchObject([
      { findNumber: 'TW-3', from: '2026-11-01', to: null, days: 24, needsHumidity: true },
    ])
    expect(tubs).toEqual({ tubs: 1, waterChanges: 0 })
    expect(await year(2025)).toMatchObject({ water: [], lids: [], movements: [] })
  })

  it('tells what drier rooms would save, and what it could not reckon', async () => {
    const { drier } = await year()
    expect(drier).toMatchObject({ byPercent: 10, counted: 2, leftOut: 3 })
    expect(drier.whole.saved.renewalsPerYear.p50).toBeGreaterThan(0)
  })

  it('leaves as JSON that holds the same, and as CSV that no spreadsheet runs', async () => {
    const json = value(await at.services.reportYearFile({ projectId, year: 2026, format: 'json' }))
    const told = JSON.parse(json) as { boxes: { box: string }[]; report: StoreYear['report'] }
    expect(told.report.gel.putInKg).toBeCloseTo(1.1, 9)
    expect(told.boxes.map(({ box }) => box)).toEqual(['=EVIL()', 'B1', 'B2', 'B3', 'B4'])
    const csv = value(
      await at.services.reportYearFile({ projectId, year: 2026, format: 'csv', table: 'boxes' }),
    )
    expect(csv).toContain("\r\n'=EVIL(),Hall,")
    expect(csv.split('\r\n')[2]).toMatch(/^B1,Metal store,2,12,in-band,/)
    const tables = (['renewals', 'events', 'movements'] as const).map(async (table) =>
      value(await at.services.reportYearFile({ projectId, year: 2026, format: 'csv', table })),
    )
    const lines = (await Promise.all(tables)).map((text) => text.trim().split('\r\n').length)
    expect(lines).toEqual([3, 3, 2])
  })

  it('knows no year to come', async () => {
    expect(await at.services.reportYear({ projectId, year: 2027 })).toMatchObject({
      ok: false,
      problems: { field: 'year' },
    })
  })

  it('is empty where nothing is kept', async () => {
    const { id } = value(await at.services.startProject({ name: 'Empty' }, manager))
    const told = value(await at.services.reportYear({ projectId: id, year: 2026 }))
    expect(told).toMatchObject({ years: [2026], lines: [], drier: { counted: 0 } })
  })

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})
