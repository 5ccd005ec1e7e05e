import { describe, expect, test } from 'vitest'
import { hiddenShare, lostBelowUm } from '../../lib/evidence/depth.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { baseOf, skin } from './small-base.ts'

/** One element that weakens its line by a coefficient chosen to be easy: 100 cm²/g in a crust of 4 g/cm³. */
const easy = {
  ...baseOf(skin),
  elements: {
    sn: {
      id: 'sn',
      symbol: 'Sn',
      label: 'Tin',
      densityGPerCm3: 7,
      linesKev: { La1: 3.4 },
      edgesKev: {},
      sources: [],
      attenuation: [
        [1, 100],
        [10, 100],
      ] as const,
    },
  },
  matrices: {
    crust: { id: 'crust', label: 'Crust', densityGPerCm3: 4, parts: [['Sn', 1] as const], sources: [] },
  },
}
const through = (from: number, to: number) => ({
  line: 'Sn La1',
  through: 'crust',
  crustUm: [from, to] as const,
})

describe('a line through a crust', () => {
  test('is lost where less than a tenth of it comes out at 45 degrees', () => {
    // ln 10 · sin 45° / (100 · 4) cm = 40.7 µm
    expect(lostBelowUm(through(1, 2), easy)).toBeCloseTo(40.7, 1)
  })

  test('is lost in the share of crusts that are thicker, thin and thick alike by ratio', () => {
    expect(hiddenShare(through(4.07, 407), easy)).toBeCloseTo(0.5, 3)
    expect(hiddenShare(through(40.7, 407), easy)).toBeCloseTo(1, 3)
    expect(hiddenShare(through(1, 20), easy)).toBe(0)
    expect(hiddenShare(through(50, 500), easy)).toBe(1)
    expect(hiddenShare(through(50, 50), easy)).toBe(1)
    expect(hiddenShare(through(30, 30), easy)).toBe(0)
  })

  test('of which nothing is known is a fault and no number', () => {
    expect(() => hiddenShare({ ...through(1, 2), through: 'jelly' }, easy)).toThrow('jelly')
    expect(() => hiddenShare({ ...through(1, 2), line: 'Xx Ka1' }, easy)).toThrow('Xx Ka1')
  })

  test('can be reckoned for every failure by depth of the knowledge', () => {
    const depths = Object.values(knowledge.matters).flatMap(({ groups }) =>
      groups.flatMap(({ failures }) => failures.flatMap(({ how }) => ('depth' in how ? [how.depth] : []))),
    )
    for (const depth of depths) expect(hiddenShare(depth, knowledge)).toBeGreaterThanOrEqual(0)
  })
})
