import { describe, expect, it } from 'vitest'
import { carriedOver } from '../../lib/boxes/leak-carried.ts'
import { allowanceOf, assumedRoom, tradePrior } from '../../lib/boxes/leak-figures.ts'
import { learnLeak } from '../../lib/boxes/learn.ts'
import { boxKinds } from '../../lib/record/places.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { box, readings, room, trade, width } from './learn-samples.ts'

describe('what is supposed before anything was read', () => {
  it.each(boxKinds)('is a range for a %s, low before high', (kind) => {
    const { low, nominal, high } = tradePrior(knowledge, kind).airChangesPerDay
    expect(low).toBeGreaterThan(0)
    expect(nominal).toBeGreaterThan(low)
    expect(high).toBeGreaterThan(nominal)
  })

  it('takes a barrier pack for tighter than a box, and a case for less known', () => {
    const [pack, plain, display] = (['barrier-pack', 'box', 'case'] as const).map(
      (kind) => tradePrior(knowledge, kind).airChangesPerDay,
    )
    expect(pack!.nominal).toBeLessThan(plain!.low)
    expect(width(display!)).toBeGreaterThan(width(plain!))
  })

  it('rests on figures, each of them finite', () => {
    const numbers = JSON.stringify([allowanceOf(knowledge), assumedRoom(knowledge)])
    expect(numbers).not.toContain('null')
  })

  it('leaves no figure to a base that lacks it', () => {
    expect(() => tradePrior({ figures: {} })).toThrow(/air-exchange/)
  })
})

describe('what a box told before its gel was renewed', () => {
  it('holds afterwards, but no closer than lids are closed alike', () => {
    const before = learnLeak(box, room, readings(200), trade)
    const prior = carriedOver(before)
    expect(prior.from).toBe('earlier-gel')
    expect(prior.airChangesPerDay.nominal).toBeCloseTo(before.airChangesPerDay.nominal, 9)
    expect(width(prior.airChangesPerDay)).toBeGreaterThan(width(before.airChangesPerDay))
    expect(width(prior.airChangesPerDay)).toBeLessThan(width(trade.airChangesPerDay))
  })
})
