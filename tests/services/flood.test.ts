import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { day, assistant, record } from '../database/samples.ts'
import { engines } from '../database/engines.ts'
import { bytes, stage, value, type Stage } from './world.ts'

const manager = { name: 'Cy Warden', role: 'store-manager', device: 'store computer' } as const

describe.each(engines)('water in a room, on %s', (engine) => {
  let at: Stage
  let projectId: string
  const dry = { burial: ['free-draining'], state_now: 'dry', stored_rh_percent: 14 } as const
  const flood = (more: object = {}) => ({
    projectId,
    room: 'Metal store',
    boxes: ['B1'],
    on: day('2026-11-24'),
    how: 'leak' as const,
    note: '',
    ...more,
  })
  const lines = async () =>
    value(await at.services.listFinds({ projectId, order: 'number', limit: 50 })).finds.map(
      ({ line }) => line,
    )

  beforeAll(async () => {
    at = await stage(engine)
    projectId = value(await at.services.startProject({ name: 'Store' }, manager)).id
    value(
      await at.services.keepPlaces(
        { projectId, bytes: bytes('box,room\nB1,Metal store\nB2,Metal store\nT1,Cold room\n') },
        manager,
      ),
    )
    const records = [
      record('TW-1', {
        ...dry,
        box: 'B1',
        recorded_on: day('2026-01-10'),
        days_since_lifting: 10,
        watched_days: 400,
      }),
      record('TW-2', { ...dry, box: 'B2', recorded_on: day('2026-01-10') }),
      record('TW-3', { ...dry, box: 'B1', recorded_on: day('2026-11-25') }),
      record('TW-4', {
        box: 'B1',
        burial: ['waterlogged'],
        state_now: 'wet',
        components: [{ component: 'body', material: 'leather' }],
      }),
    ]
    value(await at.services.addRecords({ projectId, records }, assistant))
  })
  afterAll(() => at.opened.close())

  it('makes the dry finds of the boxes it reached wet, and only those', async () => {
    const entered = value(await at.services.enterFlood(flood(), manager))
    expect(entered).toEqual({ wetted: ['TW-1'], inWater: 1, lookedAtSince: ['TW-3'] })
    const [first, second] = await lines()
    expect(first!.urgency).not.toBe(second!.urgency)
    expect(['now', 'hours', 'days']).toContain(first!.urgency)
  })

  it('says whose word it is and drops what no longer holds', async () => {
    const [find] = value(await at.services.listFinds({ projectId, order: 'number', limit: 1 })).finds
    const { history } = value(await at.services.showFind({ findId: find!.findId }))
    const { record: newest } = history[0]!.kept
    expect(newest).toMatchObject({
      state_now: 'wet',
      wetted_by: 'leak',
      recorded_on: '2026-11-24',
      recorded_by: 'Cy Warden',
      days_since_lifting: 328,
      burial: ['free-draining'],
    })
    expect(newest.notes).toContain('nobody has looked at the find since')
    expect(newest).not.toHaveProperty('stored_rh_percent')
    expect(newest).not.toHaveProperty('watched_days')
    expect(history).toHaveLength(2)
  })

  it('entered again adds nothing', async () => {
    const again = value(await at.services.enterFlood(flood(), manager))
    expect(again.wetted).toEqual([])
    const [find] = value(await at.services.listFinds({ projectId, order: 'number', limit: 1 })).finds
    expect(value(await at.services.showFind({ findId: find!.findId })).history).toHaveLength(2)
  })

  it('keeps nothing of a flood in a box that is not in that room, or on a day to come', async () => {
    const before = await lines()
    expect(await at.services.enterFlood(flood({ boxes: ['B2', 'T1'] }), manager)).toMatchObject({
      ok: false,
      problems: { kind: 'missing', what: 'box', id: 'T1' },
    })
    expect(
      await at.services.enterFlood(flood({ boxes: ['B2'], on: day('2026-11-26') }), manager),
    ).toMatchObject({
      ok: false,
      problems: { field: 'on' },
    })
    expect(await lines()).toEqual(before)
  })

  it('has sent nothing outside the SQL that all engines share', () => {
    expect(at.opened.strays()).toEqual([])
  })
})
