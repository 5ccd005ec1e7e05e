import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { StoreExported } from '../../lib/services/export-store.ts'
import { storeTables } from '../../lib/record/store-tables.ts'
import { engines } from '../database/engines.ts'
import { assistant, day, record } from '../database/samples.ts'
import { bytes, stage, value, type Stage } from './world.ts'

const manager = { name: 'Cy Warden', role: 'store-manager', device: 'store computer' } as const

const tables = {
  rooms: 'room,rh_low,rh_high,lamp\nCold,35,42,old\n',
  boxes: 'box,room,gel_kg,gel_conditioned_on,colour\nB1,Cold,0.5,2026-01-10,blue\nB2,Cold,a little,,\n',
  loggers:
    'serial,model,box,from,to,salts\nL1,small,B1,2026-01-10,2026-03-01,LiCl 11.31:13.8@2026-01-02; MgCl2 33.07:34.6\nL1,small,B2,2026-03-01,,\nL2,small,,,,\n',
  rounds: 'box,on,strip_low,strip_high,lid,by\nB1,2026-02-01,10,15,seated,CW\nB9,2026-02-01,20,25,,AT\n',
  diary:
    'event,on,at,box,find_number,site_code,gel_kg,move,where,colour\ngel-change,2026-04-01,,B2,,,1,,,pink\nmoved,2026-05-01,2026-05-01T09:30:00.000Z,,TW-1,TW,,out,bench,\n',
} as const

describe.each(engines)('the tables of the store on %s', (engine) => {
  let at: Stage
  beforeAll(async () => {
    at = await stage(engine)
  })
  afterAll(() => at.opened.close())

  const project = async (name: string) => {
    const { id } = value(await at.services.startProject({ name }, manager))
    const records = [record('TW-1', { box: 'B1', recorded_on: day('2026-02-01') })]
    value(await at.services.addRecords({ projectId: id, records }, assistant))
    return id
  }
  const give = async (projectId: string, content: string | Uint8Array) =>
    value(
      await at.services.keepPlaces(
        { projectId, bytes: typeof content === 'string' ? bytes(content) : content },
        manager,
      ),
    )
  const filled = async (name: string) => {
    const id = await project(name)
    for (const table of storeTables) await give(id, tables[table])
    return id
  }
  const csvs = async (projectId: string) =>
    Promise.all(
      storeTables.map(
        async (table) => value(await at.services.exportStore({ projectId, table, format: 'csv' })).content,
      ),
    )

  it('leave as they came', async () => {
    const [rooms, boxes, loggers, rounds] = await csvs(await filled('Leave'))
    expect(rooms).toBe(tables.rooms.replaceAll('\n', '\r\n'))
    expect(boxes).toBe(tables.boxes.replaceAll('\n', '\r\n'))
    expect(rounds).toBe(tables.rounds.replaceAll('\n', '\r\n'))
    // What belongs to a logger stands in each of its rows.
    const [, first, second, third] = String(loggers).split('\r\n')
    const salts = '"LiCl 11.31:13.8@2026-01-02; MgCl2 33.07:34.6"'
    expect(first).toBe(`L1,small,B1,2026-01-10,2026-03-01,${salts}`)
    expect(second).toBe(`L1,small,B2,2026-03-01,,${salts}`)
    expect(third).toBe('L2,small,,,,')
  })

  it.each(['xlsx', 'json'] as const)(
    'all together leave as %s and come back as the same store',
    async (format) => {
      const id = await filled(`From ${format}`)
      const exported: StoreExported = value(await at.services.exportStore({ projectId: id, format }))
      const copy = await project(`To ${format}`)
      const kept = await give(copy, exported.content)
      expect(kept.unreadableRows).toBe(0)
      expect(await csvs(copy)).toEqual(await csvs(id))
    },
  )

  it('ask which table a CSV file is to hold', async () => {
    const answer = await at.services.exportStore({ projectId: await project('CSV'), format: 'csv' })
    expect(answer).toMatchObject({ ok: false, problems: { field: 'table' } })
  })

  it('have sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})
