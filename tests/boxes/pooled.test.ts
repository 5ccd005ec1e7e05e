import { describe, expect, it } from 'vitest'
import type { ClosedBox, Sighting } from '../../lib/boxes/box.ts'
import { learnLeak } from '../../lib/boxes/learn.ts'
import { poolLeaks, type LearntBox } from '../../lib/boxes/pooled.ts'
import { box, readings, room, strip, trade, truthAfter, width } from './learn-samples.ts'

function learnt(name: string, sightings: readonly Sighting[], of: Partial<ClosedBox> = {}): LearntBox {
  const own = { ...box, ...of, name }
  return { box: own, surroundings: room, estimate: learnLeak(own, room, sightings, trade) }
}
const leaky = (name: string) => learnt(name, readings(200, { airChangesPerDay: 1.6 }))
const tight = (name: string) => learnt(name, readings(200, { airChangesPerDay: 0.3 }))
const priorOf = (boxes: readonly LearntBox[], name: string) => poolLeaks(boxes, trade).get(name)!

describe('what boxes of one model say of each other', () => {
  it('is what the trade says where none was read', () => {
    const { airChangesPerDay, from } = priorOf([learnt('a', []), learnt('b', [])], 'a')
    expect(from).toBe('trade')
    expect(airChangesPerDay).toEqual(trade.airChangesPerDay)
  })

  it('tells a box nobody read that its like leak much, or little', () => {
    const like = priorOf([learnt('a', []), leaky('b'), leaky('c'), leaky('d')], 'a')
    expect(like.from).toBe('like-boxes')
    expect(like.airChangesPerDay.nominal).toBeGreaterThan(1.1)
    expect(like.airChangesPerDay.nominal).toBeLessThan(1.6)
    const unlike = priorOf([learnt('a', []), tight('b'), tight('c'), tight('d')], 'a')
    expect(unlike.airChangesPerDay.nominal).toBeLessThan(0.55)
  })

  it('never counts a box for itself', () => {
    const { airChangesPerDay, from } = priorOf([leaky('a'), learnt('b', [])], 'a')
    expect([airChangesPerDay, from]).toEqual([trade.airChangesPerDay, 'trade'])
    const told = priorOf([leaky('a'), tight('b')], 'a').airChangesPerDay.nominal
    expect(told).toBeLessThan(trade.airChangesPerDay.nominal)
  })

  it('narrows with every box that was read, and never closer than boxes differ', () => {
    const widths = [1, 2, 4, 8].map((count) =>
      width(
        priorOf([learnt('a', []), ...Array.from({ length: count }, (_, at) => leaky(`b${at}`))], 'a')
          .airChangesPerDay,
      ),
    )
    expect(widths.toSorted((x, y) => y - x)).toEqual(widths)
    expect(widths[0]).toBeLessThan(width(trade.airChangesPerDay))
    // Eight boxes that happen to be alike do not make the ninth one so.
    expect(widths.at(-1)).toBeGreaterThan(0.8 * trade.allowance.likeBoxesSpread)
  })

  it('stays wide where its boxes differ', () => {
    const alike = priorOf([learnt('a', []), leaky('b'), leaky('c'), leaky('d'), leaky('e')], 'a')
    const unlike = priorOf([learnt('a', []), leaky('b'), tight('c'), leaky('d'), tight('e')], 'a')
    expect(width(unlike.airChangesPerDay)).toBeGreaterThan(1.3 * width(alike.airChangesPerDay))
  })

  it('goes by model, and a box of no model learns from none', () => {
    const others = [leaky('b'), leaky('c')]
    expect(priorOf([learnt('a', [], { model: 'another' }), ...others], 'a').from).toBe('trade')
    expect(
      priorOf([learnt('a', [], { model: null }), learnt('b', readings(90), { model: null })], 'a').from,
    ).toBe('trade')
  })

  it('goes by room, and by other rooms only where none of its own was read', () => {
    const far = { room: 'Store 2' }
    const elsewhere = learnt('b', readings(200, { airChangesPerDay: 1.6 }), far)
    const alone = priorOf([learnt('a', []), elsewhere], 'a')
    expect(alone.from).toBe('like-boxes-elsewhere')
    expect(alone.airChangesPerDay.nominal).toBeGreaterThan(trade.airChangesPerDay.nominal)
    const both = priorOf([learnt('a', []), elsewhere, tight('c')], 'a')
    expect(both.from).toBe('like-boxes')
    expect(both.airChangesPerDay).toEqual(priorOf([learnt('a', []), tight('c')], 'a').airChangesPerDay)
  })

  it('learns from strips too, a little', () => {
    const walked = (name: string) =>
      learnt(
        name,
        [91, 182, 273].map((days) => strip(days, truthAfter(days, 1.6))),
      )
    const { airChangesPerDay } = priorOf([learnt('a', []), walked('b'), walked('c'), walked('d')], 'a')
    expect(airChangesPerDay.nominal).toBeGreaterThan(trade.airChangesPerDay.nominal)
    expect(width(airChangesPerDay)).toBeLessThan(width(trade.airChangesPerDay))
    const logged = priorOf([learnt('a', []), leaky('b'), leaky('c'), leaky('d')], 'a')
    expect(width(airChangesPerDay)).toBeGreaterThan(width(logged.airChangesPerDay))
  })

  it('does not take what all share for knowledge: a gel and a room nobody knows leave every box unsure alike', () => {
    const unsure = { reservoirGPerKgPercent: { low: 2.5, nominal: 5, high: 10 } }
    const sureBoxes = Array.from({ length: 8 }, (_, at) => leaky(`b${at}`))
    const unsureBoxes = Array.from({ length: 8 }, (_, at) =>
      learnt(`b${at}`, readings(200, { airChangesPerDay: 1.6 }), unsure),
    )
    const sureWidth = width(priorOf([learnt('a', []), ...sureBoxes], 'a').airChangesPerDay)
    const unsureWidth = width(priorOf([learnt('a', [], unsure), ...unsureBoxes], 'a').airChangesPerDay)
    expect(unsureWidth).toBeGreaterThan(1.15 * sureWidth)
  })

  it('is the same in whatever order the boxes come', () => {
    const boxes = [learnt('a', []), leaky('b'), tight('c'), leaky('d')]
    const back = poolLeaks(boxes.toReversed(), trade)
    for (const [name, { airChangesPerDay }] of poolLeaks(boxes, trade))
      expect(back.get(name)!.airChangesPerDay.nominal).toBeCloseTo(airChangesPerDay.nominal, 9)
  })
})
