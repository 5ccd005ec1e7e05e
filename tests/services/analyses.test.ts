import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { engines } from '../database/engines.ts'
import { assistant, conservator, day, record } from '../database/samples.ts'
import { stage, value, type Stage } from './world.ts'

const sheen = (find: string, more: Partial<ConditionRecord> = {}) =>
  record(find, {
    recorded_on: day('2026-11-01'),
    components: [
      { component: 'body', role: 'body', material: 'copper-alloy', evidence: ['white-metal-sheen'] },
    ],
    ...more,
  })

describe.each(engines)('analyses worth asking for, on %s', (engine) => {
  let at: Stage
  beforeAll(async () => {
    at = await stage(engine)
  })
  afterAll(() => at.opened.close())

  const project = async (name: string, records: readonly ConditionRecord[]) => {
    const { id } = value(await at.services.startProject({ name }, assistant))
    if (records.length > 0) value(await at.services.addRecords({ projectId: id, records }, assistant))
    return id
  }
  const plan = async (projectId: string, hours: Readonly<Record<string, string>>, sampling = false) => {
    const shown = value(await at.services.planAnalyses({ projectId, hours: Object.entries(hours), sampling }))
    const asks = shown.assemblage?.methods.map(
      (batch) => [batch.method, batch.asks.map(({ find }) => shown.names.get(find.id))] as const,
    )
    return { shown, asks }
  }

  it('are chosen from the newest records of the project, the most significant find first', async () => {
    const id = await project('Chosen', [
      sheen('TW-1', { significance: 'low' }),
      sheen('TW-2', { significance: 'high' }),
      sheen('TW-3'),
      record('TW-4', { components: [{ component: 'body', role: 'body', material: 'lead' }] }),
    ])
    const { shown, asks } = await plan(id, { xrf: '0.95', 'x-radiography': '' })
    expect([shown.finds, shown.open]).toEqual([4, 3])
    expect(asks).toEqual([['xrf', ['TW-2', 'TW-3']]])
    expect(
      shown.assemblage!.methods[0]!.further[0]!.adds.map(({ find }) => shown.names.get(find.id)),
    ).toEqual(['TW-1'])
    // Asked again, and for other hours: what was reckoned before stands.
    expect((await plan(id, { xrf: '0.95' })).asks).toEqual(asks)
    expect((await plan(id, { xrf: '2' })).asks).toEqual([['xrf', ['TW-2', 'TW-3', 'TW-1']]])
    expect((await plan(id, { xrf: '2 places' })).asks).toEqual(asks)
  })

  it('are not asked of what was identified', async () => {
    const id = await project('Identified', [sheen('TW-1'), sheen('TW-2')])
    const { shown } = await plan(id, { xrf: '4' })
    const one = [...shown.names].find(([, name]) => name === 'TW-1')![0]
    value(
      await at.services.identify(
        {
          findId: one,
          component: 'body',
          matter: 'white-skin',
          interpretation: 'tinning',
          method: 'sem-eds',
          on: day('2026-11-20'),
          byWhom: 'The laboratory',
          reference: 'R 7',
          words: '',
        },
        conservator,
      ),
    )
    expect((await plan(id, { xrf: '4' })).asks).toEqual([['xrf', ['TW-2']]])
  })

  it('wait for a stop, for a dating sample and for leave to take samples, and say so', async () => {
    const id = await project('Held', [
      sheen('TW-1', { hazards_noticed: ['ammunition-like'] }),
      sheen('TW-2', { needed_for: ['luminescence-dating'] }),
      sheen('TW-3', { needed_for: ['luminescence-dating'], samples: ['OSL 4'] }),
    ])
    const { shown, asks } = await plan(id, { xrf: '4', 'sem-eds': '4' })
    expect(asks).toEqual([['xrf', ['TW-3']]])
    const { leftOut } = shown.assemblage!
    expect(
      leftOut.map(({ find, method, because }) => [find && shown.names.get(find.id), method, because]),
    ).toEqual([
      [null, 'sem-eds', 'samples'],
      ['TW-1', null, 'stop'],
      ['TW-2', 'xrf', 'dating-first'],
    ])
  })

  it('say all that is wrong with the hours, and nothing more', async () => {
    const id = await project('Wrong', [sheen('TW-1')])
    const { shown } = await plan(id, { xrf: 'a few', ct: '-1', raman: '2' })
    expect(shown.assemblage).toBeNull()
    expect(shown.flaws).toEqual([
      { flaw: 'no-number', method: 'xrf', given: 'a few' },
      { flaw: 'no-number', method: 'ct', given: '-1' },
    ])
    expect((await plan(id, {})).shown).toMatchObject({ assemblage: null, flaws: [] })
  })

  it('of an empty project or of none', async () => {
    expect((await plan(await project('Empty', []), { xrf: '4' })).shown).toMatchObject({ finds: 0, open: 0 })
    expect(
      await at.services.planAnalyses({ projectId: 'nowhere', hours: [], sampling: false }),
    ).toMatchObject({
      ok: false,
      problems: { kind: 'missing' },
    })
  })
})
