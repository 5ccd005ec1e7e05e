import { describe, expect, test } from 'vitest'
import {
  dubininAstakhov,
  fujiA,
  fujiAGPerKg,
  samePotentialRhPercent,
  toth,
  tothGPerKg,
} from '../../lib/climate/isotherm-equations.ts'
import { measuredIsotherm } from '../../lib/climate/isotherm-measured.ts'
import {
  rhAtOtherTemperaturePercent,
  rhOfContentPercent,
  slopeGPerKgPercent,
} from '../../lib/climate/isotherm.ts'
import { hysteresisCaution, reservoirGPerKgPercent } from '../../lib/climate/reservoir.ts'
import { saturationOverWaterPa } from '../../lib/climate/saturation.ts'

const equations = [dubininAstakhov, toth, fujiA] as const

/** An invented gel, measured at 25 °C in points a tenth of saturation apart. */
const saturation = saturationOverWaterPa(25)
const invented = measuredIsotherm({
  id: 'invented',
  work: 'invented-1999',
  temperatureC: 25,
  points: [
    [0.1 * saturation, 60],
    [0.2 * saturation, 100],
    [0.3 * saturation, 101],
    [0.4 * saturation, 250],
  ],
})

describe('what the equations say', () => {
  test('Dubinin–Astakhov, 5 to 80 %, within what it was fitted to', () => {
    const reckoned = [10, 20, 40, 60, 80].map((rh) => dubininAstakhov.contentGPerKg(rh, 25))
    expect(reckoned.map((water) => Math.round(water * 10) / 10)).toEqual([78.2, 135.2, 216, 270.4, 306.7])
    expect(dubininAstakhov.contentGPerKg(5, 25)).toBeNaN()
  })

  test('Tóth, 5 to 80 %', () => {
    const reckoned = [5, 10, 20, 30, 40, 60, 80].map((rh) => tothGPerKg(rh, 25))
    expect(reckoned.map((water) => Math.round(water * 10) / 10)).toEqual([
      57.8, 90.5, 140.6, 181.3, 216.7, 278, 331.2,
    ])
  })

  test('nothing outside of what each holds for', () => {
    expect(tothGPerKg(0.4, 25)).toBeNaN()
    expect(tothGPerKg(90, 25)).toBeNaN()
    expect(tothGPerKg(20, 76)).toBeNaN()
    expect(tothGPerKg(101, 1)).toBeNaN()
    expect(fujiAGPerKg(20, 18)).toBeNaN()
    expect(fujiAGPerKg(60, 25)).toBeNaN()
    expect(dubininAstakhov.contentGPerKg(20, 45)).toBeNaN()
    expect(dubininAstakhov.contentGPerKg(Number.NaN, 25)).toBeNaN()
  })

  test.each(equations.map((isotherm) => [isotherm.id, isotherm] as const))(
    '%s holds exactly where it says',
    (_, isotherm) => {
      for (const temperatureC of [-5, 3, 10, 21, 35, 50, 80]) {
        const span = isotherm.rhPercent(temperatureC)
        const holds = (rh: number) => !Number.isNaN(isotherm.contentGPerKg(rh, temperatureC))
        if (span === null) {
          expect([5, 20, 50].some(holds)).toBe(false)
          continue
        }
        expect(holds(span.from * 1.0001) && holds(span.to * 0.9999)).toBe(true)
        expect(holds(span.from * 0.99) || (span.to < 100 && holds(span.to * 1.01))).toBe(false)
      }
    },
  )
})

