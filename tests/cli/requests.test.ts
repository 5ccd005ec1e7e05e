import { afterAll, describe, expect, it } from 'vitest'
import { workplace } from './call.ts'

const place = workplace()
afterAll(() => place.clear())

const heading =
  'site_code,find_number,recorded_on,object,burial,component,material,evidence,significance,needed_for,samples,notes'
const sheen = (find: string, more = ',,,', on = '2026-11-01') =>
  `TW,${find},${on},brooch,calcareous,plate,copper-alloy,white-metal-sheen,${more}\n`
const good = place.file(
  'good.csv',
  `${heading}\n${sheen('TW-1')}${sheen('TW-2', 'high,,,')}${sheen('TW-3', 'low,,,')}`,
)

interface Asked {
  readonly find: string
  readonly components: readonly string[]
  readonly method: string
  readonly question: string
  readonly gainBits: number
}
interface Batch {
  readonly method: string
  readonly hours: number
  readonly hoursUsed: number
  readonly asks: readonly Asked[]
  readonly nextHour: { readonly hours: number; readonly adds: readonly Asked[]; readonly gainBits: number }
}
interface Told {
  readonly chosen: readonly Asked[]
  readonly gainBits: number
  readonly weightedGainBits: number
  readonly boundWeightedGainBits: number
  readonly methods: readonly Batch[]
  readonly leftOut: readonly { find: string | null; method: string | null; because: string }[]
}
const json = async (...args: readonly string[]) => {
  const { code, out, err } = await place.call('requests', ...args, '--format', 'json')
  return { code, err, told: JSON.parse(out) as Told }
}

describe('requests', () => {
  it('chooses what settles most of what matters within the hours, with its bits and what the next hour buys', async () => {
    const { code, err, told } = await json(good, '--hours', 'xrf=0.6')
    expect([code, err]).toEqual([0, ''])
    expect(told.chosen.map(({ find, components, method }) => [find, components, method])).toEqual([
      ['TW-2', ['plate'], 'xrf'],
    ])
    expect(told.chosen[0]!.question).toContain('?')
    expect(told.gainBits).toBeCloseTo(told.chosen[0]!.gainBits, 9)
    expect(told.gainBits).toBeGreaterThan(0)
    expect(told.boundWeightedGainBits).toBeCloseTo(told.weightedGainBits, 6)
    const [batch] = told.methods
    expect(batch!.hoursUsed).toBeLessThanOrEqual(batch!.hours)
    expect(batch!.nextHour.adds.map(({ find }) => find)).toEqual(['TW-1', 'TW-3'])
    expect(batch!.nextHour.gainBits).toBeCloseTo(2 * told.gainBits, 6)
  })

  it('says it in words, without bits', async () => {
    const { code, out } = await place.call('requests', good, '--hours', 'xrf=0.6')
    expect(code).toBe(0)
    const words = out.replaceAll(/\s+/g, ' ')
    expect(words).toContain('Planned for 2026-11-25: 3 finds; on 3 something stands open')
    expect(words).toContain('X-ray fluorescence: 1 find in 35 min of 36 min given')
    expect(words).toMatch(
      /1\. TW-2: What is .*\? Settles (nearly all|most|a good part|a little) of the question\./,
    )
    expect(words).toMatch(/Another hour of X-ray fluorescence would settle .* for TW-1 and TW-3\./)
    expect(words).toContain('No other choice would settle more.')
    expect(words).not.toMatch(/\bbits?\b/)
  })

  it('names everything that is wrong with the hours at once, asks for nothing, and ends with 2', async () => {
    const { code, out, err } = await place.call('requests', good, '--hours', 'xrv=6,ct=many,raman=1,raman=2')
    expect([code, out]).toEqual([2, ''])
    const lines = err.trim().split('\n')
    expect(lines).toHaveLength(3)
    expect(lines[0]).toMatch(
      /There is no method “xrv”\. Did you mean xrd or xrf\? There are: .*x-radiography/,
    )
    expect(lines[1]).toMatch(/Computed tomography: “many” is no number of hours\. Give one, as 6 or 2\.5/)
    expect(lines[2]).toMatch(/Raman spectroscopy is given twice/)
    const none = await place.call('requests', good)
    expect([none.code, none.out]).toEqual([2, ''])
    expect(none.err).toContain('Give them for at least one method, as xrf=6,x-radiography=10.')
  })

  it('sends nothing to a method that takes samples, unless that is agreed', async () => {
    const without = await json(good, '--hours', 'sem-eds=8')
    expect(without.told.chosen).toEqual([])
    expect(without.told.leftOut).toMatchObject([{ find: null, method: 'sem-eds', because: 'samples' }])
    const agreed = await json(good, '--hours', 'sem-eds=8', '--sampling')
    expect(agreed.told.chosen.length).toBeGreaterThan(0)
    expect(agreed.told.leftOut).toEqual([])
  })

  it('leaves out a find under a stop and rays before a dating sample, and says so; the sample noted, it is asked', async () => {
    const file = place.file(
      'held.csv',
      `${heading}\n${sheen('TW-1', ',,,perhaps a grenade')}${sheen('TW-2', ',luminescence-dating,,')}${sheen('TW-3', ',luminescence-dating,luminescence S12,')}`,
    )
    const { told, err } = await json(file, '--hours', 'xrf=4')
    expect(err).toMatch(/^STOP {2}TW-1: /)
    expect(told.chosen.map(({ find }) => find)).toEqual(['TW-3'])
    expect(told.leftOut.map(({ find, method, because }) => [find, method, because])).toEqual([
      ['TW-1', null, 'stop'],
      ['TW-2', 'xrf', 'dating-first'],
    ])
  })

  it('counts the newest record of a find, wherever it stands in the file', async () => {
    const file = place.file(
      'twice.csv',
      `${heading}\nTW,TW-1,2026-11-20,brooch,calcareous,plate,copper-alloy,,,,,\n${sheen('TW-1', ',,,', '2026-01-01')}`,
    )
    const { told } = await json(file, '--hours', 'xrf=4')
    expect(told.chosen).toEqual([])
  })

  it('plans what it can of a file, names the rest, and ends with 1; with nothing to read it ends with 2', async () => {
    const file = place.file('part.csv', `${heading}\n${sheen('TW-1')}${sheen('')}`)
    const { code, err, told } = await json(file, '--hours', 'xrf=4')
    expect(code).toBe(1)
    expect(err).toContain('find number is missing')
    expect(told.chosen.map(({ find }) => find)).toEqual(['TW-1'])
    expect(
      (await place.call('requests', place.file('none.csv', `${heading}\n`), '--hours', 'xrf=1')).code,
    ).toBe(2)
  })
})
