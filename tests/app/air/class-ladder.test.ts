import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { classLadder } from '../../../app/store/air/class-ladder.ts'

const silver = [25, 100, 450, 1000, 2500].map((to, at) => ({ name: `IC${at + 1}`, to }))
const range = (low: number, nominal: number, high: number) => ({ low, nominal, high })

describe('the ladder of classes', () => {
  test('decades are as far from each other, and the limits stand between them', () => {
    const { decades, classes } = classLadder(range(80, 90, 100), silver, 'above')
    expect(decades.map(({ value, at }) => [value, at])).toEqual([
      [1, 0],
      [10, 25],
      [100, 50],
      [1000, 75],
      [10_000, 100],
    ])
    expect(classes.map(({ name }) => name)).toEqual(['IC1', 'IC2', 'IC3', 'IC4', 'IC5', 'above'])
    expect(classes[1]!.to).toBeCloseTo(50, 9)
  })

  test('classes leave no gap and reach from end to end', () => {
    const { classes } = classLadder(range(80, 90, 100), silver, 'above')
    expect([classes[0]!.from, classes.at(-1)!.to]).toEqual([0, 100])
    for (const [at, { from }] of classes.entries()) if (at > 0) expect(from).toBe(classes[at - 1]!.to)
  })

  test('what begins at nothing is drawn from the edge and opens there', () => {
    const { bar } = classLadder(range(0, 15, 30), silver, 'above')
    expect(bar).toMatchObject({ from: 0, opensLeft: true })
    expect(classLadder(range(10, 15, 30), silver, 'above').bar.opensLeft).toBe(false)
  })

  test('nothing at all, without a class, still has an axis', () => {
    const { decades, classes, bar } = classLadder(range(0, 0, 0), [], 'above')
    expect(classes).toEqual([])
    expect(decades.length).toBeGreaterThan(2)
    expect(bar).toMatchObject({ from: 0, to: 0 })
  })

  test('whatever was weighed, the bar stays on the drawing and its ends in order', () => {
    const rate = fc.double({ min: 0, max: 1e7, noNaN: true })
    fc.assert(
      fc.property(rate, rate, rate, (...three) => {
        const [low = 0, nominal = 0, high = 0] = three.toSorted((a, b) => a - b)
        const { bar, decades } = classLadder(range(low, nominal, high), silver, 'above')
        expect(bar.from).toBeGreaterThanOrEqual(0)
        expect(bar.to).toBeLessThanOrEqual(100)
        expect(bar.from).toBeLessThanOrEqual(bar.nominal)
        expect(bar.nominal).toBeLessThanOrEqual(bar.to)
        expect(decades.at(-1)!.value).toBeGreaterThan(high)
      }),
    )
  })
})
