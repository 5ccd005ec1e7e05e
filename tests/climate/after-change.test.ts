import { describe, expect, test } from 'vitest'
import {
  rhAfterBufferedPercent,
  rhAfterSealedPercent,
  rhAfterVentedPercent,
} from '../../lib/climate/after-change.ts'
import {
  absoluteHumidityGPerM3,
  mixingRatioGPerKg,
  saturationAbsoluteHumidityGPerM3,
  standardPressurePa,
  vapourPressurePa,
} from '../../lib/climate/humidity.ts'
import { samePotentialRhPercent } from '../../lib/climate/isotherm-equations.ts'
import { ashrae } from './oracles.ts'

describe('after a change of temperature, computed by us and pinned', () => {
  test.each([
    [20, 50, 15, 68.57, 67.4],
    [20, 50, 25, 36.9, 37.53],
    [5, 80, 20, 29.84, 31.45],
    [20, 15, 5, 40.21, 38.15],
    [20, 15, 30, 8.26, 8.54],
    [18, 35, 10, 58.84, 57.22],
  ])('%d °C, %d %% taken to %d °C', (from, percent, to, vented, sealed) => {
    expect(rhAfterVentedPercent(percent, from, to, 'water')).toBeCloseTo(vented, 2)
    expect(rhAfterSealedPercent(percent, from, to, 'water')).toBeCloseTo(sealed, 2)
  })

  test('gel at 15 % moves a point for ten degrees, where empty air goes to 28.6 and 8.3', () => {
    expect(samePotentialRhPercent(15, 20, 10)).toBeCloseTo(14.03, 2)
    expect(samePotentialRhPercent(15, 20, 30)).toBeCloseTo(15.97, 2)
  })
})

describe('what stays the same through a change', () => {
  test('vented: the mixing ratio, as psychrolib counts it', () => {
    const ratio = ashrae.GetHumRatioFromRelHum(20, 0.5, standardPressurePa)
    const theirs = ashrae.GetRelHumFromHumRatio(-3, ratio, standardPressurePa) * 100
    expect(rhAfterVentedPercent(50, 20, -3, 'ice-below-zero') / theirs).toBeCloseTo(1, 9)
    expect(mixingRatioGPerKg(vapourPressurePa(20, 50, 'water'), standardPressurePa)).toBeCloseTo(
      ratio * 1000,
      9,
    )
  })

  test('sealed: the grams in a cubic metre', () => {
    const grams = (celsius: number, percent: number) =>
      absoluteHumidityGPerM3(celsius, vapourPressurePa(celsius, percent, 'water'))
    expect(grams(5, rhAfterSealedPercent(15, 20, 5, 'water'))).toBeCloseTo(grams(20, 15), 10)
  })

  test('with gel: the water of air and gel together', () => {
    const [volumeL, gelKg, reservoir] = [24, 0.03, 5]
    const after = rhAfterBufferedPercent(15, 20, 8, volumeL, gelKg, reservoir)
    const inAir = (celsius: number, percent: number) =>
      ((volumeL / 1000) * saturationAbsoluteHumidityGPerM3(celsius, 'water') * percent) / 100
    const gained = gelKg * reservoir * (after - samePotentialRhPercent(15, 20, 8))
    expect(inAir(8, after) + gained).toBeCloseTo(inAir(20, 15), 10)
  })
})

describe('gel between nothing and plenty', () => {
  test('without gel the box is the sealed one', () => {
    expect(rhAfterBufferedPercent(15, 20, 5, 10, 0, 5)).toBeCloseTo(
      rhAfterSealedPercent(15, 20, 5, 'water'),
      9,
    )
  })

  test('more gel brings it nearer to the gel, from the side of the sealed box', () => {
    const [gel, sealed] = [samePotentialRhPercent(15, 20, 5), rhAfterSealedPercent(15, 20, 5, 'water')]
    const off = [0, 0.001, 0.01, 0.05, 1].map((kg) => rhAfterBufferedPercent(15, 20, 5, 10, kg, 5) - gel)
    expect(off[0]).toBeCloseTo(sealed - gel, 9)
    expect(off.every((one, at) => at === 0 || (one > 0 && one < off[at - 1]!))).toBe(true)
    expect(off[3]).toBeLessThan(0.1)
  })

  test('no answer from beyond the range', () => {
    expect([
      rhAfterBufferedPercent(15, 20, 4, 10, 1, 5),
      rhAfterBufferedPercent(15, 41, 20, 10, 1, 5),
    ]).toEqual([NaN, NaN])
    expect(rhAfterVentedPercent(50, 20, 201, 'water')).toBeNaN()
  })
})
