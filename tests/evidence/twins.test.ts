import { describe, expect, test } from 'vitest'
import { gainBits, showings } from '../../lib/evidence/gain.ts'
import { jointFor, probabilities, withState, type Joint } from '../../lib/evidence/joint.ts'
import { tablesFor } from '../../lib/evidence/mappings.ts'
import type { Lookup } from '../../lib/evidence/read-cells.ts'
import { knowledge } from '../knowledge-at-hand.ts'

const nothing: Lookup = () => undefined
const matter = knowledge.matters['waxy-green']!
const joint = jointFor(matter, knowledge, nothing)
const groups = matter.groups.map(({ id }) => id)
const [xrd, raman] = [groups.indexOf('minerals'), groups.indexOf('minerals-by-light')]
const stateOf = (group: number, id: string) => {
  const at = matter.groups[group]!.states.findIndex((state) => state.id === id)
  return at === -1 ? matter.groups[group]!.states.length : at
}
const chances = ({ weights, tables }: Joint) => probabilities(weights, tables.rivals.length)

describe('two methods that measure one thing', () => {
  test('know of each other', () => {
    const { twin } = tablesFor(matter, knowledge).groups[xrd!]!
    expect(twin?.at).toBe(raman)
    expect(tablesFor(matter, knowledge).groups[raman!]!.twin?.at).toBe(xrd)
    expect(twin?.matches).toContainEqual([stateOf(xrd!, 'nantokite'), stateOf(raman!, 'nantokite')])
  })

  test('come to the same in either order', () => {
    for (const [one, other] of [
      ['nantokite', 'nantokite'],
      ['copper-carbonate', 'rest'],
      ['basic-chloride', 'copper-carbonate'],
    ] as const) {
      const first = withState(withState(joint, xrd!, stateOf(xrd!, one)), raman!, stateOf(raman!, other))
      const last = withState(withState(joint, raman!, stateOf(raman!, other)), xrd!, stateOf(xrd!, one))
      chances(first).forEach((chance, rival) => expect(chance).toBeCloseTo(chances(last)[rival]!, 9))
    }
  })

  test('say the same thing hardly louder the second time', () => {
    const apart = { ...matter, groups: matter.groups.map((group) => ({ ...group, sameCauseAs: null })) }
    const active = matter.rivals.findIndex(({ id }) => id === 'active-chloride-corrosion')
    const logOdds = (one: Joint) => Math.log(chances(one)[active]! / (1 - chances(one)[active]!))
    const xrdState = stateOf(xrd!, 'basic-chloride')
    const ramanState = stateOf(raman!, 'basic-chloride')
    const once = withState(joint, xrd!, xrdState)
    const twice = logOdds(withState(once, raman!, ramanState)) - logOdds(once)
    const counted = withState(jointFor(apart, knowledge, nothing), xrd!, xrdState)
    const again = logOdds(withState(counted, raman!, ramanState)) - logOdds(counted)
    expect(logOdds(once)).toBeCloseTo(logOdds(counted), 9)
    expect(again).toBeGreaterThan(0.3)
    expect(Math.abs(twice)).toBeLessThan(again / 2)
  })

  test('leave the second less to tell, and never less than nothing', () => {
    const first = gainBits(joint, [raman!])
    const second = gainBits(withState(joint, xrd!, stateOf(xrd!, 'copper-carbonate')), [raman!])
    expect(second).toBeLessThan(first)
    expect(second).toBeGreaterThanOrEqual(0)
    expect(gainBits(joint, [xrd!, raman!])).toBeLessThan(gainBits(joint, [xrd!]) + first)
    expect(gainBits(joint, [xrd!, raman!])).toBeGreaterThanOrEqual(Math.max(gainBits(joint, [xrd!]), first))
  })

  test('keep what is thought the average of what will be thought, the twin known or not', () => {
    for (const known of [joint, withState(joint, xrd!, stateOf(xrd!, 'rest'))]) {
      const after = new Float64Array(matter.rivals.length)
      let all = 0
      for (const { chance, after: then } of showings(known, raman!)) {
        all += chance
        chances(then).forEach((one, rival) => (after[rival]! += chance * one))
      }
      expect(all).toBeCloseTo(1, 9)
      chances(known).forEach((one, rival) => expect(after[rival]).toBeCloseTo(one, 9))
    }
  })
})
