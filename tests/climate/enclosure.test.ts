import { describe, expect, test } from 'vitest'
import { breathedByPressure, breathedByWarmthPerDay } from '../../lib/climate/enclosure-breathing.ts'
import { daysToLimit, rhAfterDays } from '../../lib/climate/enclosure-constant.ts'
import { heldGPerPercent, timeConstantDays, type Enclosure } from '../../lib/climate/enclosure.ts'
import { halfTimeDays } from '../../lib/climate/gel-half-time.ts'
import { gelKgByQuantityEquation, gelKgForSpan } from '../../lib/climate/gel-mass.ts'
import { openingsAsAirChangesPerDay, riseOnOpeningPercent } from '../../lib/climate/lid-opening.ts'
import {
  permeanceAtThickness,
  permeanceGPerM2DayKPa,
  wallAsAirChangesPerDay,
} from '../../lib/climate/permeation.ts'
import { riseFromWaterPercent } from '../../lib/climate/residual-water.ts'
import { airChangesFromTracerPerDay, timeConstantFromTwoDays } from '../../lib/climate/tracer.ts'

/**
 * Values of our own, reckoned with another equation for saturation (Wagner and Pruß) than the one in use: the two lie up to
 * 0.025 % apart, and so does what follows from them.
 */
const asReckoned = (value: number | null, expected: number) =>
  Math.abs(value! / expected - 1) < 3e-4 ? expected : value

const box: Enclosure = {
  volumeL: 10,
  gelKg: 0.5,
  reservoirGPerKgPercent: 5,
  airChangesPerDay: 0.5,
  temperatureC: 20,
}

describe('a box in a room that stays as it is', () => {
  test.each<[Partial<Enclosure>, number, number, number, number]>([
    [{}, 55, 10, 2893.925, 304.9],
    [{}, 55, 15, 2893.925, 645.761],
    [{}, 55, 20, 2893.925, 1032.191],
    [{ airChangesPerDay: 1 }, 55, 15, 1446.963, 322.88],
    [{ gelKg: 0.1 }, 55, 15, 580.385, 129.509],
    [{ volumeL: 50, airChangesPerDay: 1 }, 60, 15, 290.193, 58.233],
    [{ volumeL: 3.5, gelKg: 0.05, airChangesPerDay: 2 }, 50, 12, 207.066, 35.01],
    [{ volumeL: 24, airChangesPerDay: 1, temperatureC: 18 }, 65, 30, 678.955, 365.954],
    [{ volumeL: 1000, gelKg: 20, airChangesPerDay: 1 }, 55, 20, 579.385, 206.652],
    [{ volumeL: 1000, gelKg: 0 }, 55, 15, 2, 0.44629],
  ])('%j in %d %%: to %d %% with a time constant of %d in %d days', (change, outside, limit, tau, days) => {
    const reckoned = timeConstantDays({ ...box, ...change })
    expect(asReckoned(reckoned, tau)).toBe(tau)
    expect(asReckoned(daysToLimit(reckoned, outside, 5, limit), days)).toBe(days)
  })

  test('stands over its limit already, or never gets there', () => {
    expect(daysToLimit(100, 55, 15, 15)).toBe(0)
    expect(daysToLimit(100, 55, 20, 15)).toBe(0)
    expect(daysToLimit(100, 15, 5, 15)).toBeNull()
    expect(daysToLimit(100, 10, 5, 15)).toBeNull()
    expect(daysToLimit(timeConstantDays({ ...box, airChangesPerDay: 0 }), 55, 5, 15)).toBeNull()
  })

  test('is where its time to the limit says, when that time has come', () => {
    const days = daysToLimit(timeConstantDays(box), 55, 5, 15)!
    expect(rhAfterDays(timeConstantDays(box), 55, 5, days)).toBeCloseTo(15, 9)
    expect(rhAfterDays(Infinity, 55, 5, 1000)).toBe(5)
  })

  test('has its time constant from two looks at it, and none from looks that contradict the room', () => {
    const tau = timeConstantDays(box)
    expect(
      timeConstantFromTwoDays(55, rhAfterDays(tau, 55, 5, 30), rhAfterDays(tau, 55, 5, 130), 100),
    ).toBeCloseTo(tau, 6)
    expect(timeConstantFromTwoDays(55, 10, 10, 100)).toBe(Infinity)
    expect(timeConstantFromTwoDays(55, 15, 10, 100)).toBeNaN()
    expect(timeConstantFromTwoDays(55, 50, 60, 100)).toBeNaN()
  })
})

