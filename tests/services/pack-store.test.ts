import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { engines } from '../database/engines.ts'
import { assistant, record } from '../database/samples.ts'
import { bytes, stage, value, type Stage } from './world.ts'

const manager = { name: 'Cy Warden', role: 'store-manager', device: 'store computer' } as const

describe.each(engines)('packing the store on %s', (engine) => {
  let at: Stage
  let projectId: string

  beforeAll(async () => {
    at = await stage(engine)
    projectId = value(await at.services.startProject({ name: 'Store' }, manager)).id
    const keep = (text: string) => at.services.keepPlaces({ projectId, bytes: bytes(text) }, manager)
    value(await keep('room,rh_low,rh_high,t_low,t_high\nStore,40,55,16,20\nCold,70,90,2,5\n'))
    value(
      await keep(
        `box,room,shelf,kind,model,volume_l,air_changes_per_day,target_max,length_mm,width_mm,height_mm,max_kg,seal_note
B1,Store,A1,box,clip-lid,10,0.5,12,300,200,170,,
B2,Store,A2,box,clip-lid,10,0.5,35,300,200,170,,
B3,Store,A3,box,clip-lid,10,0.5,,300,200,170,,
B4,Store,A4,box,clip-lid,10,0.5,,300,200,170,,looks like a grenade in it
T1,Cold,C1,tub,lidded,20,,,,,,,
`,
      ),
    )
    const part = (material: string) => ({ components: [{ component: 'body', material }] })
    const dry = {
      state_now: 'dry',
      burial: ['free-draining'],
      recorded_on: '2026-11-01',
      length_mm: 60,
      width_mm: 12,
      thickness_mm: 10,
      mass_g: 30,
    }
    const records = [
      record('TW-1', { ...dry, ...part('iron'), box: 'B1' } as never),
      record('TW-2', { ...dry, ...part('copper-alloy'), box: 'B1' } as never),
      record('TW-3', { ...dry, ...part('iron'), box: 'B2' } as never),
      record('TW-4', { ...dry, ...part('iron'), box: 'B1', length_mm: 400 } as never),
      record('TW-5', { ...dry, ...part('iron'), length_mm: 400 } as never),
      record('TW-6', { ...dry, ...part('lead'), hazards_noticed: ['ammunition-like'], box: 'B2' } as never),
      record('TW-7', { ...dry, ...part('lead'), box: 'B4' } as never),
    ]
    value(await at.services.addRecords({ projectId, records }, assistant))
  })
  afterAll(() => at.opened.close())

  const pack = async (also: object = {}) =>
    value(await at.services.packStore({ projectId, begin: 'as-it-stands', more: [], longer: false, ...also }))
  const number = (packed: Awaited<ReturnType<typeof pack>>, id: string) =>
    packed.finds.get(id)!.line.findNumber

  it('moves what is not at home, and leaves alone what is', async () => {
    const packed = await pack()
    const { moves, boxes } = packed.proposal
    expect(moves.map((move) => [number(packed, move.findId), move.from, boxes[move.to]!.box.name])).toEqual([
      ['TW-2', 'B1', 'B3'],
    ])
  })

  it('opens no box in which a stop lies, nor one whose note calls for one', async () => {
    const packed = await pack()
    expect(packed.proposal.stays.map((one) => [number(packed, one.findId), one.why]).toSorted()).toEqual([
      ['TW-3', 'beside-a-stop'],
      ['TW-6', 'stopped'],
      ['TW-7', 'beside-a-stop'],
    ])
  })

  it('says of what finds no box why', async () => {
    const packed = await pack()
    expect(packed.proposal.nowhere.map(({ findId, why }) => [number(packed, findId), why])).toEqual([
      ['TW-5', [{ code: 'too-long', byMm: 120, sideMm: 420 }]],
    ])
  })

  it('counts what could be had beside what is there', async () => {
    const scarce = await pack({ begin: 'afresh' })
    const more = await pack({ begin: 'afresh', more: [{ like: 'B1', count: 2 }] })
    expect(more.proposal.boxes.length).toBeGreaterThanOrEqual(scarce.proposal.boxes.length)
    expect(more.makes.map(({ like, model, boxes }) => [like, model, boxes])).toEqual([
      ['B1', 'clip-lid', 4],
      ['T1', 'lidded', 1],
    ])
    expect(more.provedFewest).toBe(true)
  })

  it('leaves out what is out of the store, and moves nothing by itself', async () => {
    const before = await pack()
    const two = [...before.finds.values()].find(({ line }) => line.findNumber === 'TW-2')!
    value(
      await at.services.moveFind(
        { findId: two.findId, move: 'out', where: 'loan', on: before.today },
        manager,
      ),
    )
    const packed = await pack()
    expect(packed.proposal.moves).toEqual([])
    expect(packed.out.map(({ line }) => line.findNumber)).toEqual(['TW-2'])
    expect(packed.finds.get(two.findId)!.line.box).toBe('B1')
  })

  it('needs a project that is there', async () => {
    const none = await at.services.packStore({
      projectId: '00000000-0000-7000-8000-000000000000',
      begin: 'afresh',
      more: [],
      longer: false,
    })
    expect(none).toMatchObject({ ok: false, problems: { kind: 'missing', what: 'project' } })
  })
})
