import { describe, expect, test } from 'vitest'
import { humidityAccount, type HumidityAsked } from '../../lib/climate/humidity-account.ts'

const asked: HumidityAsked = {
  temperatureC: 22,
  rhPercent: 55,
  convention: 'water',
  airPressurePa: 101_325,
  toTemperatureC: null,
  surfaceTemperatureC: null,
}
const account = (change: Partial<HumidityAsked>) => {
  const made = humidityAccount({ ...asked, ...change })
  if (!made.ok) throw new Error(`refused: ${made.problems.map(({ quantity }) => quantity).join()}`)
  return made.value
}
const refusal = (change: Partial<HumidityAsked>) => {
  const made = humidityAccount({ ...asked, ...change })
  return made.ok ? [] : made.problems.map(({ quantity }) => quantity)
}

describe('what a reading says', () => {
  test('a frost point only below 0 °C; a dew point always over water', () => {
    expect(account({}).frostPointC).toBeNull()
    expect(account({ temperatureC: 20, rhPercent: 15 })).toMatchObject({
      frostPointC: expect.closeTo(-6.577, 3) as unknown,
      dewPointC: expect.closeTo(-7.409, 3) as unknown,
    })
  })

  test('only what was asked for is told', () => {
    expect(account({})).toMatchObject({ after: null, surface: null })
    expect(account({ toTemperatureC: 15 }).after).toEqual({
      ventedPercent: expect.closeTo(85.292, 3) as unknown,
      sealedPercent: expect.closeTo(83.269, 3) as unknown,
      withGelPercent: null,
    })
    expect(account({ rhPercent: 15, toTemperatureC: 12 }).after?.withGelPercent).toBeCloseTo(14.06, 1)
  })

  test('the convention moves what is below 0 °C, and nothing above', () => {
    const cold = (convention: 'water' | 'ice-below-zero') =>
      account({ temperatureC: -5, rhPercent: 90, convention }).vapourPressurePa
    expect(cold('water') / cold('ice-below-zero')).toBeCloseTo(1.05, 3)
    expect(account({ convention: 'ice-below-zero' }).vapourPressurePa).toBe(account({}).vapourPressurePa)
  })

  test('air without any vapour has no dew point, and is said to', () => {
    expect(account({ rhPercent: 0 })).toMatchObject({
      dewPointC: null,
      frostPointC: null,
      mixingRatioGPerKg: 0,
    })
  })

  test('everything out of range is told at once; steam is no air', () => {
    expect(
      refusal({ temperatureC: 201, rhPercent: 101, toTemperatureC: -101, surfaceTemperatureC: Number.NaN }),
    ).toEqual(['temperatureC', 'rhPercent', 'toTemperatureC', 'surfaceTemperatureC'])
    expect(refusal({ temperatureC: 100, rhPercent: 100 })).toEqual(['vapourPressurePa'])
    expect(refusal({ temperatureC: 99, rhPercent: 100 })).toEqual([])
  })
})
