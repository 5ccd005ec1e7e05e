import { describe, expect, test } from 'vitest'
import { drawFrom } from '../simulated/draw-from.ts'
import { grades, odds } from '../../lib/evidence/grades.ts'
import { lookupOf } from '../../lib/evidence/read-cells.ts'
import { stated } from '../../lib/record/fact.ts'
import { chance } from '../demo/chance.ts'
import { base, facts, skin } from './small-base.ts'

const drawn = (finds: number, seen: string) => {
  const { next } = chance(7)
  const lookup = lookupOf(facts({ material: stated('bronze'), seen: stated(seen) }), 0)
  return Array.from({ length: finds }, () => drawFrom(skin, base, lookup, next))
}

describe('finds drawn from the evidence base', () => {
  test('show each explanation and each state as often as their words say', () => {
    const all = drawn(6000, 'none')
    const share = (of: (one: (typeof all)[number]) => boolean, among = all) =>
      among.filter(of).length / among.length
    const [usual, common, seldom] = [odds.usual[1], odds.common[1], odds.seldom[1]]
    const tin = all.filter(({ rival }) => rival === 0)
    expect(Math.abs(tin.length / all.length - usual / (usual + common + seldom))).toBeLessThan(0.05)
    const { typical, occasional, excluded } = grades
    const byWords = typical[1] / (excluded[1] + typical[1] + occasional[1])
    expect(Math.abs(share(({ states }) => states[1] === 1, tin) - byWords)).toBeLessThan(0.05)
  })

  test('show what a failure makes of them as often as it happens', () => {
    const neither = (seen: string) => {
      const tin = drawn(3000, seen).filter(({ rival }) => rival === 0)
      return tin.filter(({ states }) => states[1] === 2).length / tin.length
    }
    const [clean, crusted] = [neither('none'), neither('compact-green')]
    expect(Math.abs(crusted - (clean + grades.frequent[1] * (1 - clean)))).toBeLessThan(0.04)
  })

  test('are the same for the same chance, their words anywhere within their bands', () => {
    expect(drawn(5, 'none')).toEqual(drawn(5, 'none'))
    const shares = drawn(200, 'none').map(({ truth }) => truth.groups[0]!.shares[0]!)
    expect(new Set(shares).size).toBe(200)
  })
})
