import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { rhAfterSealedPercent, rhAfterVentedPercent } from '../../lib/climate/after-change.ts'
import { dewPointC, frostPointC } from '../../lib/climate/dew-point.ts'
import {
  absoluteHumidityGPerM3,
  mixingRatioGPerKg,
  rhPercentOf,
  standardPressurePa,
  vapourPressurePa,
} from '../../lib/climate/humidity.ts'
import { samePotentialRhPercent } from '../../lib/climate/isotherm-equations.ts'
import {
  saturationOverIcePa,
  saturationOverWaterPa,
  saturationVapourPressurePa,
  type Convention,
} from '../../lib/climate/saturation.ts'
import { depositOn, highestRoomRhPercent, rhAtSurfacePercent } from '../../lib/climate/surface.ts'

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const celsius = real(-60, 90)
const percent = real(0.1, 100)
const convention = fc.constantFrom<Convention>('water', 'ice-below-zero')
/** Far enough apart that the last digit of a double cannot hide the order. */
const grows = (of: (x: number) => number, low: number, high: number) => of(low) < of(high)
const pair = (of: fc.Arbitrary<number>) =>
  fc
    .tuple(of, of)
    .filter(([a, b]) => b - a > 1e-6)
    .map(([a, b]) => [a, b] as const)

describe('laws of humid air', () => {
  test('relative humidity → dew point → relative humidity', () => {
    fc.assert(
      fc.property(celsius, percent, (t, rh) => {
        const point = dewPointC(vapourPressurePa(t, rh, 'water'))
        fc.pre(!Number.isNaN(point))
        expect(Math.abs(rhPercentOf(t, saturationOverWaterPa(point), 'water') - rh)).toBeLessThan(1e-6)
        expect(point).toBeLessThan(t + 1e-9)
      }),
    )
  })

  test('relative humidity → frost point → relative humidity', () => {
    fc.assert(
      fc.property(real(-60, 25), percent, (t, rh) => {
        const point = frostPointC(vapourPressurePa(t, rh, 'water'))
        fc.pre(!Number.isNaN(point))
        expect(Math.abs(rhPercentOf(t, saturationOverIcePa(point), 'water') - rh)).toBeLessThan(1e-6)
      }),
    )
  })

  test('saturation grows with temperature, across 0 °C and the triple point too', () => {
    const near = fc.oneof(real(-100, 200), real(-0.01, 0.02))
    fc.assert(
      fc.property(pair(near), convention, ([low, high], over) => {
        expect(grows((t) => saturationVapourPressurePa(t, over), low, high)).toBe(true)
      }),
    )
  })

  test('ice never holds back less than water below the triple point', () => {
    fc.assert(
      fc.property(real(-100, 0), (t) => {
        expect(saturationOverIcePa(t)).toBeLessThan(saturationOverWaterPa(t))
      }),
    )
  })

  test('dew point, grams and mixing ratio grow with relative humidity and with temperature', () => {
    const all = (t: number, rh: number) => {
      const vapourPa = vapourPressurePa(t, rh, 'water')
      return [
        dewPointC(vapourPa),
        absoluteHumidityGPerM3(t, vapourPa),
        mixingRatioGPerKg(vapourPa, standardPressurePa),
      ]
    }
    fc.assert(
      fc.property(real(-40, 90), pair(real(1, 100)), (t, [low, high]) => {
        expect(all(t, low).every((value, at) => value < all(t, high)[at]!)).toBe(true)
      }),
    )
    fc.assert(
      fc.property(pair(real(-40, 90)), real(1, 100), ([low, high], rh) => {
        expect(all(low, rh).every((value, at) => value < all(high, rh)[at]!)).toBe(true)
      }),
    )
  })

  test('there and back again is where one was, vented and sealed', () => {
    fc.assert(
      fc.property(celsius, celsius, percent, convention, (from, to, rh, over) => {
        const vented = rhAfterVentedPercent(rhAfterVentedPercent(rh, from, to, over), to, from, over)
        const sealed = rhAfterSealedPercent(rhAfterSealedPercent(rh, from, to, over), to, from, over)
        for (const back of [vented, sealed]) expect(Math.abs(back / rh - 1)).toBeLessThan(1e-9)
      }),
    )
  })

  test('warming dries air, cooling damps it; a sealed box less than a vented one, gel least', () => {
    fc.assert(
      fc.property(real(5, 35), real(5, 35), real(2, 40), (from, to, rh) => {
        fc.pre(Math.abs(to - from) > 0.01)
        const moved = [
          samePotentialRhPercent(rh, from, to),
          rhAfterSealedPercent(rh, from, to, 'water'),
          rhAfterVentedPercent(rh, from, to, 'water'),
        ].map((after) => Math.abs(after - rh))
        expect(moved[1]).toBeLessThan(moved[2]!)
        expect(moved[0]).toBeLessThan(moved[1]!)
        expect(rhAfterVentedPercent(rh, from, to, 'water') > rh).toBe(to < from)
      }),
    )
  })

  test('a surface is wet just where the room is at or above what it bears', () => {
    fc.assert(
      fc.property(real(0, 40), real(-40, 40), percent, convention, (air, surface, rh, over) => {
        const vapourPa = vapourPressurePa(air, rh, over)
        const highest = highestRoomRhPercent(air, surface, 100, over)
        fc.pre(Math.abs(rh / highest - 1) > 1e-9)
        expect(depositOn(vapourPa, surface) !== 'none').toBe(rh > highest)
        if (surface > 0.01) expect(rhAtSurfacePercent(rh, air, surface, over) > 100).toBe(rh > highest)
      }),
    )
  })
})
