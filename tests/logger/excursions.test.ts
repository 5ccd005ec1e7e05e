import { describe, expect, it } from 'vitest'
import { excursionsOf } from '../../lib/logger/excursions.ts'
import { at, error, every, hour, start, workedDay } from './at-hand.ts'

describe('excursions', () => {
  it('begin with the first reading beyond the limit and end with the first one back', () => {
    expect(excursionsOf(every(hour, workedDay), { aboveRhPercent: 15, error })).toMatchObject([
      {
        kind: 'above',
        fromMs: start + 7 * hour,
        toMs: start + 18 * hour,
        worstRhPercent: 27,
        worstAtMs: start + 12 * hour,
        doseRhPercentHours: 66,
        readings: 11,
        brokenOff: false,
      },
    ])
  })

  it('say how sure it is that they were real', () => {
    const [barely] = excursionsOf(every(hour, [10, 16, 10]), { aboveRhPercent: 15, error })
    const [surely] = excursionsOf(every(hour, [10, 27, 10]), { aboveRhPercent: 15, error })
    expect(barely!.chanceReal).toBeCloseTo(0.7475, 4)
    expect(surely!.chanceReal).toBeGreaterThan(0.999999)
  })

  it('below a limit are excursions too, with the lowest as the worst', () => {
    expect(excursionsOf(every(hour, [50, 44, 41, 44, 50]), { belowRhPercent: 45, error })).toMatchObject([
      { kind: 'below', worstRhPercent: 41, doseRhPercentHours: 6, worstAtMs: start + 2 * hour },
    ])
  })

  it('end at a gap, for nobody knows what went on there', () => {
    const broken = at(
      [0, 1, 2, 3, 13, 14, 15].map((hours) => start + hours * hour),
      [10, 20, 20, 20, 20, 20, 10],
    )
    const found = excursionsOf(broken, { aboveRhPercent: 15, error })
    expect(found.map(({ fromMs, toMs }) => [(fromMs - start) / hour, (toMs - start) / hour])).toEqual([
      [1, 4],
      [13, 15],
    ])
    expect(found.map(({ brokenOff }) => brokenOff)).toEqual([true, false])
    expect(excursionsOf(broken, { aboveRhPercent: 15, error, longestStepMs: 10 * hour })).toHaveLength(1)
  })

  it('still open at the end last as long as the last reading stands', () => {
    expect(excursionsOf(every(hour, [10, 20]), { aboveRhPercent: 15, error })).toMatchObject([
      { toMs: start + 2 * hour, brokenOff: true },
    ])
  })

  it('on both sides come in order of time', () => {
    const both = excursionsOf(every(hour, [50, 40, 50, 60, 50, 40, 50]), {
      aboveRhPercent: 55,
      belowRhPercent: 45,
      error,
    })
    expect(both.map(({ kind }) => kind)).toEqual(['below', 'above', 'below'])
  })

  it('are not seen where the logger cannot read', () => {
    const flat = every(hour, [15, 15, 16, 15])
    expect(excursionsOf(flat, { aboveRhPercent: 12, error })).toHaveLength(1)
    expect(excursionsOf(flat, { aboveRhPercent: 12, error, floorRhPercent: 15 })).toMatchObject([
      { readings: 1, worstRhPercent: 16, doseRhPercentHours: 4 },
    ])
  })

  it('there are none in nothing, nor where no limit is given', () => {
    expect(excursionsOf(every(hour, []), { aboveRhPercent: 15, error })).toEqual([])
    expect(excursionsOf(every(hour, [99]), { error })).toEqual([])
  })
})
