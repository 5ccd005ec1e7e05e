import { describe, expect, test } from 'vitest'
import {
  saturationOverIcePa,
  saturationOverWaterPa,
  saturationVapourPressurePa,
} from '../../lib/climate/saturation.ts'
import {
  ashrae,
  magnusIcePa,
  magnusWaterPa,
  murphyKoopPa,
  steamPa,
  steps,
  sublimationPa,
  wagnerPrussPa,
  worstShare,
} from './oracles.ts'

const kelvin = (of: (kelvin: number) => number) => (celsius: number) => of(celsius + 273.15)
const overIceBelowZero = (celsius: number) => saturationVapourPressurePa(celsius, 'ice-below-zero')

describe('saturation against other hands', () => {
  test('psychrolib over its whole range, to the last digits: the coefficients are the same', () => {
    const at = [...steps(-100, 200, 0.01), 0, 0.0099, 0.01, 0.0101]
    expect(worstShare(at, overIceBelowZero, (celsius) => ashrae.GetSatVapPres(celsius))).toBeLessThan(1e-11)
  })

  // Hyland and Wexler stand on an older temperature scale than the international equations: that is the difference.
  test.each([
    ['Wagner & Pruß', wagnerPrussPa, 0.01, 100, 2.3e-4],
    ['Wagner & Pruß, hot', wagnerPrussPa, 100, 200, 2.3e-4],
    ['IF97', steamPa, 0, 200, 2.6e-4],
  ] as const)('over water: %s', (_, theirs, from, to, tolerance) => {
    expect(worstShare(steps(from, to, 0.1), saturationOverWaterPa, kelvin(theirs))).toBeLessThan(tolerance)
  })

  test('over ice: IAPWS within 0.033 % from -100 °C to the triple point', () => {
    const worst = worstShare(steps(-100, 0.01, 0.01), saturationOverIcePa, kelvin(sublimationPa))
    expect(worst).toBeLessThan(3.3e-4)
  })

  test('over supercooled water: Murphy & Koop within 0.07 % down to -20 °C, 1.2 % to -45 °C', () => {
    expect(worstShare(steps(-20, 0, 0.1), saturationOverWaterPa, kelvin(murphyKoopPa))).toBeLessThan(7e-4)
    expect(worstShare(steps(-45, -20, 0.1), saturationOverWaterPa, kelvin(murphyKoopPa))).toBeLessThan(1.2e-2)
  })

  test('Magnus is the coarser one: 0.35 % over water, 0.6 % over ice', () => {
    expect(worstShare(steps(-40, 50, 0.5), saturationOverWaterPa, magnusWaterPa)).toBeLessThan(3.5e-3)
    expect(worstShare(steps(-65, 0, 0.5), saturationOverIcePa, magnusIcePa)).toBeLessThan(6e-3)
  })
})

describe('saturation, computed by us and pinned', () => {
  test.each([
    [10, 1227.995],
    [15, 1705.448],
    [20, 2338.804],
    [25, 3169.216],
    [30, 4246.03],
    [40, 7383.46],
  ])('over water at %d °C', (celsius, pascal) => {
    expect(saturationOverWaterPa(celsius)).toBeCloseTo(pascal, 3)
  })

  test('over ice at -10 °C; water there stands at 1.1026 times ice', () => {
    expect(saturationOverIcePa(-10)).toBeCloseTo(259.903, 3)
    expect(saturationOverWaterPa(-10) / saturationOverIcePa(-10)).toBeCloseTo(1.1026, 3)
  })
})

describe('where the equations end and where they meet', () => {
  test.each([
    ['water', saturationOverWaterPa, -100, 200],
    ['ice', saturationOverIcePa, -100, 0.01],
  ] as const)('beyond the range of %s there is no number', (_, of, from, to) => {
    expect([of(from), of(to)].every((pascal) => pascal > 0)).toBe(true)
    expect([of(from - 1e-9), of(to + 1e-9), of(Number.NaN), of(Infinity)]).toEqual([NaN, NaN, NaN, NaN])
  })

  test('nothing jumps: at 0 °C over water, at the triple point where ice ends', () => {
    const step = (of: (celsius: number) => number, at: number) => of(at + 1e-9) / of(at - 1e-9) - 1
    for (const at of [0, 0.01]) expect(Math.abs(step(saturationOverWaterPa, at))).toBeLessThan(1e-9)
    expect(Math.abs(step(overIceBelowZero, 0.01))).toBeLessThan(1e-8)
    expect(step(overIceBelowZero, 0.01)).toBeGreaterThan(0)
  })

  test('the trap of the two conventions: -5 °C and 90 % are 361.6 Pa over ice and 379.6 Pa over water', () => {
    expect(0.9 * saturationVapourPressurePa(-5, 'ice-below-zero')).toBeCloseTo(361.6, 1)
    expect(0.9 * saturationVapourPressurePa(-5, 'water')).toBeCloseTo(379.6, 1)
    expect(saturationVapourPressurePa(5, 'ice-below-zero')).toBe(saturationVapourPressurePa(5, 'water'))
  })
})
