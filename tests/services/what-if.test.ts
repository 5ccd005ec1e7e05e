import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { noChange, type WhatIfAsked, type WhatIfChange } from '../../lib/services/show-what-if.ts'
import { engines } from '../database/engines.ts'
import { assistant, day, record } from '../database/samples.ts'
import { bytes, stage, value, type Stage } from './world.ts'

const manager = { name: 'Cy Warden', role: 'store-manager', device: 'store computer' } as const

const tables = [
  'room,rh_low,rh_high\nMetal store,40,60\nHall,30,70\n',
  [
    'box,room,kind,model,volume_l,air_changes_per_day,gel_kg,gel_conditioned_on,gel_rh_percent,target_max,length_mm,width_mm,height_mm',
    'B1,Metal store,box,clip,10,0.5,0.5,2026-06-05,5,,,,',
    'B2,Metal store,box,clip,10,0.5,0.5,2026-06-05,,,,,',
    'B3,Metal store,box,clip,10,,,,,,,,',
    'B4,Metal store,box,clip,,,0.5,2026-06-05,5,15,,,',
    'B5,Hall,box,clip,10,,0.5,2026-06-05,5,,,,',
    'B6,Hall,box,clip,10,,0.5,2026-06-05,25,15,,,',
    'P1,Hall,barrier-pack,,,8,0.5,2026-06-05,5,15,300,200,100',
    'P2,Hall,barrier-pack,,,0.01,0.1,2026-06-05,5,15,300,200,100',
    'T1,Hall,tub,,20,,,,,,,,',
    '',
  ].join('\n'),
]

const dry = { state_now: 'dry', burial: ['marine'], recorded_on: day('2026-01-02') } as const
const better = { now: 'film-high-density-polyethylene', then: 'film-fluoropolymer' } as const

