import { describe, expect, test } from 'vitest'
import {
  heatBehindFaceJPerM2K,
  packTimeConstantS,
  plateTimeConstantS,
  timeToReachS,
  type Plate,
} from '../../lib/climate/warm-up.ts'

const iron: Plate = {
  thicknessM: 0.005,
  densityKgPerM3: 7870,
  heatCapacityJPerKgK: 450,
  conductivityWPerMK: 80,
}

describe('how long something takes to warm', () => {
  test('computed by us: 5 mm of iron, 1106.7 s; from 5 °C it clears the dew of 20 °C and 50 % in 371 s', () => {
    const constant = plateTimeConstantS(iron, 8)
    expect(constant).toBeCloseTo(1106.7, 1)
    expect(timeToReachS(constant, 5, 20, 9.2724)).toBeCloseTo(371, 0)
  })

  test('after one time constant 63 % of the way is done, and ways add up', () => {
    expect(timeToReachS(1000, 0, 20, 20 * (1 - Math.exp(-1)))).toBeCloseTo(1000, 9)
    const [first, second] = [timeToReachS(700, 5, 20, 9), timeToReachS(700, 9, 20, 15)]
    expect(first + second).toBeCloseTo(timeToReachS(700, 5, 20, 15), 9)
    expect(timeToReachS(700, 35, 20, 25)).toBeCloseTo(timeToReachS(700, 5, 20, 15), 9)
  })

  test('already there takes no time; where the room does not reach it never comes', () => {
    expect([
      timeToReachS(700, 12, 20, 9),
      timeToReachS(700, 9, 20, 9),
      timeToReachS(700, 20, 20, 20),
    ]).toEqual([0, 0, 0])
    expect([20, 21].map((wanted) => timeToReachS(700, 5, 20, wanted))).toEqual([Infinity, Infinity])
    expect(timeToReachS(700, 25, 20, 9)).toBe(Infinity)
    expect(timeToReachS(700, 20, 20, 9)).toBe(Infinity)
  })

  test('a pack without a wall is the plate; two centimetres of foam make it five times slower', () => {
    const heat = heatBehindFaceJPerM2K(iron)
    expect(packTimeConstantS(heat * 2, 2, 0, 8)).toBeCloseTo(plateTimeConstantS(iron, 8), 9)
    expect(packTimeConstantS(heat * 2, 2, 0.02 / 0.04, 8) / plateTimeConstantS(iron, 8)).toBeCloseTo(5, 9)
  })

  test('a thick bad conductor has no one temperature, and nothing has no time constant', () => {
    const waterlogged: Plate = {
      thicknessM: 0.1,
      densityKgPerM3: 1050,
      heatCapacityJPerKgK: 3800,
      conductivityWPerMK: 0.5,
    }
    expect(plateTimeConstantS(waterlogged, 8)).toBeNaN()
    expect(plateTimeConstantS({ ...iron, thicknessM: 0 }, 8)).toBeNaN()
    expect(plateTimeConstantS(iron, 0)).toBeNaN()
    expect([
      packTimeConstantS(0, 1, 0, 8),
      packTimeConstantS(1, 0, 0, 8),
      packTimeConstantS(1, 1, -1, 8),
    ]).toEqual([NaN, NaN, NaN])
    expect(timeToReachS(Number.NaN, 5, 20, 9)).toBeNaN()
  })
})
