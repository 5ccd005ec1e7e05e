import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { start } from '../../lib/start.ts'
import { bytes, root, value } from '../services/world.ts'
import { workplace } from './call.ts'

const place = workplace()
const manager = { name: 'Cy Warden', role: 'store-manager', device: 'store computer' } as const

beforeAll(async () => {
  const services = await start(root, { QUIETMETAL_DATA: `${place.folder}/data` })
  const { id } = value(await services.startProject({ name: 'Store' }, manager))
  const boxes =
    'box,room,volume_l,air_changes_per_day,gel_kg,gel_conditioned_on,gel_rh_percent,target_max,seal_note\nB1,Metal store,10,0.5,1,2026-09-01,5,20,\nB2,Metal store,,,,,,,\nB3,,10,0.5,0.5,2026-01-01,5,15,grenade inside\n'
  value(await services.keepPlaces({ projectId: id, bytes: bytes(boxes) }, manager))
  await services.close()
}, 60_000)
afterAll(() => place.clear())

interface Said {
  readonly airChangesPerDay: { readonly low: number; readonly nominal: number; readonly high: number }
  readonly daysToLimit: { readonly p10: number; readonly p50: number | null; readonly p90: number | null }
  readonly renewOn: { readonly early: string }
}

describe('boxes', () => {
  it('gives one object a box, ranges as three values and units in every key', async () => {
    const { code, out, err } = await place.call('boxes', '--format', 'json')
    expect([code, err]).toEqual([0, ''])
    const [b1, b2] = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as Said)
    expect(b1).toMatchObject({
      box: 'B1',
      room: 'Metal store',
      findsAtRisk: 0,
      limitRhPercent: 20,
      departedSince: null,
      newestSighting: null,
    })
    const { low, nominal, high } = b1!.airChangesPerDay
    expect(low < nominal && nominal < high).toBe(true)
    const { p10, p50, p90 } = b1!.daysToLimit
    expect(p10).toBeGreaterThan(0)
    expect(p50 === null || p50 > p10).toBe(true)
    expect(p90 === null || p90 > p50!).toBe(true)
    expect(b1!.renewOn.early).toMatch(/^\d{4}-\d{2}-\d{2}$/)
    expect(b2).toMatchObject({ cannotTell: 'no-gel', heldRhPercent: null })
  }, 60_000)

  it('says the same in words, a stop before all else', async () => {
    const { out } = await place.call('boxes')
    expect(out).toMatch(/^B1 \(Metal store\)\n/)
    expect(out).toContain('Renewal of the gel: not likely before')
    expect(out).toMatch(/B3\n {2}STOP: /)
  }, 60_000)

  it('asks which project where there is none of that name, and takes no further words', async () => {
    const nobody = await place.call('boxes', '--project', 'Elsewhere')
    expect([nobody.code, nobody.out]).toEqual([2, ''])
    expect(nobody.err).toContain('There is no project "Elsewhere".')
    expect((await place.call('boxes', 'more')).code).toBe(2)
  }, 60_000)
})
