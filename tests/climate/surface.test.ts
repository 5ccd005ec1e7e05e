import { describe, expect, test } from 'vitest'
import { dewPointC, frostPointC } from '../../lib/climate/dew-point.ts'
import { vapourPressurePa } from '../../lib/climate/humidity.ts'
import { depositOn, highestRoomRhPercent, rhAtSurfacePercent } from '../../lib/climate/surface.ts'
import { steps, wagnerPrussPa } from './oracles.ts'

describe('at a surface, computed by us and pinned', () => {
  test.each([
    [20, 50, 12, 83.37],
    [20, 50, 5, 134.03],
    [22, 55, 15, 85.29],
  ])('air of %d °C and %d %% at something of %d °C', (air, percent, surface, at) => {
    expect(rhAtSurfacePercent(percent, air, surface, 'water')).toBeCloseTo(at, 2)
  })

  test('by Wagner & Pruß the second digit differs: 83.38', () => {
    const theirs = (50 * wagnerPrussPa(293.15)) / wagnerPrussPa(285.15)
    expect(theirs).toBeCloseTo(83.38, 2)
    expect(rhAtSurfacePercent(50, 20, 12, 'water') / theirs).toBeCloseTo(1, 3)
  })

  test.each([
    [0, 26.13],
    [5, 37.3],
    [10, 52.5],
    [15, 72.92],
    [-18, 5.34],
  ])('something of %d °C stays dry at 20 °C below %d %%', (surface, highest) => {
    expect(Math.abs(highestRoomRhPercent(20, surface, 100, 'water') - highest)).toBeLessThan(0.006)
  })
})

describe('dew and frost', () => {
  const vapourPa = vapourPressurePa(20, 50, 'water')
  const dry = vapourPressurePa(20, 12, 'water')

  test('gathers from the dew point down, and not above', () => {
    const point = dewPointC(vapourPa)
    expect([point - 1e-6, point + 1e-6].map((surface) => depositOn(vapourPa, surface))).toEqual([
      'dew',
      'none',
    ])
  })

  test('below freezing frost gathers from the frost point down, before the dew point is reached', () => {
    const [frost, dew] = [frostPointC(dry), dewPointC(dry)]
    expect(dew).toBeLessThan(frost)
    expect(depositOn(dry, (frost + dew) / 2)).toBe('frost')
    expect(depositOn(dry, frost + 1e-6)).toBe('none')
    // A sensor would call this air less than saturated.
    expect(rhAtSurfacePercent(12, 20, (frost + dew) / 2, 'water')).toBeLessThan(100)
  })

  test('the highest room humidity is where the deposit begins', () => {
    for (const surface of steps(-60, 19, 0.5)) {
      const highest = highestRoomRhPercent(20, surface, 100, 'water')
      const at = (percent: number) => depositOn(vapourPressurePa(20, percent, 'water'), surface)
      expect(at(highest * (1 - 1e-9))).toBe('none')
      expect(at(highest * (1 + 1e-9))).toMatch(/dew|frost/)
    }
  })

  test('salty iron bears less: the room must be drier in the same measure', () => {
    const whole = highestRoomRhPercent(20, 12, 100, 'water')
    expect(highestRoomRhPercent(20, 12, 15, 'water')).toBeCloseTo(whole * 0.15, 9)
    // On a frozen surface frost comes before 100 % over water.
    expect(highestRoomRhPercent(20, -18, 100, 'water')).toBeCloseTo(
      highestRoomRhPercent(20, -18, 95, 'water'),
      9,
    )
    expect(highestRoomRhPercent(20, -18, 80, 'water')).toBeLessThan(
      highestRoomRhPercent(20, -18, 95, 'water'),
    )
  })

  test('no answer from beyond the range', () => {
    expect([depositOn(100, 300), depositOn(Number.NaN, 5)]).toEqual([null, null])
    expect(highestRoomRhPercent(20, -101, 100, 'water')).toBeNaN()
  })
})
