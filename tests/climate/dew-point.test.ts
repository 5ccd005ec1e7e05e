import { describe, expect, test } from 'vitest'
import { dewPointC, frostPointC } from '../../lib/climate/dew-point.ts'
import { vapourPressurePa } from '../../lib/climate/humidity.ts'
import { saturationOverIcePa, saturationOverWaterPa } from '../../lib/climate/saturation.ts'
import { ashrae, magnusWaterPa, steps } from './oracles.ts'

const farthest = (at: readonly number[], off: (celsius: number) => number) =>
  at.reduce((worst, celsius) => Math.max(worst, Math.abs(off(celsius)) || 0), 0)

describe('dew and frost point', () => {
  test('lead back to the temperature they came from, over the whole range', () => {
    const water = steps(-100, 200, 0.01)
    expect(water.filter((t) => Number.isNaN(dewPointC(saturationOverWaterPa(t))))).toEqual([])
    expect(farthest(water, (t) => dewPointC(saturationOverWaterPa(t)) - t)).toBeLessThan(1e-9)
    const ice = steps(-100, 0.01, 0.01)
    expect(ice.filter((t) => Number.isNaN(frostPointC(saturationOverIcePa(t))))).toEqual([])
    expect(farthest(ice, (t) => frostPointC(saturationOverIcePa(t)) - t)).toBeLessThan(1e-9)
  })

  test('psychrolib gives the same: dew above the triple point, frost below', () => {
    const off = (celsius: number) => {
      const vapourPa = ashrae.GetVapPresFromRelHum(celsius, 0.4)
      const theirs = ashrae.GetTDewPointFromVapPres(celsius, vapourPa)
      return (theirs <= 0.01 ? frostPointC(vapourPa) : dewPointC(vapourPa)) - theirs
    }
    expect(farthest(steps(-90, 199, 0.05), off)).toBeLessThan(1e-5)
  })

  test.each([
    [20, 50, 9.2724],
    [22, 55, 12.5535],
    [18, 35, 2.3246],
    [25, 60, 16.7011],
  ])('computed by us: %d °C, %d %% dews at %d °C', (celsius, percent, point) => {
    expect(dewPointC(vapourPressurePa(celsius, percent, 'water'))).toBeCloseTo(point, 4)
  })

  test.each([
    [15, -6.5769],
    [12, -9.1318],
    [10, -11.183],
  ])('computed by us: 20 °C, %d %% rimes at %d °C', (percent, point) => {
    expect(frostPointC(vapourPressurePa(20, percent, 'water'))).toBeCloseTo(point, 4)
  })

  test('the trap of dry air: its dew point lies below its frost point, and both below 0 °C', () => {
    const vapourPa = vapourPressurePa(20, 15, 'water')
    // Magnus has -7.460 over water: 0.05 °C off is what it is worth.
    expect(dewPointC(vapourPa)).toBeCloseTo(-7.4086, 4)
    expect(Math.abs(dewPointC(vapourPa) + 7.46)).toBeLessThan(0.06)
    expect(Math.abs(Math.log(magnusWaterPa(dewPointC(vapourPa)) / vapourPa))).toBeLessThan(3e-3)
    expect(frostPointC(vapourPa) - dewPointC(vapourPa)).toBeGreaterThan(0.8)
  })

  test('where there is none there is no number', () => {
    expect([0, -1, Number.NaN, 1e-9, 2e6].map(dewPointC)).toEqual([NaN, NaN, NaN, NaN, NaN])
    expect([0, 1e-9, 612].map(frostPointC)).toEqual([NaN, NaN, NaN])
    expect(dewPointC(Infinity)).toBeNaN()
  })
})
