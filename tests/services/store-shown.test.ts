import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { BoxLine, StoreShown } from '../../lib/services/show-store.ts'
import { engines } from '../database/engines.ts'
import { assistant, day, record } from '../database/samples.ts'
import { logBytes } from './log-files.ts'
import { bytes, stage, value, type Stage } from './world.ts'

const manager = { name: 'Cy Warden', role: 'store-manager', device: 'store computer' } as const

const tables = [
  'room,rh_low,rh_high,t_low,t_high\nMetal store,40,50,18,20\n',
  [
    'box,room,shelf,kind,model,volume_l,gel_kg,gel_kind,gel_conditioned_on,gel_rh_percent,target_max,seal_note',
    'B1,Metal store,A10,box,clip,10,0.3,orange,2026-01-01,5,,',
    'B2,Metal store,A2,box,clip,10,0.3,orange,2026-01-01,5,,',
    'B3,Metal store,A2,box,clip,10,,,,,,',
    'B4,Metal store,,box,clip,,0.3,plain,2026-01-01,5,15,',
    'B5,Hall,A1,box,clip,10,0.3,plain,,,20,',
    'T1,Cold room,,tub,,20,,,,,,',
    'B6,,,box,clip,10,0.3,plain,2026-01-01,5,20,beware: grenade at the bottom',
    '',
  ].join('\n'),
  'serial,box,from,to\nL1,B1,2026-01-01,\n',
]

const dry = { state_now: 'dry', burial: ['marine'], recorded_on: day('2026-01-02') } as const

