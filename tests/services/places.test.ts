import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { engines } from '../database/engines.ts'
import { assistant, record } from '../database/samples.ts'
import { bytes, stage, value, type Stage } from './world.ts'

const manager = { name: 'Cy Warden', role: 'store-manager', device: 'store computer' } as const

describe.each(engines)('the store on %s', (engine) => {
  let at: Stage
  let projectId: string
  beforeAll(async () => {
    at = await stage(engine)
    projectId = value(await at.services.startProject({ name: 'Store' }, manager)).id
    value(await at.services.keepPlaces({ projectId, bytes: bytes('room,rh_low,rh_high\nCold,35,42\n') }, manager))
    value(await at.services.keepPlaces({ projectId, bytes: bytes('box,room,gel_kg\nB1,Cold,0.5\nB2,Cold,1\n') }, manager))
    const records = ['B1', 'B1', 'B7'].map((box, number) => record(`TW-${number}`, { box }))
    value(await at.services.addRecords({ projectId, records }, assistant))
  })
  afterAll(() => at.opened.close())

  it('shows rooms, boxes and the finds in each box', async () => {
    const { rooms, boxes, elsewhere } = value(await at.services.listPlaces(projectId))
    expect(rooms.map(({ given }) => given)).toEqual([{ room: 'Cold', rh_low: 35, rh_high: 42 }])
    expect(boxes.map(({ box, total }) => [box.given.box, total])).toEqual([['B1', 2], ['B2', 0]])
    expect(boxes[0]!.finds.map(({ line }) => line.findNumber)).toEqual(['TW-0', 'TW-1'])
    expect(elsewhere).toBe(1)
  })

  it('changes a place that a table names again, and takes none away', async () => {
    value(await at.services.keepPlaces({ projectId, bytes: bytes('box,room,gel_kg\nB2,Cold,2\n') }, manager))
    const { boxes } = value(await at.services.listPlaces(projectId))
    expect(boxes.map(({ box }) => [box.given.box, box.given.gel_kg, box.version])).toEqual([['B1', 0.5, 1], ['B2', 2, 2]])
  })

  it('notices that somebody else changed a box meanwhile', async () => {
    const box = { box: 'B1', room: 'Cold', gel_kg: 0.7 }
    value(await at.services.keepBox({ projectId, box, version: 1 }, manager))
    const late = await at.services.keepBox({ projectId, box: { ...box, gel_kg: 9 }, version: 1 }, manager)
    expect(late).toMatchObject({ ok: false, problems: { kind: 'changed-meanwhile', what: 'box' } })
  })

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})
