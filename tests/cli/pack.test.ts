import { afterAll, describe, expect, it } from 'vitest'
import { workplace } from './call.ts'

const place = workplace()
afterAll(() => place.clear())

const given = (content: unknown) => place.file('given.json', JSON.stringify(content))

describe('pack', () => {
  it('says how many bins, how few at the least, and for each item its bin counted from 0', async () => {
    const { code, out, err } = await place.call(
      'pack',
      given({ capacity: 10, items: [6, 5, 4, 5] }),
      '--format',
      'json',
    )
    expect([code, err]).toEqual([0, ''])
    const packed = JSON.parse(out) as { bins: number; lowerBound: number; assignment: number[] }
    expect([packed.bins, packed.lowerBound]).toEqual([2, 2])
    expect(packed.assignment[0]).toBe(packed.assignment[2])
    expect(packed.assignment[1]).toBe(packed.assignment[3])
    expect(new Set(packed.assignment)).toEqual(new Set([0, 1]))
  })

  it('says in words what lies together, and whether fewer bins could do', async () => {
    const { out } = await place.call('pack', given({ capacity: 10, items: [6, 5, 4, 5] }))
    expect(out).toMatch(/^4 items in 2 bins\. No packing needs fewer\.\n +1 {2}1, 3\n +2 {2}2, 4\n$/)
    const open = await place.call('pack', given({ capacity: 100, items: [65, 60, 30, 25, 20] }))
    expect(open.out).toMatch(/^5 items in 3 bins\. No packing needs fewer than 2\.\n/)
  })

  it('packs nothing into nothing', async () => {
    const { code, out } = await place.call('pack', given({ capacity: 10, items: [] }), '--format', 'json')
    expect([code, JSON.parse(out)]).toEqual([0, { bins: 0, lowerBound: 0, assignment: [] }])
  })

  it('names everything that is wrong at once, with file and place, prints nothing else, and ends with 2', async () => {
    const { code, out, err } = await place.call('pack', given({ capacity: 10, items: [11, 'four', 3] }))
    expect([code, out]).toEqual([2, ''])
    expect(err.trim().split('\n')).toEqual([
      'given.json: Item 1 is 11, more than the 10 a bin holds. Take it out, or give a larger capacity.',
      'given.json: Item 2 is "four". Give a number above 0.',
    ])
    expect((await place.call('pack', place.file('torn.json', '{"capacity": 1'))).err).toMatch(
      /torn\.json: This is no JSON/,
    )
    expect((await place.call('pack', place.file('none.json', 'null'), '--format', 'csv')).code).toBe(2)
  })
})
