import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DiaryEntry, DiaryQuery } from '../../lib/services/diary.ts'
import { given } from '../../lib/base/outcome.ts'
import { engines } from '../database/engines.ts'
import { assistant, day, record } from '../database/samples.ts'
import { bytes, stage, value, type Stage } from './world.ts'

const manager = { name: 'Cy Warden', role: 'store-manager', device: 'store phone' } as const
const boxesTable =
  'box,room,kind,gel_kg,gel_kind,gel_conditioned_on,gel_rh_percent\nB1,Metal store,box,0.5,orange,2026-01-10,5\nB2,Metal store,box,,,,\nT1,Cold room,tub,,,,\n'

describe.each(engines)('the diary of the store on %s', (engine) => {
  let at: Stage
  beforeAll(async () => {
    at = await stage(engine)
  })
  afterAll(() => at.opened.close())

  const project = async (name: string) => {
    const { id } = value(await at.services.startProject({ name }, manager))
    value(
      await at.services.keepPlaces(
        { projectId: id, bytes: bytes('room\nMetal store\nCold room\n') },
        manager,
      ),
    )
    value(await at.services.keepPlaces({ projectId: id, bytes: bytes(boxesTable) }, manager))
    return id
  }
  const diary = async (query: DiaryQuery): Promise<readonly DiaryEntry[]> =>
    value(await at.opened.store.read(async (reads) => given(await reads.diary.list(query))))
  const boxes = async (projectId: string) =>
    new Map(value(await at.services.listPlaces(projectId)).boxes.map(({ box }) => [box.given.box, box]))

  it('takes a walk once, however often it is sent', async () => {
    const projectId = await project('Walk')
    const rounds = [
      {
        box: 'B1',
        on: day('2026-06-01'),
        strip_low: 10,
        strip_high: 15,
        gel_colour: 'orange',
        lid: 'seated',
        atMs: 1_780_300_000_000,
      },
      { box: 'B2', on: day('2026-06-01'), lid: 'not-seated' },
    ]
    expect(value(await at.services.keepRound({ projectId, rounds }, manager))).toMatchObject({
      added: 2,
      alreadyThere: 0,
      problems: [],
    })
    expect(value(await at.services.keepRound({ projectId, rounds }, manager))).toMatchObject({
      added: 0,
      alreadyThere: 2,
    })
    const entries = await diary({ projectId, kinds: ['round'] })
    expect(entries).toMatchObject([
      { box: 'B2', on: '2026-06-01', atMs: null, given: { lid: 'not-seated', by: 'Cy Warden' }, by: manager },
      { box: 'B1', atMs: 1_780_300_000_000, given: { strip_low: 10, strip_high: 15 } },
    ])
  })

  it('says everything that is wrong with a walk at once, and keeps the rest', async () => {
    const projectId = await project('Wrong walk')
    const rounds = [
      { box: 'B1', on: day('2026-06-01'), strip_low: 30, strip_high: 15 },
      { box: '', on: day('2026-06-01'), strip_low: 140 },
      { box: 'B9', on: day('2026-06-01'), strip_low: 10 },
    ]
    const kept = value(await at.services.keepRound({ projectId, rounds }, manager))
    expect(kept.added).toBe(2)
    expect(kept.unreadable).toEqual([2])
    expect(kept.problems.map(({ code, row, column }) => [code, row, column])).toEqual([
      ['ends-swapped', 1, 'strip_low'],
      ['out-of-range', 2, 'strip_low'],
      ['no-place-name', 2, 'box'],
      ['unlisted-box', 3, 'box'],
    ])
    const ahead = await at.services.keepRound(
      { projectId, rounds: [{ box: 'B1', on: day('2027-01-01') }] },
      manager,
    )
    expect(ahead).toMatchObject({ ok: false, problems: { field: 'on' } })
  })

  it('hears a danger in a remark of a round', async () => {
    const projectId = await project('Danger')
    const rounds = [{ box: 'B1', on: day('2026-06-01'), extra: { remark: 'grenade at the bottom' } }]
    const { stops } = value(await at.services.keepRound({ projectId, rounds }, manager))
    expect(stops).toMatchObject([{ row: 1, caution: { code: 'ammunition', level: 'stop' } }])
  })

  it('renews gel: the box as it is now, what it was before, and the stock', async () => {
    const projectId = await project('Gel')
    value(
      await at.services.keepStoreSetting(
        { projectId, setting: { gelDryKg: 4, gelSpentKg: 1 }, version: null },
        manager,
      ),
    )
    const gel = { projectId, box: 'B1', version: 1, on: day('2026-11-20'), gel_kg: 1.25, gel_rh_percent: 4 }
    expect(value(await at.services.renewGel(gel, manager))).toEqual({ entered: true })
    expect((await boxes(projectId)).get('B1')).toMatchObject({
      version: 2,
      given: {
        gel_kg: 1.25,
        gel_kind: 'orange',
        gel_conditioned_on: '2026-11-20',
        gel_rh_percent: 4,
        opened_on: '2026-11-20',
      },
    })
    const history = await diary({ projectId, kinds: ['gel-change'], boxes: ['B1'] })
    expect(history.map(({ on, given: told }) => [on, (told as { gel_kg: number }).gel_kg])).toEqual([
      ['2026-01-10', 0.5],
      ['2026-11-20', 1.25],
    ])
    expect(value(await at.services.showStoreSetting(projectId)).setting).toMatchObject({
      gelDryKg: 2.75,
      gelSpentKg: 1.5,
    })

    expect(value(await at.services.renewGel(gel, manager))).toEqual({ entered: false })
    expect(value(await at.services.showStoreSetting(projectId)).setting.gelDryKg).toBe(2.75)
    const late = await at.services.renewGel({ ...gel, gel_kg: 2, on: day('2026-11-21') }, manager)
    expect(late).toMatchObject({ ok: false, problems: { kind: 'changed-meanwhile', what: 'box' } })
    expect(await diary({ projectId, kinds: ['gel-change'], boxes: ['B1'] })).toHaveLength(2)
  })

  it('does not take an older gel change for the newest', async () => {
    const projectId = await project('Older gel')
    const gel = { projectId, box: 'B1', version: null, gel_kg: 9 }
    value(await at.services.renewGel({ ...gel, on: day('2025-03-01') }, manager))
    expect((await boxes(projectId)).get('B1')!.given).toMatchObject({
      gel_kg: 0.5,
      gel_conditioned_on: '2026-01-10',
    })
  })

  it.each([
    [{ on: '2027-01-01' }, 'on'],
    [{ on: 'soon' }, 'on'],
    [{ gel_kg: -1 }, 'gel_kg'],
    [{ gel_rh_percent: 140 }, 'gel_rh_percent'],
  ])('does not take gel that cannot be: %j', async (wrong, field) => {
    const gel = { projectId: 'any', box: 'B1', version: null, on: day('2026-11-20'), gel_kg: 1 }
    const answer = await at.services.renewGel({ ...gel, ...wrong } as typeof gel, manager)
    expect(answer).toMatchObject({ ok: false, problems: { kind: 'not-accepted', field } })
  })

  it('moves a find: out, back, and into another box', async () => {
    const projectId = await project('Moves')
    const records = [record('TW-1', { box: 'B1', recorded_on: day('2026-02-01') })]
    const { finds } = value(await at.services.addRecords({ projectId, records }, assistant))
    const findId = finds[0]!.id
    const move = (more: object, on = '2026-05-01') =>
      at.services.moveFind({ findId, on: day(on), move: 'out', ...more }, manager)
    expect(value(await move({ where: 'drawing office', why: 'drawing', atMs: 1 }))).toEqual({ entered: true })
    expect(await move({ where: 'again' }, '2026-05-02')).toMatchObject({
      ok: false,
      problems: { field: 'move', because: 'taken' },
    })
    expect(value(await move({ where: 'drawing office', why: 'drawing', atMs: 1 }))).toEqual({
      entered: false,
    })
    expect(value(await move({ move: 'back' }, '2026-05-09'))).toEqual({ entered: true })
    expect(await move({ move: 'back' }, '2026-05-10')).toMatchObject({
      ok: false,
      problems: { field: 'move' },
    })
    expect(await move({ move: 'to-box', box: 'B9' }, '2026-06-01')).toMatchObject({
      ok: false,
      problems: { kind: 'missing', what: 'box' },
    })
    value(await move({ move: 'to-box', box: 'B2' }, '2026-06-01'))
    const places = value(await at.services.listPlaces(projectId))
    expect(places.boxes.map(({ box, total }) => [box.given.box, total])).toEqual([
      ['B1', 0],
      ['B2', 1],
      ['T1', 0],
    ])
    const stays = value(
      await at.opened.store.read(async (reads) => given(await reads.stays.ofFinds([findId]))),
    )
    expect(stays).toEqual([
      { findId, box: 'B1', from: '2026-02-01', to: '2026-05-31' },
      { findId, box: 'B2', from: '2026-06-01', to: null },
    ])
  })

  it('tends tubs and lids', async () => {
    const projectId = await project('Tend')
    value(await at.services.changeWater({ projectId, box: 'T1', on: day('2026-11-01') }, manager))
    value(
      await at.services.noteLid(
        { projectId, box: 'B1', on: day('2026-11-02'), lid: 'opened', minutes: 5 },
        manager,
      ),
    )
    value(
      await at.services.noteLid({ projectId, box: 'B2', on: day('2026-11-03'), lid: 'not-seated' }, manager),
    )
    const now = await boxes(projectId)
    expect(now.get('T1')!.given.water_changed_on).toBe('2026-11-01')
    expect(now.get('B1')!.given.opened_on).toBe('2026-11-02')
    expect(now.get('B2')!.given.opened_on).toBeUndefined()
    expect((await diary({ projectId, kinds: ['lid', 'water-change'] })).map(({ box }) => box)).toEqual([
      'T1',
      'B1',
      'B2',
    ])
  })

  it('keeps coupons where they hung', async () => {
    const projectId = await project('Coupons')
    const strip = {
      projectId,
      on: day('2026-11-01'),
      metal: 'silver',
      area_cm2: 32,
      days: 365,
      mass_change_mg: 0.3,
      method: 'mass-gain',
    } as const
    value(await at.services.keepCoupon({ ...strip, room: 'Metal store' }, manager))
    expect(await at.services.keepCoupon(strip, manager)).toMatchObject({
      ok: false,
      problems: { field: 'room' },
    })
    expect(await at.services.keepCoupon({ ...strip, room: 'Attic' }, manager)).toMatchObject({
      ok: false,
      problems: { kind: 'missing' },
    })
    expect(await diary({ projectId, kinds: ['coupon'] })).toMatchObject([
      { room: 'Metal store', given: { metal: 'silver', hung_on: '2025-11-01' } },
    ])
  })

  it('puts loggers in their places, one after the other', async () => {
    const projectId = await project('Loggers')
    const table =
      'serial,model,floor_rh_percent,box,from,to\nL1,small,15,B1,2026-01-10,2026-03-01\nL1,small,15,B2,2026-03-01,\n'
    value(await at.services.keepPlaces({ projectId, bytes: bytes(table) }, manager))
    const loggers = async () =>
      value(await at.opened.store.read(async (reads) => given(await reads.loggers.ofProject(projectId))))
    const [first] = await loggers()
    expect(first!.given).toMatchObject({
      serial: 'L1',
      floor_rh_percent: 15,
      stood: [
        { box: 'B1', to: '2026-03-01' },
        { box: 'B2', from: '2026-03-01' },
      ],
    })
    value(await at.services.keepPlaces({ projectId, bytes: bytes(table) }, manager))
    expect((await loggers())[0]!.version).toBe(1)
    value(
      await at.services.placeLogger(
        { projectId, serial: 'L1', version: 1, room: 'Metal store', on: day('2026-09-01') },
        manager,
      ),
    )
    expect((await loggers())[0]!.given.stood).toEqual([
      { box: 'B1', from: '2026-01-10', to: '2026-03-01' },
      { box: 'B2', from: '2026-03-01', to: '2026-09-01' },
      { room: 'Metal store', from: '2026-09-01' },
    ])
    const overlap = bytes('serial,box,from,to\nL1,B1,2026-02-01,2026-03-20\n')
    const { problems } = value(await at.services.keepPlaces({ projectId, bytes: overlap }, manager))
    expect(problems).toMatchObject([
      { code: 'stands-overlap', row: 2 },
      { code: 'stands-overlap', row: 2 },
    ])
    const again = { serial: 'L1', stood: [] }
    expect(await at.services.keepLogger({ projectId, logger: again, version: null }, manager)).toMatchObject({
      ok: false,
      problems: { field: 'serial', because: 'taken' },
    })
  })

  it.each([
    [{ timeZone: 'Nowhere/Town' }, 'timeZone'],
    [{ gelDryKg: -1 }, 'gelDryKg'],
    [{ hoursByMonth: [1, 2, 3] }, 'hoursByMonth'],
  ])('does not take a setting that cannot be: %j', async (setting, field) => {
    const answer = await at.services.keepStoreSetting({ projectId: 'any', setting, version: null }, manager)
    expect(answer).toMatchObject({ ok: false, problems: { kind: 'not-accepted', field } })
  })

  it('keeps what was set before beside what is set now, and notices who was faster', async () => {
    const projectId = await project('Setting')
    const keep = (setting: object, version: number | null) =>
      at.services.keepStoreSetting({ projectId, setting, version }, manager)
    value(await keep({ timeZone: 'Europe/London', minutesPerBox: 20 }, null))
    value(await keep({ hoursPerWeek: 4 }, 1))
    expect(await keep({ hoursPerWeek: 9 }, 1)).toMatchObject({
      ok: false,
      problems: { what: 'store setting' },
    })
    expect(value(await at.services.showStoreSetting(projectId))).toMatchObject({
      version: 2,
      setting: { timeZone: 'Europe/London', minutesPerBox: 20, hoursPerWeek: 4, gelDryKg: null },
    })
  })

  it('says a stop that a table of the store calls for, and keeps nothing in a dry run', async () => {
    const projectId = await project('Stop')
    const table = bytes('box,room,seal_note\nB7,Metal store,live grenade inside\n')
    const tried = value(await at.services.keepPlaces({ projectId, bytes: table, dryRun: true }, manager))
    expect(tried).toMatchObject({ boxes: 1, stops: [{ row: 2, caution: { code: 'ammunition' } }] })
    expect((await boxes(projectId)).has('B7')).toBe(false)
  })

  it('keeps columns that a later table does not have', async () => {
    const projectId = await project('Columns')
    value(await at.services.keepPlaces({ projectId, bytes: bytes('box,shelf,gel_kg\nB1,C2,\n') }, manager))
    expect((await boxes(projectId)).get('B1')!.given).toEqual({
      box: 'B1',
      room: 'Metal store',
      kind: 'box',
      shelf: 'C2',
      gel_kind: 'orange',
      gel_conditioned_on: '2026-01-10',
      gel_rh_percent: 5,
    })
  })

  it('puts rows of a table that could not be read down to be mended', async () => {
    const projectId = await project('Mend')
    const table = 'event,on,find_number,move,box\nmoved,2026-05-01,TW-77,to-box,B1\nmoved,,TW-1,out,\n'
    const kept = value(
      await at.services.keepPlaces({ projectId, bytes: bytes(table), fileName: 'diary.csv' }, manager),
    )
    expect(kept).toMatchObject({ unreadableRows: 2, entriesAdded: 0 })
    const files = await Promise.all(
      kept.importIds.map(async (id) => value(await at.services.rejectedRows(id))),
    )
    expect(files.map(({ text }) => text).join('\n')).toContain('TW-77')
    expect(files.map(({ text }) => text).join('\n')).toContain('TW-1')
  })

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})
