import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readCell } from '../../../lib/logger/read/number.ts'
import { asCelsius, unitOf } from '../../../lib/logger/read/units.ts'

const valueOf = (text: string) => {
  const read = readCell(text)
  return read.kind === 'number' ? read.value : read.kind
}

describe('a cell where a value is looked for', () => {
  test.each([
    ['21.5', 21.5],
    ['21,5', 21.5],
    ['-3', -3],
    ['+4.25', 4.25],
    ['.5', 0.5],
    ['21.', 21],
    ['- 3.5', -3.5],
    ['2.15E+01', 21.5],
    ['1e2', 100],
    ['1,234', 1.234],
    ['1,234.5', 1234.5],
    ['1.234,5', 1234.5],
    ["1'234.5", 1234.5],
    ['1 234,5', 1234.5],
    ['1.234.567', 1_234_567],
    ['45.2 %RH', 45.2],
    ['45%', 45],
    ['21,3 °C', 21.3],
    ['70°F', 70],
    ['1.2.3', 'text'],
    ['1,2,3', 'text'],
    ['12 34', 'text'],
    ['hello', 'text'],
    ['', 'empty'],
    ['=A1+2', 'formula'],
    ['45 hPa', 'unit-unknown'],
    ['--- %RH', 'gap'],
    ['E2', 'gap'],
    ['sensor', 'text'],
    ['lobby', 'text'],
    ['higher', 'text'],
  ])('%j', (text, expected) => {
    expect(valueOf(text)).toBe(expected)
  })

  test('is the number that was printed, with either mark', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -99_999, max: 99_999 }),
        fc.integer({ min: 0, max: 4 }),
        (count, decimals) => {
          const text = (count / 10 ** decimals).toFixed(decimals)
          expect(valueOf(text)).toBe(Number(text))
          expect(valueOf(text.replace('.', ','))).toBe(Number(text))
        },
      ),
    )
  })
})

describe('units', () => {
  test('are known however they are written', () => {
    expect(['°C', 'C', 'deg C', '[°C]', '(Celsius)', '℃'.normalize('NFKC')].map(unitOf)).toEqual(
      Array(6).fill('celsius'),
    )
    expect(['%', '% rF', '%RH', '(% HR)', 'percent'].map(unitOf)).toEqual(Array(5).fill('percent'))
    expect(['hPa', 'V', 'x'].map(unitOf)).toEqual([null, null, null])
  })

  test('of temperature meet where they must', () => {
    expect(asCelsius(-40, 'fahrenheit')).toBeCloseTo(-40, 12)
    expect(asCelsius(212, 'fahrenheit')).toBeCloseTo(100, 12)
    expect(asCelsius(273.15, 'kelvin')).toBe(0)
    expect(asCelsius(20, 'celsius')).toBe(20)
  })
})
