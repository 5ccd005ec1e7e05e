import { describe, expect } from 'vitest'
import { massAttenuationCm2PerG, mixedAttenuationCm2PerG } from '../../../lib/matter/attenuation.ts'
import { escapeDepthUm, halfValueLayerMm, transmission } from '../../../lib/matter/transmission.ts'
import { knowledge } from '../../knowledge-at-hand.ts'
import { absorber, lineKev } from '../../matter/absorber.ts'
import { printed } from '../printed.ts'

const table = { work: 'hubbell-seltzer-1995', place: 'table 3', known: 'second-hand' } as const
const booklet = { work: 'x-ray-data-booklet-2009', place: 'line energies', known: 'second-hand' } as const
const element = (symbol: string) => knowledge.elements[symbol.toLowerCase()]!
const lastDigit = 'one in the last digit: worked out from the printed coefficients'

describe('what comes through metal', () => {
  printed(
    {
      check: 'physics 55',
      ...table,
      tolerance: 'exact: a printed point of the table',
      says: 'lead at 80 and 100 keV: 2.419 and 5.549 cm²/g, more opaque above its edge',
    },
    () => {
      expect(massAttenuationCm2PerG(element('Pb').attenuation, 80)).toBe(2.419)
      expect(massAttenuationCm2PerG(element('Pb').attenuation, 100)).toBe(5.549)
      return element('Pb')
    },
  )

  for (const [symbol, kev, mm] of [
    ['Fe', 80, 1.479],
    ['Cu', 100, 1.688],
    ['Pb', 150, 0.303],
    ['Ag', 80, 0.249],
  ] as const) {
    printed(
      { check: `physics 56, ${symbol}`, ...table, tolerance: lastDigit, says: `${mm} mm halve ${kev} keV` },
      () => {
        const { mixture, density } = absorber(symbol)
        expect(halfValueLayerMm(mixedAttenuationCm2PerG(mixture, kev), density)).toBeCloseTo(mm, 3)
        return element(symbol)
      },
    )
  }

  for (const [symbol, mm, kev, share] of [
    ['Fe', 5, 80, 0.09601],
    ['Cu', 3, 80, 0.12861],
    ['Pb', 1, 100, 0.00184],
    ['Fe', 10, 100, 0.0536],
  ] as const) {
    printed(
      {
        check: `physics 57, ${symbol} ${mm} mm`,
        ...table,
        tolerance: lastDigit,
        says: `lets ${share} of ${kev} keV through`,
      },
      () => {
        const { mixture, density } = absorber(symbol)
        const through = transmission(mixedAttenuationCm2PerG(mixture, kev), density, mm * 1000, 90)
        expect(Math.abs(through - share)).toBeLessThan(5e-5)
        return element(symbol)
      },
    )
  }

  for (const [id, equivalent] of [
    ['Cu', 1.459],
    ['goethite', 0.398],
    ['malachite', 0.436],
    ['bronze', 1.86],
  ] as const) {
    printed(
      {
        check: `physics 58, ${id}`,
        ...table,
        tolerance: lastDigit,
        says: `a millimetre at 80 keV counts ${equivalent} mm of iron`,
      },
      () => {
        const linear = (name: string) => {
          const { mixture, density } = absorber(name)
          return mixedAttenuationCm2PerG(mixture, 80) * density
        }
        expect(Math.abs(linear(id) / linear('Fe') - equivalent)).toBeLessThan(
          equivalent > 1.5 ? 0.005 : 0.0006,
        )
        return element('Fe')
      },
    )
  }
})

describe('how deep a line comes from', () => {
  for (const [matrix, symbol, line, um] of [
    ['Cu', 'Cu', 'Ka1', 35.2],
    ['Cu', 'S', 'Ka1', 1.2],
    ['Cu', 'Sn', 'Ka1', 103.2],
    ['bronze', 'Sn', 'La1', 3.6],
    ['malachite', 'Ag', 'La1', 7.8],
    ['malachite', 'Cu', 'Ka1', 119],
    ['Fe', 'Pb', 'La1', 14.0],
    ['Au', 'Cu', 'Ka1', 4.1],
    ['Ag', 'Ag', 'Ka1', 111],
  ] as const) {
    printed(
      {
        check: `physics 62, ${symbol} ${line} in ${matrix}`,
        ...table,
        tolerance: 'one in the last digit: interpolated between printed energies',
        says: `nine tenths of it from ${um} µm`,
      },
      () => {
        const { mixture, density } = absorber(matrix)
        const depth = escapeDepthUm(0.9, mixedAttenuationCm2PerG(mixture, lineKev(symbol, line)), density, 45)
        expect(Math.abs(depth - um)).toBeLessThan(um > 110 ? 0.6 : 0.11)
        return element(symbol === 'S' ? 'Cu' : symbol)
      },
    )
  }

  for (const [check, symbol, um, share] of [
    ['physics 63', 'Sn', 5, 0.2803],
    ['physics 63', 'Au', 2, 0.3278],
    ['open texts 24', 'Au', 0.1, 0.946],
    ['open texts 24', 'Au', 10, 0.0038],
    ['open texts 25', 'Sn', 0.5, 0.88],
    ['open texts 25', 'Sn', 2, 0.601],
  ] as const) {
    printed(
      {
        check: `${check}, ${um} µm of ${symbol}`,
        ...table,
        tolerance: lastDigit,
        says: `a skin lets ${share} of the copper line out at 45°`,
      },
      () => {
        const { mixture, density } = absorber(symbol)
        const mu = mixedAttenuationCm2PerG(mixture, lineKev('Cu', 'Ka1'))
        expect(Math.abs(transmission(mu, density, um, 45) - share)).toBeLessThan(
          share > 0.7 ? 6e-4 : 1e-4 + share * 1e-3,
        )
        return element(symbol)
      },
    )
  }
})

describe('lines that hide each other', () => {
  printed(
    {
      check: 'physics 60',
      ...booklet,
      tolerance: 'exact: printed energies',
      says: 'the arsenic K and lead L lines lie 8 eV apart',
    },
    () => {
      expect(lineKev('As', 'Ka1')).toBe(10.5437)
      expect(lineKev('Pb', 'La1')).toBe(10.5515)
      return [element('As'), element('Pb')]
    },
  )
})
