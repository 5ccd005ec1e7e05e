import { describe, expect } from 'vitest'
import { greenspanRhPercent, handbookRhPercent, type Salt } from '../../../lib/climate/fixed-points.ts'
import { printed } from '../printed.ts'
import { figure } from '../../said.ts'

const temperatures = [5, 10, 15, 20, 25] as const
const table: readonly (readonly [Salt, string])[] = [
  ['lithium-chloride', 'lithium chloride'],
  ['magnesium-chloride', 'magnesium chloride'],
  ['potassium-carbonate', 'potassium carbonate'],
  ['sodium-chloride', 'sodium chloride'],
  ['potassium-chloride', 'potassium chloride'],
  ['potassium-sulphate', 'potassium sulphate'],
]

describe('saturated salts', () => {
  for (const [salt, name] of table) {
    printed(
      {
        check: salt === 'sodium-chloride' ? 'physics 42' : `physics 42, ${name}`,
        work: 'padfield-conservation-physics',
        place: 'saturated salts',
        known: 'read',
        tolerance:
          'half of the last printed digit and a hundredth, for a print rounded twice; one slip of the print is named',
        says: `${name} at 5 to 25 °C`,
      },
      () => {
        const prints = temperatures.map((celsius) => figure(`salt-${salt}-${celsius}c`))
        const far = temperatures.filter(
          (celsius, at) => Math.abs(greenspanRhPercent(salt, celsius) - prints[at]!.value) > 0.0601,
        )
        // 75.7 at 20 °C stands between 75.6 and 75.3 where the curve falls.
        expect(far).toEqual(salt === 'sodium-chloride' ? [20] : [])
        if (salt === 'sodium-chloride') expect(prints[3]!.certainty).toBe('contested')
        return prints
      },
    )
  }

  printed(
    {
      check: 'physics 42, sodium bromide',
      work: 'padfield-conservation-physics',
      place: 'saturated salts',
      known: 'read',
      tolerance:
        '1.5 points at 5 °C down to 0.1 at 25: the handbook line is all we have of this salt, and it is flatter',
      says: 'sodium bromide at 5 to 25 °C',
    },
    () => {
      const prints = temperatures.map((celsius) => figure(`salt-sodium-bromide-${celsius}c`))
      const off = temperatures.map(
        (celsius, at) => prints[at]!.value - handbookRhPercent('sodium-bromide', celsius),
      )
      expect(off.every((points) => points > 0 && points < 1.5)).toBe(true)
      expect(off[4]).toBeLessThan(0.1)
      return prints
    },
  )

  for (const [salt, greenspan] of [
    ['lithium-chloride', 'physics 41'],
    ['magnesium-chloride', 'physics 41, magnesium chloride'],
    ['sodium-chloride', 'physics 41, sodium chloride'],
    ['potassium-sulphate', 'physics 41, potassium sulphate'],
  ] as const) {
    printed(
      {
        check: greenspan,
        work: 'greenspan-1977',
        place: null,
        known: 'memory',
        tolerance: '0.02: the remembered table is rounded otherwise than the remembered polynomial',
        says: `${salt.replace('-', ' ')} at 20 °C`,
      },
      () => {
        const print = figure(`salt-${salt}-greenspan-20c`)
        expect(Math.abs(greenspanRhPercent(salt, 20) - print.value)).toBeLessThan(0.02)
        return print
      },
    )
  }

  printed(
    {
      check: 'physics 43',
      work: 'crc-handbook',
      place: 'section 15, constant humidity solutions',
      known: 'read',
      tolerance: 'exact once rounded: the table prints whole per cent at 25 °C beside the two constants',
      says: 'seven salts at 25 °C by two constants',
    },
    () => {
      const names = [
        'lithium-chloride',
        'magnesium-chloride',
        'magnesium-nitrate',
        'sodium-bromide',
        'sodium-chloride',
        'potassium-chloride',
        'potassium-sulphate',
      ] as const
      const prints = names.map((salt) => figure(`salt-${salt}-handbook-25c`))
      expect(names.map((salt) => Math.round(handbookRhPercent(salt, 25)))).toEqual(
        prints.map(({ value }) => value),
      )
      return prints
    },
  )
})
