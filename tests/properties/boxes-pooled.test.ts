import { describe, expect, it } from 'vitest'
import type { Range } from '../../lib/base/range.ts'
import { learnLeak } from '../../lib/boxes/learn.ts'
import { poolLeaks } from '../../lib/boxes/pooled.ts'
import { drawn } from '../simulated/chance-drawn.ts'
import { drawnBox, drawnRoom, logged, walkedBy } from '../simulated/drawn-box.ts'
import { mean } from '../simulated/forecast-holds.ts'
import { prior, stated } from '../simulated/stated.ts'

/**
 * Invented models of box: each with a middle leak and a spread about it, six boxes of it in one room, filled from one sack of
 * gel. Two stand under a logger, two are walked by, two nobody reads.
 */
const models = 120
const days = 370
const { likeBoxesSpread } = prior.allowance
/** How a model's middle spreads, so that one box of any model spreads as the trade says. */
const middles = (range: Range) => {
  const whole = Math.log(range.high / range.low) / 2 / 1.28155
  const own = Math.sqrt(1 - (likeBoxesSpread / whole) ** 2)
  const drawnIn = (end: number) => range.nominal * (end / range.nominal) ** own
  return { low: drawnIn(range.low), nominal: range.nominal, high: drawnIn(range.high) }
}

const told = Array.from({ length: models }, (_, model) => {
  const chance = drawn(40_000 + model)
  const middle = chance.byFactor(middles(prior.airChangesPerDay))
  const spread = likeBoxesSpread * chance.pick([0.5, 1, 1.5])
  const room = drawnRoom(chance, stated, days)
  const boxes = Array.from({ length: 6 }, (_, at) => {
    const airChangesPerDay = middle * Math.exp(spread * chance.normal())
    const one = drawnBox(50_000 + 10 * model + at, stated, { gel: 'straight', days, airChangesPerDay, room })
    const sightings = at < 2 ? logged(one, stated, 180) : at < 4 ? walkedBy(one, stated, 365) : []
    const box = { ...one.box, model: 'a', room: 'b' }
    const estimate = learnLeak(box, one.surroundings, sightings, prior)
    return { box, surroundings: one.surroundings, estimate, sightings, airChangesPerDay }
  })
  const priors = poolLeaks(boxes, prior)
  return boxes.map(({ box, surroundings, estimate, sightings, airChangesPerDay }) => {
    const pooled = priors.get(box.name)!
    const again = learnLeak(box, surroundings, sightings, pooled)
    return { truth: airChangesPerDay, alone: estimate.airChangesPerDay, pooled: again.airChangesPerDay }
  })
})

const within = ({ low, high }: Range, truth: number) => low <= truth && truth <= high
const width = ({ low, high }: Range) => Math.log(high / low)
const some = (from: number, to: number) => told.flatMap((boxes) => boxes.slice(from, to))

describe('what boxes of one model say of each other', () => {
  it('never makes a box surer than it ought to be: its bands hold, whether it was read or not', () => {
    const held = (boxes: (typeof told)[number]) =>
      mean(boxes.map(({ pooled, truth }) => Number(within(pooled, truth))))
    expect(held(some(0, 6))).toBeGreaterThanOrEqual(0.75)
    // The boxes of a room are right and wrong together, so that chance plays with each kind more freely.
    for (const boxes of [some(0, 2), some(2, 4), some(4, 6)]) expect(held(boxes)).toBeGreaterThanOrEqual(0.7)
  })

  it('is worth having: bands of boxes that nobody reads become narrower, of those walked by too', () => {
    const narrower = (boxes: (typeof told)[number]) =>
      mean(boxes.map(({ pooled, alone }) => width(pooled) / width(alone)))
    expect(narrower(some(4, 6))).toBeLessThan(0.85)
    expect(narrower(some(2, 4))).toBeLessThan(1)
    // A box under its own logger learns next to nothing from others, and loses nothing.
    expect(narrower(some(0, 2))).toBeLessThan(1.02)
  })

  it('does not lean: leaks told are right within five percent on the whole', () => {
    const lean = mean(told.flat().map(({ pooled, truth }) => Math.log(pooled.nominal / truth)))
    expect(Math.abs(lean)).toBeLessThan(0.05)
  })
})
