import { describe, expect, test } from 'vitest'
import { enough, scoreOf, shareRange, type Scored } from '../../lib/evidence/score.ts'

/** A steady stream of numbers between 0 and 1. */
function stream(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 2 ** 32
    return state / 2 ** 32
  }
}

/** Matters whose truth comes out as often as it was said, or as `warp` has it. */
function matters(count: number, warp: (probability: number) => number = (p) => p): readonly Scored[] {
  const next = stream(7)
  return Array.from({ length: count }, () => {
    const probability = 0.05 + 0.9 * next()
    return {
      rivals: [
        { interpretation: 'tinning', probability },
        { interpretation: 'silvering', probability: 1 - probability },
      ],
      truth: next() < warp(probability) ? 'tinning' : 'silvering',
    }
  })
}

describe('the score', () => {
  test('is not told of a few', () => {
    expect(scoreOf([])).toBeNull()
    expect(scoreOf(matters(enough - 1))).toBeNull()
    expect(scoreOf(matters(enough))).not.toBeNull()
  })

  test('is perfect for whoever knew, and two for whoever was surely wrong', () => {
    const sure = (truth: string): Scored => ({
      rivals: [
        { interpretation: 'tinning', probability: 1 },
        { interpretation: 'silvering', probability: 0 },
      ],
      truth,
    })
    expect(scoreOf(Array.from({ length: enough }, () => sure('tinning')))).toMatchObject({
      brier: 0,
      leaderTrue: 1,
    })
    expect(scoreOf(Array.from({ length: enough }, () => sure('silvering')))).toMatchObject({
      brier: 2,
      leaderTrue: 0,
    })
    expect(scoreOf(Array.from({ length: enough }, () => sure('something else')))).toMatchObject({
      brier: 1,
      noneOfThese: enough,
    })
  })

  test('of honest forecasts lies on the line, each point within its range', () => {
    const score = scoreOf(matters(4000))!
    const off = score.reliability.filter(({ stated, range }) => stated < range[0] || stated > range[1])
    // Nineteen of twenty ranges hold: of some ten points two may miss.
    expect(off.length).toBeLessThanOrEqual(2)
    expect(score.brier).toBeLessThan(score.brierOfGuessing)
    expect(score.reliability.reduce((sum, { forecasts }) => sum + forecasts, 0)).toBe(8000)
  })

  test('shows who is too sure of himself', () => {
    const tooSure = (p: number) => 0.5 + (p - 0.5) * 0.3
    const score = scoreOf(matters(4000, tooSure))!
    const top = score.reliability.at(-1)!
    expect(top.cameTrue).toBeLessThan(top.stated - 0.1)
    expect(top.range[1]).toBeLessThan(top.stated)
    expect(score.brier).toBeGreaterThan(scoreOf(matters(4000))!.brier)
  })

  test('makes no point of a few forecasts', () => {
    for (const { forecasts } of scoreOf(matters(25))!.reliability)
      expect(forecasts).toBeGreaterThanOrEqual(10)
  })
})

test('the range of a share holds it and narrows with what was seen', () => {
  // Wilson's interval for 8 of 10, as any statistician's table has it.
  const [low, high] = shareRange(8, 10)
  expect(low).toBeCloseTo(0.49, 2)
  expect(high).toBeCloseTo(0.943, 2)
  expect(shareRange(0, 10)[0]).toBe(0)
  expect(shareRange(10, 10)[1]).toBe(1)
  expect(shareRange(80, 100)[0]).toBeGreaterThan(low)
})
