import { describe, expect, test } from 'vitest'
import {
  beyondPointsPercent,
  correctedRhPercent,
  correctionOverSalts,
  correctionThrough,
  type SaltReading,
} from '../../lib/climate/fixed-points-correction.ts'
import { fixedPoint, greenspanRhPercent, handbookRhPercent, salts } from '../../lib/climate/fixed-points.ts'

const over = (salt: SaltReading['salt'], temperatureC: number, readRhPercent: number): SaltReading => ({
  salt,
  temperatureC,
  readRhPercent,
})

describe('what salts hold the air at', () => {
  // Worked out once from the remembered coefficients, so that a slip of the pen is seen.
  test.each([
    ['lithium-chloride', [11.27, 11.29, 11.31, 11.31, 11.3, 11.29]],
    ['magnesium-chloride', [33.6, 33.48, 33.3, 33.07, 32.79, 32.45]],
    ['potassium-carbonate', [43.14, 43.15, 43.15, 43.16, 43.17, 43.18]],
    ['magnesium-nitrate', [58.86, 57.37, 55.88, 54.39, 52.9, 51.41]],
    ['sodium-chloride', [75.65, 75.68, 75.61, 75.48, 75.3, 75.09]],
    ['potassium-chloride', [87.67, 86.78, 85.92, 85.11, 84.35, 83.63]],
    ['potassium-sulphate', [98.48, 98.19, 97.89, 97.6, 97.3, 97.01]],
  ] as const)('pinned, Greenspan: %s at 5 to 30 °C', (salt, percent) => {
    const held = [5, 10, 15, 20, 25, 30].map((celsius) => greenspanRhPercent(salt, celsius))
    held.forEach((value, at) => expect(Math.abs(value - percent[at]!)).toBeLessThan(0.006))
  })

  test('beyond the range of a salt, or without its line, there is no number', () => {
    expect(greenspanRhPercent('potassium-acetate', 9.9)).toBeNaN()
    expect(greenspanRhPercent('potassium-carbonate', 30.1)).toBeNaN()
    expect(greenspanRhPercent('sodium-bromide', 20)).toBeNaN()
    expect([
      handbookRhPercent('lithium-chloride', 19.9),
      handbookRhPercent('potassium-carbonate', 20),
    ]).toEqual([NaN, NaN])
    expect(fixedPoint('potassium-acetate', 40)).toBeNull()
  })

  test('both sources are told, with how far they lie apart', () => {
    expect(fixedPoint('lithium-chloride', 10)).toMatchObject({
      from: 'greenspan-1977',
      handbookPercent: null,
      apartPercent: null,
    })
    const sodium = fixedPoint('sodium-chloride', 20)!
    expect(sodium.rhPercent).toBe(sodium.greenspanPercent)
    expect(sodium.apartPercent).toBeCloseTo(0.12, 2)
    expect(fixedPoint('sodium-bromide', 20)).toMatchObject({ from: 'crc-handbook', greenspanPercent: null })
    expect(fixedPoint('magnesium-nitrate', 5)!.apartPercent).toBeGreaterThan(3)
  })

  test('the salts stand in one order of humidity at room temperature', () => {
    const held = salts.map((salt) => fixedPoint(salt, 20)!.rhPercent)
    expect(held).toEqual(held.toSorted((a, b) => a - b))
  })
})

describe('a correction through salts', () => {
  test('computed by us: 13.8 over 11.31 and 34.6 over 33.07; 15 reads true 12.565, 20 reads true 17.796', () => {
    const made = correctionThrough([
      { salt: 'lithium-chloride', trueRhPercent: 11.31, readRhPercent: 13.8 },
      { salt: 'magnesium-chloride', trueRhPercent: 33.07, readRhPercent: 34.6 },
    ])
    if (!made.ok) throw new Error('refused')
    expect(made.value.slope).toBeCloseTo(1.046154, 6)
    expect(made.value.offsetRhPercent).toBeCloseTo(-3.126923, 6)
    expect(correctedRhPercent(made.value, 15)).toBeCloseTo(12.565, 3)
    expect(correctedRhPercent(made.value, 20)).toBeCloseTo(17.796, 3)
  })

  test('from the salts themselves it is the same, in whatever order they are given', () => {
    const readings = [over('lithium-chloride', 20, 13.8), over('magnesium-chloride', 20, 34.6)]
    const made = correctionOverSalts(readings)
    expect(made).toEqual(correctionOverSalts(readings.toReversed()))
    if (!made.ok) throw new Error('refused')
    for (const { salt, readRhPercent } of readings)
      expect(correctedRhPercent(made.value, readRhPercent)).toBeCloseTo(greenspanRhPercent(salt, 20), 9)
    expect([10, 20, 40].map((read) => beyondPointsPercent(made.value, read))).toEqual([
      expect.closeTo(3.8, 9),
      0,
      expect.closeTo(5.4, 9),
    ])
  })

  test('one salt shifts, and says that it knows nothing elsewhere', () => {
    const made = correctionOverSalts([over('magnesium-chloride', 20, 35)])
    if (!made.ok) throw new Error('refused')
    expect(made.value).toMatchObject({ slope: 1, fromRhPercent: 35, toRhPercent: 35 })
    expect(made.value.offsetRhPercent).toBeCloseTo(-1.93, 2)
    expect(beyondPointsPercent(made.value, 15)).toBe(20)
  })

  const refusals = (...readings: readonly SaltReading[]) => {
    const made = correctionOverSalts(readings)
    return made.ok ? [] : made.problems.map(({ code }) => code)
  }

  test.each([
    ['nothing read', [], ['no-readings']],
    [
      'three salts',
      [over('lithium-chloride', 20, 13), over('magnesium-chloride', 20, 34), over('sodium-chloride', 20, 75)],
      ['too-many-readings'],
    ],
    [
      'one salt twice',
      [over('lithium-chloride', 20, 13), over('lithium-chloride', 25, 14)],
      ['points-too-close'],
    ],
    [
      'salts 9.8 points apart',
      [over('sodium-chloride', 20, 75), over('potassium-chloride', 20, 85)],
      ['points-too-close'],
    ],
    ['jars swapped', [over('lithium-chloride', 20, 34), over('magnesium-chloride', 20, 13)], ['wrong-order']],
    [
      'both read alike',
      [over('lithium-chloride', 20, 20), over('magnesium-chloride', 20, 20)],
      ['wrong-order'],
    ],
    [
      'a dead sensor',
      [over('lithium-chloride', 20, 20), over('magnesium-chloride', 20, 22)],
      ['slope-beyond-belief'],
    ],
    [
      'two faults at once',
      [over('potassium-acetate', 5, 23), over('magnesium-chloride', 20, 120)],
      ['salt-out-of-range', 'not-a-humidity'],
    ],
    ['no number', [over('lithium-chloride', 20, Number.NaN)], ['not-a-humidity']],
  ] as const)('is refused for %s', (_, readings, codes) => {
    expect(refusals(...readings)).toEqual(codes)
  })

  test('10 points apart is enough, just under is not', () => {
    const points = (apart: number) => [
      { salt: 'a', trueRhPercent: 20, readRhPercent: 21 },
      { salt: 'b', trueRhPercent: 20 + apart, readRhPercent: 32 },
    ]
    expect(correctionThrough(points(10)).ok).toBe(true)
    expect(correctionThrough(points(9.999)).ok).toBe(false)
  })
})
