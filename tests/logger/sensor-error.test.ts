import { describe, expect, it } from 'vitest'
import { normalShareBelow } from '../../lib/logger/normal.ts'
import { chanceOver, chanceUnder, errorAt, guarded } from '../../lib/logger/sensor-error.ts'
import { error } from './at-hand.ts'

describe('the normal distribution', () => {
  it('agrees with its density integrated by small steps', () => {
    const density = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)
    for (const z of [-6, -3.5, -3, -2.999, -1, -0.1, 0, 0.5, 1.96, 2.999, 3, 4, 7]) {
      const [from, steps] = [-12, 48_000]
      const step = (z - from) / steps
      let sum = density(from) + density(z)
      for (let n = 1; n < steps; n += 1) sum += (n % 2 === 1 ? 4 : 2) * density(from + n * step)
      expect(Math.abs(normalShareBelow(z) - (sum * step) / 3)).toBeLessThan(1e-12)
    }
  })

  it('is certain far out and keeps its small tail', () => {
    expect([normalShareBelow(-100), normalShareBelow(100)]).toEqual([0, 1])
    expect(normalShareBelow(-8)).toBeCloseTo(6.22096e-16, 20)
    expect(normalShareBelow(Number.NaN)).toBeNaN()
  })
})

/** physics.md, check value 48: 13 % read, limit 15 %, ±3 %. */
describe('a reading near a limit', () => {
  it('may have been over it', () => {
    expect(chanceOver(13, 15, error)).toBeCloseTo(0.0912, 4)
    expect(chanceOver(13, 15, { ...error, shape: 'rectangular' })).toBeCloseTo(0.1667, 4)
    expect(chanceOver(15, 15, error)).toBeCloseTo(0.5, 12)
    expect(chanceUnder(13, 15, error)).toBeCloseTo(1 - 0.0912, 4)
  })

  it('is certain for a sensor without error, and beyond the width of an even one', () => {
    const exact = { ...error, rhPercent: 0 }
    expect([chanceOver(15, 15, exact), chanceOver(15.01, 15, exact)]).toEqual([0, 1])
    const even = { ...error, shape: 'rectangular' } as const
    expect([chanceOver(12, 15, even), chanceOver(18, 15, even)]).toEqual([0, 1])
  })

  it('is within only where even the worst it can mean is', () => {
    expect([12, 12.1, 15, 18, 18.1].map((read) => guarded(read, 15, error))).toEqual([
      'within',
      'cannot-tell',
      'cannot-tell',
      'cannot-tell',
      'outside',
    ])
  })
})

describe('the error over the range', () => {
  const sheet = { middleRhPercent: 3, endsRhPercent: 4.5, fromRhPercent: 10, toRhPercent: 90 }
  it('is as printed at the points and a straight line between', () => {
    expect([0, 5, 10, 50, 90, 95, 100, 110].map((read) => errorAt(read, sheet))).toEqual([
      4.5, 3.75, 3, 3, 3, 3.75, 4.5, 4.5,
    ])
  })
})
