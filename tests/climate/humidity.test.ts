import { describe, expect, test } from 'vitest'
import {
  absoluteHumidityGPerM3,
  mixingRatioGPerKg,
  rhPercentOf,
  saturationAbsoluteHumidityGPerM3,
  standardPressurePa,
  vapourPressureOfMixingRatioPa,
  vapourPressurePa,
} from '../../lib/climate/humidity.ts'
import { ashrae, steps } from './oracles.ts'

describe('humidity of air against psychrolib', () => {
  const grid = steps(-100, 95, 2.5).flatMap((celsius) =>
    [0.05, 0.2, 0.55, 0.99].map((share) => [celsius, share] as const),
  )

  test('vapour pressure and back', () => {
    for (const [celsius, share] of grid) {
      const theirs = ashrae.GetVapPresFromRelHum(celsius, share)
      expect(vapourPressurePa(celsius, share * 100, 'ice-below-zero') / theirs).toBeCloseTo(1, 11)
      expect(rhPercentOf(celsius, theirs, 'ice-below-zero')).toBeCloseTo(share * 100, 9)
    }
  })

  test('mixing ratio and back', () => {
    for (const [celsius, share] of grid) {
      const vapourPa = vapourPressurePa(celsius, share * 100, 'ice-below-zero')
      const theirs = ashrae.GetHumRatioFromVapPres(vapourPa, standardPressurePa) * 1000
      const ours = mixingRatioGPerKg(vapourPa, standardPressurePa)
      // It never gives less than 0.0001 g/kg, even where there is less.
      if (theirs > 1.001e-4) expect(ours / theirs).toBeCloseTo(1, 9)
      expect(vapourPressureOfMixingRatioPa(ours, standardPressurePa) / vapourPa).toBeCloseTo(1, 12)
    }
  })
})

describe('humidity of air, computed by us and pinned', () => {
  test.each([
    [20, 50, 1169.402, 7.2617, 8.6433],
    [22, 55, 1454.614, 9.0586, 10.6785],
    [18, 35, 722.502, 4.4667, 5.3769],
    [25, 60, 1901.53, 11.895, 13.8189],
    [20, 15, 350.821, 2.1609, 2.593],
    [20, 12, 280.656, 1.7275, 2.0744],
    [20, 10, 233.88, 1.4389, 1.7287],
  ])('%d °C, %d %%', (celsius, percent, pascal, ratio, perCubicMetre) => {
    const vapourPa = vapourPressurePa(celsius, percent, 'water')
    expect(vapourPa).toBeCloseTo(pascal, 2)
    expect(mixingRatioGPerKg(vapourPa, standardPressurePa)).toBeCloseTo(ratio, 3)
    expect(absoluteHumidityGPerM3(celsius, vapourPa)).toBeCloseTo(perCubicMetre, 3)
  })

  // The worked values stand on Wagner & Pruß, ours on Hyland & Wexler: 0.023 % apart.
  test.each([
    [0, 4.848],
    [10, 9.398],
    [20, 17.29],
    [30, 30.355],
  ])('saturated air at %d °C holds %d g/m³', (celsius, grams) => {
    expect(saturationAbsoluteHumidityGPerM3(celsius, 'water') / grams).toBeCloseTo(1, 3)
  })

  // Volume of a kilogram of saturated steam [m³], remembered from steam tables.
  test.each([
    [20, 57.757, 1.6e-3],
    [30, 32.878, 2.3e-3],
    [50, 12.027, 4.2e-3],
  ])(
    'at %d °C it lies a little below the steam tables, as an ideal gas must',
    (celsius, volume, tolerance) => {
      const share = saturationAbsoluteHumidityGPerM3(celsius, 'water') / (1000 / volume) - 1
      expect(share).toBeLessThan(0)
      expect(-share).toBeLessThan(tolerance)
    },
  )

  test('no mixing ratio where vapour is all there is, nor an answer from beyond the range', () => {
    expect(mixingRatioGPerKg(101_325, 101_325)).toBeNaN()
    expect(mixingRatioGPerKg(2e5, 101_325)).toBeNaN()
    expect(vapourPressurePa(201, 10, 'water')).toBeNaN()
    expect(saturationAbsoluteHumidityGPerM3(-101, 'water')).toBeNaN()
  })
})