describe('gel for a span', () => {
  test('of a year, in a box of the worked table', () => {
    expect(asReckoned(gelKgForSpan(box, 55, 5, 15, 365), 0.282462)).toBe(0.282462)
    expect(
      asReckoned(gelKgForSpan({ ...box, volumeL: 50, airChangesPerDay: 1 }, 60, 5, 15, 365), 3.1425),
    ).toBe(3.1425)
    expect(
      asReckoned(gelKgForSpan({ ...box, volumeL: 1000, airChangesPerDay: 0.4 }, 55, 5, 20, 365), 14.12),
    ).toBe(14.12)
  })

  test('is nothing where the room is dry, and no amount where it begins over the limit', () => {
    expect(gelKgForSpan(box, 15, 5, 15, 365)).toBe(0)
    expect(gelKgForSpan(box, 55, 5, 15, 0.1)).toBe(0)
    expect(gelKgForSpan(box, 55, 15, 15, 365)).toBeNull()
  })

  test('by the quantity equation', () => {
    expect(gelKgByQuantityEquation(17.3, 25, 1, 1, 90, 4, 5)).toBeCloseTo(19.4625, 9)
    expect(asReckoned(gelKgByQuantityEquation(17.3, 45, 0.01, 0.5, 365, 5, 10), 0.28415)).toBe(0.28415)
    expect(asReckoned(gelKgByQuantityEquation(17.3, 50, 0.01, 0.5, 365, 5, 10), 0.3157)).toBe(0.3157)
  })

  test('the quantity equation agrees with the model to a percent, and better for smaller changes', () => {
    const apart = (limit: number) => {
      const difference = 55 - (5 + limit) / 2
      const equation = gelKgByQuantityEquation(17.287, difference, 0.01, 0.5, 365, 5, limit - 5)
      return Math.abs(equation / (gelKgForSpan(box, 55, 5, limit, 365)! + (0.01 * 0.17287) / 5) - 1)
    }
    expect(apart(15)).toBeLessThan(0.01)
    expect(apart(8)).toBeLessThan(apart(15) / 5)
  })
})

describe('other ways of water', () => {
  test('a half-time with its air', () => {
    expect(asReckoned(halfTimeDays(2, 20, 1, 20), 161.056)).toBe(161.056)
    expect(halfTimeDays(5, 20, 0.1, 20) / halfTimeDays(5, 20, 1, 20)).toBeCloseTo(10, 9)
  })

  test('a lid opened once is nothing, opened daily it is a leak', () => {
    expect(riseOnOpeningPercent(box, 55, 10)).toBeCloseTo(0.0311, 4)
    expect(riseOnOpeningPercent({ ...box, gelKg: 0 }, 55, 10)).toBe(45)
    expect(openingsAsAirChangesPerDay(365.25)).toBe(1)
  })

  test('five grams of water from damp objects cost half a kilogram of gel two percent', () => {
    expect(riseFromWaterPercent(box, 5)).toBeCloseTo(2, 2)
    expect(riseFromWaterPercent(box, 5)).toBe(5 / heldGPerPercent(box))
  })

  test.each([
    [15, 25, 9.2],
    [6, 25, 3.7],
    [0.5, 25, 0.31],
    [0.03, 25, 0.018],
    [15, 1000, 0.23],
    [6, 1000, 0.092],
  ])(
    '%d g/(m²·d) at 25 µm is a wall of %d µm that lets in %d air changes',
    (transmission, thickness, airChanges) => {
      const film = permeanceAtThickness(permeanceGPerM2DayKPa(transmission, 38, 90), 25, thickness)
      const wallGPerDayKPa = film * 0.27
      const asLeak = wallAsAirChangesPerDay(wallGPerDayKPa, 10, 20)
      expect(Math.abs(asLeak / airChanges - 1)).toBeLessThan(0.03)
      expect(timeConstantDays({ ...box, wallGPerDayKPa })).toBeCloseTo(
        timeConstantDays({ ...box, airChangesPerDay: 0.5 + asLeak }),
        9,
      )
    },
  )

  test('the permeance of a film, and how many air changes a bag of it comes to', () => {
    const permeance = permeanceGPerM2DayKPa(15, 38, 90)
    expect(asReckoned(permeance, 2.5127)).toBe(2.5127)
    expect(asReckoned(wallAsAirChangesPerDay(permeance * 0.27, 10, 20), 9.1788)).toBe(9.1788)
  })

  test('a tracer tells the exchange, unless it is not above the room', () => {
    expect(airChangesFromTracerPerDay(4400, 1400, 400, 48)).toBeCloseTo(Math.LN2, 9)
    expect(airChangesFromTracerPerDay(4400, 400, 400, 48)).toBeNaN()
    expect(airChangesFromTracerPerDay(4400, 1400, 400, 0)).toBeNaN()
  })

  test('a box breathes with warmth and weather, however tight it is', () => {
    expect(breathedByWarmthPerDay(5, 20)).toBeCloseTo(0.017, 3)
    expect(breathedByPressure(20, 1013)).toBeCloseTo(0.02, 3)
    expect(breathedByWarmthPerDay(5, 20) / (1 - 293.15 / 298.15)).toBeCloseTo(1, 1)
  })
})