describe.each(engines)('the store shown on %s', (engine) => {
  let at: Stage
  let projectId: string
  beforeAll(async () => {
    at = await stage(engine)
    projectId = value(await at.services.startProject({ name: 'Store' }, manager)).id
    for (const table of tables)
      value(await at.services.keepPlaces({ projectId, bytes: bytes(table) }, manager))
    const records = [
      record('TW-1', { box: 'B1', ...dry }),
      record('TW-2', { box: 'B2', ...dry }),
      record('TW-3', {
        box: 'T1',
        recorded_on: day('2026-11-01'),
        state_now: 'wet',
        burial: ['waterlogged'],
        components: [{ component: 'body', material: 'wood' }],
      }),
      record('TW-4', { box: 'B9', ...dry }),
      record('TW-5', dry),
    ]
    value(await at.services.addRecords({ projectId, records }, assistant))
    // A leaky box: from 5 % towards the 45 % of its room in half a year and more.
    const rh = (hour: number) => 45 - 40 * Math.exp(-hour / 24 / 400)
    const log = logBytes({ serial: 'L1', from: '2026-01-01', hours: 320 * 24, stepHours: 6, rh })
    value(await at.services.keepLog({ projectId, name: 'b1.csv', bytes: log }, manager))
  })
  afterAll(() => at.opened.close())

  const shown = async (services = at.services): Promise<StoreShown> =>
    value(await services.showStore(projectId))
  const boxesOf = ({ rooms }: StoreShown): ReadonlyMap<string, BoxLine> =>
    new Map(
      rooms.flatMap(({ shelves }) =>
        shelves.flatMap(({ boxes }) => boxes.map((line) => [line.box.given.box, line])),
      ),
    )

  it('goes by rooms, shelves and boxes as one walks along them', async () => {
    const { rooms } = await shown()
    expect(rooms.map(({ name, room }) => [name, room !== null])).toEqual([
      ['Metal store', true],
      ['Cold room', false],
      ['Hall', false],
      ['', false],
    ])
    expect(
      rooms[0]!.shelves.map(({ shelf, boxes }) => [shelf, boxes.map(({ box }) => box.given.box)]),
    ).toEqual([
      ['A2', ['B2', 'B3']],
      ['A10', ['B1']],
      ['', ['B4']],
    ])
    expect(rooms[0]!.surroundings).toMatchObject({ from: 'written' })
    expect(rooms[2]!.surroundings).toMatchObject({ from: 'assumed' })
  })

  it('tells what a box holds by its own logger, and when its gel falls due', async () => {
    const b1 = boxesOf(await shown()).get('B1')!
    expect(b1).toMatchObject({
      finds: 1,
      loggers: ['L1'],
      noOutlook: null,
      newest: { by: 'logger', on: '2026-11-16' },
    })
    const outlook = b1.outlook!
    expect(outlook.airChangesFrom).toBe('logger')
    const truth = 45 - 40 * Math.exp(-328 / 400)
    expect(outlook.nowRhPercent.p10).toBeLessThan(truth)
    expect(outlook.nowRhPercent.p90).toBeGreaterThan(truth)
    expect(outlook.limitRhPercent).toBe(12)
    expect(outlook.daysToLimit).toMatchObject({ p10: 0, p50: 0 })
    expect(outlook.fan.days).toHaveLength(401)
  })

  it('tells of a box nobody read by its like, and why it cannot tell of others', async () => {
    const boxes = boxesOf(await shown())
    expect(boxes.get('B2')!.outlook).toMatchObject({ airChangesFrom: 'like-boxes' })
    expect(boxes.get('B2')!).toMatchObject({ newest: null, unreadSince: null })
    expect(['B3', 'B4', 'B5', 'T1'].map((name) => boxes.get(name)!.noOutlook)).toEqual([
      'no-gel',
      'no-volume',
      'no-start',
      'tub',
    ])
  })

  it('reckons on when a strip is read, and not again when nothing has changed', async () => {
    const first = boxesOf(await shown()).get('B2')!.outlook
    expect(boxesOf(await shown()).get('B2')!.outlook).toBe(first)
    const rounds = [{ box: 'B2', on: day('2026-11-20'), strip_low: 5, strip_high: 10, lid: 'seated' }]
    value(await at.services.keepRound({ projectId, rounds }, manager))
    const b2 = boxesOf(await shown()).get('B2')!
    expect(b2).toMatchObject({ newest: { on: '2026-11-20', by: 'strip' }, lid: { state: 'seated' } })
    expect(b2.outlook!.nowRhPercent.p50).toBeLessThan(first!.nowRhPercent.p50)
  })

  it('begins anew with fresh gel', async () => {
    const gel = { projectId, box: 'B1', version: null, on: day('2026-11-24'), gel_kg: 0.5, gel_rh_percent: 4 }
    value(await at.services.renewGel(gel, manager))
    const b1 = boxesOf(await shown()).get('B1')!
    expect(b1.outlook!.airChangesFrom).toBe('earlier-gel')
    expect(b1.outlook!.nowRhPercent.p90).toBeLessThan(8)
    expect(b1.outlook!.renewOn!.likely! > '2027-01-01').toBe(true)
  })

  it('counts the days of tubs, and forgets no find', async () => {
    const store = await shown()
    expect(boxesOf(store).get('T1')!.tub).toMatchObject({ daysHeld: 24, pastItsDays: true, waterDue: true })
    expect(store.unlisted).toEqual([{ box: 'B9', finds: 1, rounds: 0 }])
    expect(store.elsewhere).toBe(2)
  })

  it('says a stop that stands in a note, whenever it is looked at', async () => {
    expect(boxesOf(await shown()).get('B6')!.stops).toMatchObject([{ code: 'ammunition', level: 'stop' }])
    expect(boxesOf(await shown()).get('B1')!.stops).toEqual([])
  })

  it('is as of the day on which it is asked', async () => {
    const later = boxesOf(await shown(at.later({ on: '2027-11-25' }))).get('B2')!
    const now = boxesOf(await shown()).get('B2')!
    expect(later.outlook!.nowRhPercent.p50).toBeGreaterThan(now.outlook!.nowRhPercent.p50)
  })

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})