describe.each(engines)('what a change would buy, on %s', (engine) => {
  let at: Stage
  let projectId: string
  beforeAll(async () => {
    at = await stage(engine)
    projectId = value(await at.services.startProject({ name: 'Store' }, manager)).id
    for (const table of tables)
      value(await at.services.keepPlaces({ projectId, bytes: bytes(table) }, manager))
    const records = ['B1', 'B2'].map((box) => record(`TW-${box}`, { box, ...dry }))
    value(await at.services.addRecords({ projectId, records }, assistant))
  })
  afterAll(() => at.opened.close())

  const shown = async (change: Partial<WhatIfChange> = {}, of: Partial<WhatIfAsked> = {}) =>
    value(await at.services.showWhatIf({ projectId, ...of, change: { ...noChange, ...change } }))

  it('counts what it can reckon and says aloud what it leaves out, and why', async () => {
    const { counted, leftOut, rooms, boxes, packs } = await shown()
    expect(counted).toBe(4)
    expect(leftOut).toEqual([
      { because: 'begins-over', boxes: ['B6'] },
      { because: 'no-gel', boxes: ['B3'] },
      { because: 'no-volume', boxes: ['B4'] },
      { because: 'no-limit', boxes: ['B5'] },
      { because: 'tub', boxes: ['T1'] },
    ])
    expect(rooms).toEqual(['Hall', 'Metal store'])
    expect([boxes.length, packs]).toEqual([9, 2])
  })

  it('saves nothing where nothing is tried', async () => {
    const { whole } = await shown()
    expect(whole.saved.renewalsPerYear).toEqual({ p10: 0, p50: 0, p90: 0, nominal: 0 })
    expect(whole.before.renewalsPerYear.p50).toBeGreaterThan(0)
  })

  it('saves renewals and gel in a drier room, and says how dry that is', async () => {
    const { whole, byRoom } = await shown({ drierByPercent: 20 })
    expect(whole.saved.renewalsPerYear.p10).toBeGreaterThan(0)
    expect(whole.saved.kgPerYear.p10).toBeGreaterThan(0)
    const store = byRoom.find(({ room }) => room === 'Metal store')!
    expect(store.meanRhPercent).toEqual({ now: 50, then: 30 })
    expect((await shown({ drierByPercent: -20 })).whole.saved.renewalsPerYear.p90).toBeLessThan(0)
  })

  it('halves everything in boxes that let in half as much', async () => {
    const { whole } = await shown({ leakLessPercent: 50 }, { box: 'B1' })
    expect(whole.after.renewalsPerYear.p50 / whole.before.renewalsPerYear.p50).toBeCloseTo(0.5, 1)
    expect(whole.after.kgPerYear.p50 / whole.before.kgPerYear.p50).toBeCloseTo(0.5, 1)
  })

  it('saves walks but hardly a gram with more gel, and says what goes in first and where it has no room', async () => {
    const { whole, moreGelKg, noRoomForGel } = await shown({ gelTimes: 2 }, { box: 'B1' })
    expect(whole.saved.renewalsPerYear.p50).toBeGreaterThan(0.2 * whole.before.renewalsPerYear.p50)
    expect(Math.abs(whole.saved.kgPerYear.p50)).toBeLessThan(0.03 * whole.before.kgPerYear.p50)
    expect(moreGelKg).toBeCloseTo(0.5, 9)
    expect(noRoomForGel).toEqual([])
    expect((await shown({ gelTimes: 20 }, { box: 'B1' })).noRoomForGel).toEqual(['B1'])
  })

  it('takes a better film off packs alone, and leaves one out that is tighter than its film by print', async () => {
    const { each, leftOut } = await shown({ film: better }, { room: 'Hall' })
    expect(each.map(({ box }) => box)).toEqual(['P1'])
    expect(each[0]!.bought.saved.renewalsPerYear.p50).toBeGreaterThan(0)
    expect(leftOut.find(({ because }) => because === 'film-disagrees')).toMatchObject({ boxes: ['P2'] })
    const boxes = await shown({ film: better }, { room: 'Metal store' })
    expect(boxes.whole.saved.kgPerYear.p90).toBe(0)
  })

  it('names boxes whose gel may come too damp to help', async () => {
    expect((await shown()).mayComeDamp).toEqual(['B2'])
  })

  it('is asked of a room or of a box, by name or id; a place that is not there is told', async () => {
    const room = await shown({}, { room: 'Metal store' })
    expect(room.each.map(({ box }) => box).toSorted()).toEqual(['B1', 'B2'])
    const one = await shown({}, { box: 'B1' })
    expect(one).toMatchObject({ counted: 1, box: { name: 'B1', room: 'Metal store' }, byRoom: [] })
    expect(await shown({}, { box: one.box!.id })).toEqual(one)
    const missing = await at.services.showWhatIf({ projectId, box: 'B99', change: noChange })
    expect(missing).toMatchObject({ ok: false, problems: { kind: 'missing', what: 'box' } })
    const nowhere = await at.services.showWhatIf({ projectId, room: 'Attic', change: noChange })
    expect(nowhere).toMatchObject({ ok: false, problems: { kind: 'missing', what: 'room' } })
  })

  it('holds only numbers that pages can be sent', async () => {
    const { whole, each } = await shown({ drierByPercent: 5 })
    const sent = { whole, each }
    expect(JSON.parse(JSON.stringify(sent))).toEqual(sent)
  })

  const kept = async (box: string, limitRhPercent = 15, days = 365) =>
    value(await at.services.showKeep({ projectId, box, limitRhPercent, days }))

  it('tells how much gel keeps a box under a limit: more for longer, and more to be surer', async () => {
    const year = await kept('B1')
    if (!('gelKg' in year)) throw new Error('It has a volume')
    const { nominal, nineInTen } = year.gelKg
    expect(nominal).toBeGreaterThan(0)
    expect(nineInTen!).toBeGreaterThan(nominal!)
    const two = await kept('B1', 15, 730)
    expect('gelKg' in two && two.gelKg.nominal! > nominal!).toBe(true)
    expect(year).toMatchObject({ holdsKg: 0.5, bearsRhPercent: 12, airChangesFrom: 'written' })
  })

  it('answers for a box of which nobody wrote its gel; not for a tub, nor without a size', async () => {
    expect(await kept('B3')).toMatchObject({ holdsKg: null, airChangesFrom: 'assumed' })
    expect(await kept('B4')).toEqual({ box: 'B4', because: 'no-volume' })
    expect(await kept('T1')).toEqual({ box: 'T1', because: 'tub' })
  })

  it('says so where no amount of gel does it', async () => {
    expect(await kept('B1', 4)).toMatchObject({ gelKg: { nominal: null, nineInTen: null } })
  })

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})
