import { afterAll, describe, expect, it } from 'vitest'
import { workplace } from './call.ts'

const place = workplace()
afterAll(() => place.clear())

const heading = 'site_code,find_number,object,burial,component,material,evidence,notes'
const good = place.file(
  'good.csv',
  `${heading}\nTW,TW-2,brooch,calcareous,plate,copper-alloy,white-metal-sheen,\nTW,TW-1,nail,clay,body,lead,,\n`,
)
const mixed = place.file(
  'mixed.csv',
  `${heading}\nTW,TW-1,brooch,clay,body,bronz,white-metal-sheen,\nTW,,,,body,iron,,perhaps a grenade\n`,
)

interface Told {
  readonly find: string
  readonly asOf: string
  readonly knowledge: string
  readonly interpretations: readonly {
    readonly component: string
    readonly about: string
    readonly interpretation: string
    readonly probability: number
    readonly range: readonly [number, number]
  }[]
}

describe('interpretations', () => {
  it('prints one object a find in the order of the file, its rivals adding up to one', async () => {
    const { code, out, err } = await place.call('interpretations', good, '--format', 'json')
    expect([code, err]).toEqual([0, ''])
    const told = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as Told)
    expect(told.map(({ find, asOf }) => [find, asOf])).toEqual([
      ['TW-2', '2026-11-25'],
      ['TW-1', '2026-11-25'],
    ])
    const [brooch, nail] = told
    expect(nail!.interpretations).toEqual([])
    expect(new Set(brooch!.interpretations.map(({ component, about }) => `${component} ${about}`))).toEqual(
      new Set(['plate white-metal-sheen']),
    )
    const sum = brooch!.interpretations.reduce((all, { probability }) => all + probability, 0)
    expect(sum).toBeCloseTo(1, 9)
    for (const { probability, range } of brooch!.interpretations) {
      expect(range[0]).toBeLessThanOrEqual(probability)
      expect(range[1]).toBeGreaterThanOrEqual(probability)
    }
    const plan = JSON.parse((await place.call('plan', good, '--format', 'json')).out.split('\n')[0]!) as {
      knowledge: string
      interpretations: Told['interpretations']
    }
    expect([brooch!.knowledge, brooch!.interpretations]).toEqual([plan.knowledge, plan.interpretations])
  })

  it('says in words what leads, how sure that is, and what cannot be ruled out', async () => {
    const { out } = await place.call('interpretations', good)
    const words = out.replaceAll(/\s+/g, ' ')
    expect(words).toContain('TW-2, brooch: copper alloy')
    expect(words).toMatch(
      /White metal sheen: (Cannot be told apart yet: |More likely |Probably |Almost certainly )/i,
    )
    expect(words).toMatch(/tinning/)
    expect(words).not.toMatch(/0\.\d|bits/)
    expect(words).toContain('On 1 record of 2 nothing is recorded that has more than one explanation.')
  })

  it('prints a row an interpretation as CSV', async () => {
    const { out } = await place.call('interpretations', good, '--format', 'csv')
    const [head, ...rows] = out.trim().split(/\r?\n/)
    expect(head).toBe(
      'find,as_of,part,about,matter,interpretation,probability,probability_low,probability_high,standing',
    )
    expect(rows.length).toBeGreaterThan(2)
    expect(rows.every((row) => row.startsWith('TW-2,2026-11-25,plate,white-metal-sheen,'))).toBe(true)
  })

  it('tells what it can, names the rest, says a stop before anything else, and ends with 1', async () => {
    const { code, out, err } = await place.call('interpretations', mixed)
    expect(code).toBe(1)
    expect(out).toMatch(/^STOP {2}row 3: /)
    expect(err).toMatch(/Row 2, column “material”.*bronze/)
  })

  it('refuses what it cannot do with 2', async () => {
    expect((await place.call('interpretations', good, '--format', 'xml')).code).toBe(2)
    expect((await place.call('interpretations')).code).toBe(2)
    const nothing = await place.call('interpretations', place.file('empty.csv', `${heading}\n`))
    expect(nothing.code).toBe(2)
    expect(nothing.err).toContain('nothing is told of it')
  })
})
