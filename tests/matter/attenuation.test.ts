import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  massAttenuationCm2PerG,
  mixedAttenuationCm2PerG,
  type AttenuationTable,
} from '../../lib/matter/attenuation.ts'
import {
  escapeDepthUm,
  excitedDepthUm,
  halfValueLayerMm,
  transmission,
} from '../../lib/matter/transmission.ts'
import { lineWidthKev, linesApart } from '../../lib/matter/line-overlap.ts'
import { lineKev } from './absorber.ts'

const stepped: AttenuationTable = [
  [2, 800],
  [4, 100],
  [9, 10],
  [9, 80],
  [20, 8],
]

describe('attenuation between printed points', () => {
  test('is the printed value at a point, and at an edge the one above it', () => {
    expect(massAttenuationCm2PerG(stepped, 4)).toBe(100)
    expect(massAttenuationCm2PerG(stepped, 9)).toBe(80)
    expect(massAttenuationCm2PerG(stepped, 20)).toBe(8)
    expect(massAttenuationCm2PerG(stepped, 2)).toBe(800)
  })

  test('falls as a power between points and never across an edge', () => {
    // 800 at 2 and 100 at 4: inversely as the third power.
    expect(massAttenuationCm2PerG(stepped, 3)).toBeCloseTo(800 / 1.5 ** 3, 9)
    expect(massAttenuationCm2PerG(stepped, 8.999)).toBeLessThan(10.1)
  })

  test('holds nowhere else', () => {
    for (const kev of [1.9, 20.1, Number.NaN, -3]) expect(massAttenuationCm2PerG(stepped, kev)).toBeNaN()
    expect(massAttenuationCm2PerG([], 4)).toBeNaN()
    const partly: AttenuationTable = [
      [5, 1],
      [6, 1],
    ]
    const mixture = [
      { massFraction: 0.5, table: stepped },
      { massFraction: 0.5, table: partly },
    ]
    expect(mixedAttenuationCm2PerG(mixture, 8)).toBeNaN()
    expect(mixedAttenuationCm2PerG(mixture, 5)).toBeGreaterThan(0)
  })
})

describe('ways through a layer', () => {
  const cm2PerG = fc.double({ min: 0.01, max: 5000, noNaN: true })
  const density = fc.double({ min: 0.5, max: 20, noNaN: true })
  const angle = fc.double({ min: 5, max: 90, noNaN: true })
  const share = fc.double({ min: 0.01, max: 0.99, noNaN: true })

  test('what comes out of the information depth is the share it was asked for', () => {
    fc.assert(
      fc.property(cm2PerG, density, angle, share, (mu, rho, degrees, part) => {
        const depth = escapeDepthUm(part, mu, rho, degrees)
        expect(transmission(mu, rho, depth, degrees)).toBeCloseTo(1 - part, 9)
      }),
    )
  })

  test('weakening on the way in makes it shallower, never deeper', () => {
    fc.assert(
      fc.property(cm2PerG, cm2PerG, density, angle, (muIn, muOut, rho, degrees) => {
        const out = { cm2PerG: muOut, angleDeg: degrees }
        const both = excitedDepthUm(0.9, { cm2PerG: muIn, angleDeg: degrees }, out, rho)
        expect(both).toBeLessThan(escapeDepthUm(0.9, muOut, rho, degrees))
      }),
    )
  })

  test('two layers let through the product, half a half-value layer twice a half', () => {
    const mu = 0.6
    expect(transmission(mu, 7.9, 300, 90)).toBeCloseTo(
      transmission(mu, 7.9, 100, 90) * transmission(mu, 7.9, 200, 90),
      12,
    )
    expect(transmission(mu, 7.9, halfValueLayerMm(mu, 7.9) * 1000, 90)).toBeCloseTo(0.5, 12)
  })

  test('says nothing where it cannot hold', () => {
    expect(transmission(1, 1, -1, 45)).toBeNaN()
    expect(transmission(1, 1, 1, 0)).toBeNaN()
    expect(transmission(1, 1, 1, 91)).toBeNaN()
    expect(escapeDepthUm(1, 1, 1, 45)).toBeNaN()
    expect(escapeDepthUm(0.5, 1, 1, -45)).toBeNaN()
  })
})

describe('lines beside each other', () => {
  test('the same line is no distance away, and order does not matter', () => {
    expect(linesApart(8, 8, 0.145)).toBe(0)
    expect(linesApart(8, 9, 0.145)).toBe(linesApart(9, 8, 0.145))
    expect(lineWidthKev(20, 0.145)).toBeGreaterThan(lineWidthKev(8, 0.145))
  })
})

describe('lines of metals beside each other, in a detector of 145 eV', () => {
  test.each([
    ['As', 'Ka1', 'Pb', 'La1', 0.04],
    ['S', 'Ka1', 'Pb', 'Ma', 0.33],
    ['Hg', 'La1', 'Au', 'La1', 1.58],
    ['Sn', 'Lb1', 'Ca', 'Ka1', 0.23],
    ['Au', 'La1', 'Zn', 'Kb1', 0.82],
  ])('%s %s and %s %s lie %d widths apart', (one, line, other, otherLine, widths) => {
    expect(linesApart(lineKev(one, line), lineKev(other, otherLine), 0.145)).toBeCloseTo(widths, 1)
  })
})