describe('an isotherm through measured points', () => {
  test('goes through them and never down between them', () => {
    expect([10, 20, 30, 40].map((rh) => invented.contentGPerKg(rh, 25))).toEqual(
      [60, 100, 101, 250].map((w) => expect.closeTo(w, 9)),
    )
    const waters = Array.from({ length: 301 }, (_, at) => invented.contentGPerKg(10 + at / 10, 25))
    expect(waters.every((water, at) => at === 0 || water >= waters[at - 1]!)).toBe(true)
  })

  test('ends where the points end', () => {
    expect(invented.contentGPerKg(9.9, 25)).toBeNaN()
    expect(invented.contentGPerKg(40.1, 25)).toBeNaN()
    expect(rhOfContentPercent(invented, 59, 25)).toBeNaN()
    expect(rhOfContentPercent(invented, 251, 25)).toBeNaN()
    expect(rhOfContentPercent(invented, 60, 25)).toBeCloseTo(10, 6)
    expect(rhOfContentPercent(invented, 250, 25)).toBeCloseTo(40, 6)
  })

  test('at another temperature it holds the same water at the humidity of equal potential', () => {
    const warmer = samePotentialRhPercent(20, 25, 35)
    expect(invented.contentGPerKg(warmer, 35)).toBeCloseTo(100, 6)
    expect(rhAtOtherTemperaturePercent(invented, 20, 25, 35)).toBeCloseTo(warmer, 6)
    expect(invented.rhPercent(45)).toBeNull()
    expect(invented.contentGPerKg(20, 45)).toBeNaN()
  })

  test('measured far from room temperature it is moved nowhere', () => {
    const hot = measuredIsotherm({
      ...invented,
      temperatureC: 75,
      points: [
        [100, 1],
        [1000, 9],
        [2000, 15],
      ],
    })
    expect(hot.rhPercent(75)).not.toBeNull()
    expect(hot.rhPercent(25)).toBeNull()
    expect(hot.contentGPerKg((100 * 1000) / saturationOverWaterPa(75), 75)).toBeCloseTo(9, 9)
  })
})

describe('reading isotherms', () => {
  test('the humidity of gel that is warmed hardly moves, by whichever equation', () => {
    expect(rhAtOtherTemperaturePercent(dubininAstakhov, 15, 20, 10)).toBeCloseTo(14.0, 1)
    expect(rhAtOtherTemperaturePercent(dubininAstakhov, 15, 20, 30)).toBeCloseTo(16.0, 1)
    expect(rhAtOtherTemperaturePercent(toth, 15, 20, 10)).toBeCloseTo(15.7, 1)
    expect(rhAtOtherTemperaturePercent(toth, 15, 20, 30)).toBeCloseTo(15.1, 1)
    expect(rhAtOtherTemperaturePercent(dubininAstakhov, 15, 20, 60)).toBeNaN()
  })

  test('the slope is that of the equation', () => {
    const exact = (rh: number) => (346 * 0.625 * (rh / 100) ** -0.375) / 100
    expect(slopeGPerKgPercent(fujiA, 20, 25)).toBeCloseTo(exact(20), 5)
    expect(slopeGPerKgPercent(fujiA, 0.6, 25)).toBeGreaterThan(0)
    expect(slopeGPerKgPercent(fujiA, 53, 25)).toBeGreaterThan(0)
    expect(slopeGPerKgPercent(fujiA, 54, 25)).toBeNaN()
  })

  test('the reservoir is the slope between two ends, either way round', () => {
    expect(reservoirGPerKgPercent(invented, 10, 20, 25)).toBeCloseTo(4, 9)
    expect(reservoirGPerKgPercent(invented, 20, 10, 25)).toBeCloseTo(4, 9)
    expect(reservoirGPerKgPercent(toth, 5, 15, 20)).toBeCloseTo(5.98, 2)
    expect(reservoirGPerKgPercent(invented, 5, 20, 25)).toBeNaN()
  })

  test('hysteresis is warned of where a span touches the loop, and only there', () => {
    const loop = { from: 30, to: 80 }
    expect(hysteresisCaution(5, 30, loop)).toBeNull()
    expect(hysteresisCaution(5, 30.1, loop)).toBe('hysteresis')
    expect(hysteresisCaution(60, 50, loop)).toBe('hysteresis')
    expect(hysteresisCaution(85, 95, loop)).toBeNull()
    expect(hysteresisCaution(95, 79, loop)).toBe('hysteresis')
  })
})
