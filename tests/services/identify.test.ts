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

const tinned = {
  component: 'body',
  matter: 'white-skin',
  interpretation: 'tinning',
  method: 'sem-eds',
  on: day('2026-11-20'),
  byWhom: 'The laboratory',
  reference: 'R 7',
  words: '',
} as const

describe.each(engines)('what a surface was found to be, on %s', (engine) => {
  let at: Stage
  beforeAll(async () => {
    at = await stage(engine)
  })
  afterAll(() => at.opened.close())

  const project = async (name: string) => value(await at.services.startProject({ name }, assistant)).id
  const find = async (projectId: string, one: ConditionRecord) =>
    value(await at.services.addRecords({ projectId, records: [one] }, assistant)).finds[0]!.id

  it('is kept with what was thought before the method had its say', async () => {
    const id = await project('Before')
    const before = await find(id, sheen('TW-1'))
    const measured = await find(id, sheen('TW-2', { tests: ['xrf:Cu+Sn'] }))
    const [plain] = value(await at.services.identify({ ...tinned, findId: before }, conservator))
    expect(plain!.thought.rivals.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9)
    expect(plain!.thought.observed).toEqual([])
    const [section] = value(await at.services.identify({ ...tinned, findId: measured }, conservator))
    expect(section!.thought.observed.map(({ group }) => group)).toContain('skin-elements')
    const both = value(
      await at.services.identify({ ...tinned, method: 'xrf', findId: measured }, conservator),
    )
    expect(both).toHaveLength(2)
    expect(both[1]!.thought).toEqual(plain!.thought)
  })

  it('is entered once, and the last word counts', async () => {
    const id = await project('Once')
    const one = await find(id, sheen('TW-1'))
    value(await at.services.identify({ ...tinned, findId: one }, conservator))
    expect(value(await at.services.identify({ ...tinned, findId: one }, conservator))).toHaveLength(1)
    const again = { ...tinned, interpretation: 'silvering', on: day('2026-11-21'), findId: one }
    expect(value(await at.services.identify(again, conservator))).toHaveLength(2)
    expect(value(await at.services.showScore(id))).toMatchObject({ identified: 1, score: null, poor: [] })
  })

  it('settles the matter on the page of the find, and nothing more is asked of it', async () => {
    const one = await find(await project('Settled'), sheen('TW-1'))
    const before = value(await at.services.showFind({ findId: one })).now
    expect(before.requests.some(({ means }) => means.some(({ matter }) => matter === 'white-skin'))).toBe(
      true,
    )
    value(await at.services.identify({ ...tinned, findId: one }, conservator))
    const shown = value(await at.services.showFind({ findId: one }))
    const [leader] = shown.now.interpretations.filter(({ matter }) => matter === 'white-skin')
    expect(leader).toMatchObject({ interpretation: 'tinning', probability: 1, standing: 'settled' })
    expect(shown.now.requests.flatMap(({ means }) => means)).toEqual([])
    // What the rules would have measured only to name it is not asked for either; pictures and looking stay.
    const methods = (plan: typeof before) => plan.requests.map(({ method }) => method)
    expect(methods(before)).toContain('xrf')
    expect(methods(shown.now)).not.toContain('xrf')
    expect(methods(shown.now)).toContain('optical-microscopy')
    expect(shown.now.lookNext.filter(({ wouldSettle }) => wouldSettle.includes('surface'))).toEqual([])
    value(
      await at.services.identify({ ...tinned, interpretation: 'none-of-these', findId: one }, conservator),
    )
    const { now, identifications } = value(await at.services.showFind({ findId: one }))
    expect(identifications).toHaveLength(2)
    expect(
      now.interpretations.every(({ probability, standing }) => probability === 0 && standing === 'settled'),
    ).toBe(true)
  })

  it('is heeded by the rules: a skin found to be silver over bronze needs the air of silver too', async () => {
    const one = await find(await project('Heeded'), sheen('TW-1'))
    const parts = async () =>
      value(await at.services.showFind({ findId: one })).now.storage.components.map(
        ({ component }) => component,
      )
    expect(await parts()).toEqual(['body'])
    const silvered = { ...tinned, interpretation: 'silvering', findId: one }
    value(await at.services.identify(silvered, conservator))
    expect(await parts()).toEqual(['body', 'coating'])
    // Nobody is asked about a part that no record has: the answer could not be kept.
    const { lookNext } = value(await at.services.showFind({ findId: one })).now
    expect(lookNext.filter(({ fact }) => fact.startsWith('coating.'))).toEqual([])
    // Found again to be what adds nothing: the last word counts.
    value(await at.services.identify({ ...silvered, interpretation: 'none-of-these' }, conservator))
    expect(await parts()).toEqual(['body'])
  })

  it.each([
    ['matter', { matter: 'no-such' }],
    ['interpretation', { interpretation: 'niello' }],
    ['method', { method: 'guess' }],
    ['on', { on: day('2027-01-01') }],
    ['byWhom', { byWhom: ' ' }],
    ['words', { words: 'x'.repeat(2001) }],
    ['component', { component: 'pin' }],
  ])('is refused where its %s cannot be', async (field, wrong) => {
    const one = await find(await project(`Refused ${field}`), sheen('TW-1'))
    expect(await at.services.identify({ ...tinned, ...wrong, findId: one }, conservator)).toMatchObject({
      ok: false,
      problems: { kind: 'not-accepted', field },
    })
  })

  it('is scored once there is enough of it, and a word that was wrong is named', async () => {
    const id = await project('Scored')
    const records = Array.from({ length: 24 }, (_, number) =>
      sheen(`TW-${number}`, {
        components: [
          {
            component: 'body',
            role: 'body',
            material: 'copper-alloy',
            evidence: ['white-metal-sheen'],
            // A rim that lifts is seldom where tin was wiped on; here every tinned piece shows one.
            looked: ['skin-edge:lifting-edge'],
          },
        ],
      }),
    )
    const { finds } = value(await at.services.addRecords({ projectId: id, records }, assistant))
    for (const one of finds) value(await at.services.identify({ ...tinned, findId: one.id }, conservator))
    const shown = value(await at.services.showScore(id))
    expect(shown.score).toMatchObject({ identified: 24 })
    expect(shown.score!.brier).toBeGreaterThan(0.5)
    expect(shown.poor.length).toBeGreaterThan(0)
    expect(shown.poor[0]).toMatchObject({ matter: 'white-skin', rival: 'tinning', looked: 24 })
  })
})
