import { describe, expect } from 'vitest'
import { mixingRatioGPerKg, standardPressurePa, vapourPressurePa } from '../../../lib/climate/humidity.ts'
import { saturationOverIcePa, saturationOverWaterPa } from '../../../lib/climate/saturation.ts'
import { steamPa, sublimationPa, wagnerPrussPa } from '../../climate/oracles.ts'
import { printed } from '../printed.ts'
import { figure } from '../../said.ts'

const ashrae = (place: string) => ({ work: 'ashrae-fundamentals-2017', place, known: 'second-hand' }) as const

/** How far ours lies from the print, as a share of the print. */
const share = (ours: number, print: number) => Math.abs(ours / print - 1)

describe('vapour pressure and mixing ratio', () => {
  for (const [check, celsius] of [
    ['physics 1', -20],
    ['physics 2', -5],
    ['physics 3, 5 °C', 5],
    ['physics 3, 25 °C', 25],
    ['physics 3, 50 °C', 50],
    ['physics 3, 100 °C', 100],
  ] as const) {
    printed(
      {
        check,
        ...ashrae('chapter 1, table 3'),
        tolerance: '3 in 10,000: what the handbook itself claims for its equations against its table',
        says: `saturation at ${celsius} °C`,
      },
      () => {
        const print = figure(`saturation-pressure-${celsius < 0 ? `minus-${-celsius}` : celsius}c`)
        const over = celsius < 0 ? saturationOverIcePa : saturationOverWaterPa
        expect(share(over(celsius), print.value)).toBeLessThan(3e-4)
        return print
      },
    )
  }

  printed(
    {
      check: 'physics 1, -60 °C',
      ...ashrae('chapter 1, table 3'),
      tolerance: 'half a hundredth of a pascal: the table prints two decimals there',
      says: 'saturation over ice at -60 °C',
    },
    () => {
      const print = figure('saturation-pressure-minus-60c')
      expect(Math.abs(saturationOverIcePa(-60) - print.value)).toBeLessThan(0.005)
      return print
    },
  )

  for (const [celsius, tolerance] of [
    [-20, 5e-3],
    [-5, 5e-3],
    [5, 5e-3],
    [25, 5e-3],
    [50, 1e-2],
  ] as const) {
    printed(
      {
        check: celsius === 25 ? 'physics 10' : `physics 10, ${celsius} °C`,
        ...ashrae('chapter 1, table 2'),
        tolerance: `${tolerance * 100} %: the table allows for air that is no ideal gas, ours does not`,
        says: `water carried by saturated air at ${celsius} °C`,
      },
      () => {
        const print = figure(`saturation-mixing-ratio-${celsius < 0 ? `minus-${-celsius}` : celsius}c`)
        const vapourPa = vapourPressurePa(celsius, 100, 'ice-below-zero')
        const ours = mixingRatioGPerKg(vapourPa, standardPressurePa)
        expect(share(ours, print.value)).toBeLessThan(tolerance)
        expect(ours).toBeLessThan(print.value)
        return print
      },
    )
  }

  for (const [kelvin, tolerance] of [
    [180, 2e-4],
    [230, 3.3e-4],
    [250, 2.5e-4],
    [273, 2.1e-4],
  ] as const) {
    printed(
      {
        check: kelvin === 230 ? 'physics 7' : `physics 7, ${kelvin} K`,
        work: 'iapws-r14-08',
        place: 'check values',
        known: 'second-hand',
        tolerance: `the equation of the print to its last digit; ours, an older equation, to ${tolerance * 100} %`,
        says: `vapour over ice at ${kelvin} K`,
      },
      () => {
        const print = figure(`sublimation-pressure-${kelvin}k`)
        expect(share(sublimationPa(kelvin), print.value)).toBeLessThan(1e-6)
        expect(share(saturationOverIcePa(kelvin - 273.15), print.value)).toBeLessThan(tolerance)
        return print
      },
    )
  }

  for (const kelvin of [300, 500, 600] as const) {
    printed(
      {
        check: kelvin === 300 ? 'physics 8' : `physics 8, ${kelvin} K`,
        work: 'iapws-if97',
        place: 'region 4, check values',
        known: 'memory',
        tolerance: 'the equation of the print to its last digit; ours, where it reaches, to 0.03 %',
        says: `saturation over water at ${kelvin} K`,
      },
      () => {
        const print = figure(`steam-pressure-${kelvin}k`)
        expect(share(steamPa(kelvin), print.value)).toBeLessThan(2e-9)
        const ours = saturationOverWaterPa(kelvin - 273.15)
        if (kelvin === 300) expect(share(ours, print.value)).toBeLessThan(3e-4)
        else expect(ours).toBeNaN()
        return print
      },
    )
  }

  printed(
    {
      check: 'physics 9',
      work: 'iapws-95',
      place: null,
      known: 'second-hand',
      tolerance:
        '0.003 % for the auxiliary equation, which is no full equation of state; 0.03 % for ours, which is older',
      says: 'saturation over water at 300 K',
    },
    () => {
      const print = figure('saturation-pressure-300k')
      expect(share(wagnerPrussPa(300), print.value)).toBeLessThan(3e-5)
      expect(share(saturationOverWaterPa(26.85), print.value)).toBeLessThan(3e-4)
      return print
    },
  )
})
