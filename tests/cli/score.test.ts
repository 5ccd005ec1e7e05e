import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { start } from '../../lib/start.ts'
import { conservator, day, record } from '../database/samples.ts'
import { root, value } from '../services/world.ts'
import { workplace } from './call.ts'

const place = workplace()
const looked = ['skin-edge:lifting-edge']
const sheen = (find: string) =>
  record(find, {
    recorded_on: day('2026-11-01'),
    components: [
      { component: 'body', role: 'body', material: 'copper-alloy', evidence: ['white-metal-sheen'], looked },
    ],
  })

async function identified(projectId: string, from: number, to: number) {
  const services = await start(root, { QUIETMETAL_DATA: `${place.folder}/data` })
  const records = Array.from({ length: to - from }, (_, at) => sheen(`TW-${from + at}`))
  const { finds } = value(await services.addRecords({ projectId, records }, conservator))
  for (const { id } of finds) {
    const told = { component: 'body', matter: 'white-skin', interpretation: 'tinning', method: 'sem-eds' }
    const source = { on: day('2026-11-20'), byWhom: 'The laboratory', reference: '', words: '' }
    value(await services.identify({ ...told, ...source, findId: id }, conservator))
  }
  await services.close()
}

let projectId = ''
beforeAll(async () => {
  const services = await start(root, { QUIETMETAL_DATA: `${place.folder}/data` })
  projectId = value(await services.startProject({ name: 'Score' }, conservator)).id
  await services.close()
  await identified(projectId, 0, 3)
}, 60_000)
afterAll(() => place.clear())

describe('score', () => {
  it('says how many results are still needed, and holds its tongue', async () => {
    const { code, out, err } = await place.call('score')
    expect([code, err]).toEqual([0, ''])
    expect(out).toMatch(/^Score\n3 answers known so far; 17 more are needed\./)
    const json = await place.call('score', '--format', 'json')
    expect(JSON.parse(json.out)).toMatchObject({ project: 'Score', identified: 3, score: null, poor: [] })
  }, 60_000)

  it('tells it in plain words, as one object, and what was found out as a table', async () => {
    await identified(projectId, 3, 24)
    const { out } = await place.call('score', '--project', 'Score')
    expect(out).toContain('The explanation in front was the true one')
    expect(out).toMatch(/In tinning it is called \w+ that it has a rim/)
    expect(out).not.toMatch(/brier/i)
    const json = JSON.parse((await place.call('score', '--format', 'json')).out) as {
      readonly score: { readonly brier: number }
    }
    expect(json.score.brier).toBeGreaterThan(0)
    const table = (await place.call('score', '--format', 'csv')).out.trim().split('\r\n')
    expect(table).toHaveLength(25)
    expect(table[1]).toBe('TW,TW-0,body,white-skin,tinning,sem-eds,2026-11-20,The laboratory,,,')
    expect((await place.call('score', 'file.csv')).code).toBe(2)
  }, 60_000)
})
