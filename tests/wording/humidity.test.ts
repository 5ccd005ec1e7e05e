import { describe, expect, test } from 'vitest'
import { correctionOverSalts, type SaltReading } from '../../lib/climate/fixed-points-correction.ts'
import { fixedPoint } from '../../lib/climate/fixed-points.ts'
import { tellHumidity } from '../../lib/services/tell-humidity.ts'
import { humidityText } from '../../lib/wording/humidity.ts'
import {
  beyondPointsWords,
  correctionRefusalWords,
  correctionWords,
  fixedPointWords,
} from '../../lib/wording/humidity-salts.ts'

const told = (asked: Parameters<typeof tellHumidity>[0]) => {
  const made = tellHumidity(asked)
  if (!made.ok) throw new Error('refused')
  return humidityText(made.value).replaceAll(/\s+/g, ' ')
}

describe('humidity in words', () => {
  test('a limit is never rounded up', () => {
    // 52.505 %
    expect(told({ temperatureC: 20, rhPercent: 40, surfaceTemperatureC: 10 })).toContain('below 52 %')
    // 5.341 %
    expect(told({ temperatureC: 20, rhPercent: 4, surfaceTemperatureC: -18 })).toContain('below 5.3 %')
  })

  test('what is nearly saturated is not rounded to saturated', () => {
    expect(told({ temperatureC: 20, rhPercent: 52.4, surfaceTemperatureC: 10 })).toContain(
      '99.8 %: it stays dry',
    )
  })

  test('the pack stays closed where something gathers, and only there', () => {
    expect(told({ temperatureC: 20, rhPercent: 60, surfaceTemperatureC: 5 })).toMatch(
      /dew gathers.*leave its pack closed/,
    )
    expect(told({ temperatureC: 20, rhPercent: 12, surfaceTemperatureC: -18 })).toMatch(
      /frost gathers.*leave its pack closed/,
    )
    expect(told({ temperatureC: 20, rhPercent: 20, surfaceTemperatureC: 5 })).not.toMatch(/pack closed/)
  })

  test('salty metal is minded whether or not dew gathers', () => {
    expect(told({ temperatureC: 20, rhPercent: 20, surfaceTemperatureC: 15 })).toMatch(
      /salts on it gets damp long before/,
    )
  })

  test('the convention is told where anything lies below 0 °C, and only there', () => {
    expect(told({ temperatureC: 22, rhPercent: 55 })).not.toMatch(/liquid water, as loggers/)
    expect(told({ temperatureC: 20, rhPercent: 12 })).toMatch(/liquid water, as loggers/)
    expect(told({ temperatureC: 20, rhPercent: 80, toTemperatureC: -1 })).toMatch(/liquid water, as loggers/)
    expect(told({ temperatureC: -5, rhPercent: 80, convention: 'ice-below-zero' })).toMatch(/against ice/)
  })

  test('water that comes out of the air is told as that', () => {
    expect(told({ temperatureC: 20, rhPercent: 80, toTemperatureC: 5 })).toMatch(/water comes out of the air/)
  })
})

describe('salts in words', () => {
  test('both sources stand there where they differ', () => {
    expect(fixedPointWords(fixedPoint('lithium-chloride', 10)!)).toMatch(
      /11.3 %, by Greenspan.*from memory.*printed table\.$/,
    )
    expect(fixedPointWords(fixedPoint('magnesium-chloride', 20)!)).toMatch(
      /33.1 %.*the handbook of chemistry has 32.9 %/,
    )
    expect(fixedPointWords(fixedPoint('magnesium-chloride', 25)!)).toMatch(/the handbook of chemistry agrees/)
    expect(fixedPointWords(fixedPoint('sodium-bromide', 20)!)).toMatch(/by the handbook of chemistry alone/)
  })

  const over = (salt: SaltReading['salt'], readRhPercent: number, temperatureC = 20) => ({
    salt,
    temperatureC,
    readRhPercent,
  })

  test('a correction says where it holds', () => {
    const two = correctionOverSalts([over('lithium-chloride', 13.8), over('magnesium-chloride', 34.6)])
    const one = correctionOverSalts([over('magnesium-chloride', 30)])
    if (!two.ok || !one.ok) throw new Error('refused')
    expect(correctionWords(two.value)).toBe(
      'True humidity is 1.046 times what it reads − 3.1 points, between readings of 13.8 and 34.6 %.',
    )
    expect(correctionWords(one.value)).toBe(
      'Held against one salt it reads 3.1 points too dry there; elsewhere that is a guess.',
    )
    expect([beyondPointsWords(two.value, 20), beyondPointsWords(two.value, 10)]).toEqual([
      null,
      expect.stringMatching(/3.8 points beyond/),
    ])
  })

  test.each([
    [[], /No reading/],
    [
      [over('lithium-chloride', 13), over('magnesium-chloride', 34), over('sodium-chloride', 75)],
      /a line goes through two/,
    ],
    [[over('lithium-chloride', 130)], /no relative humidity/],
    [[over('potassium-acetate', 23, 5)], /potassium acetate holds at 5 °C is not known/],
    [[over('sodium-chloride', 75), over('potassium-chloride', 85)], /only 9.6 points apart/],
    [[over('lithium-chloride', 34), over('magnesium-chloride', 13)], /names swapped/],
    [[over('lithium-chloride', 20), over('magnesium-chloride', 21)], /broken, or a jar had not settled/],
  ] as const)('a refusal says what to do: %#', (readings, words) => {
    const made = correctionOverSalts(readings)
    expect(made.ok ? '' : made.problems.map(correctionRefusalWords).join(' ')).toMatch(words)
  })
})
