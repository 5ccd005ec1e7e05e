import { describe, expect, it } from 'vitest'
import { correctionThrough } from '../../lib/climate/fixed-points-correction.ts'
import { corrected } from '../../lib/logger/correction.ts'
import { every, hour } from './at-hand.ts'

/** physics.md, check value 44. */
describe('a correction through two salts', () => {
  const line = correctionThrough([
    { salt: 'lithium-chloride', trueRhPercent: 11.31, readRhPercent: 13.8 },
    { salt: 'magnesium-chloride', trueRhPercent: 33.07, readRhPercent: 34.6 },
  ])
  if (!line.ok) throw new Error('The two salts give no line.')

  it('is drawn over the whole series', () => {
    const { series, beyondPoints, impossible } = corrected(every(hour, [13.8, 15, 20, 34.6]), line.value)
    expect([...series.rhPercent].map((rh) => Math.round(rh * 1000) / 1000)).toEqual([
      11.31, 12.565, 17.796, 33.07,
    ])
    expect([beyondPoints, impossible]).toEqual([0, 0])
  })

  it('says what lies beyond the salts, and leaves what cannot be as it comes out', () => {
    const { series, beyondPoints, impossible } = corrected(
      every(hour, [2, 13.8, 50, 99, Number.NaN]),
      line.value,
    )
    expect([beyondPoints, impossible]).toEqual([3, 2])
    expect(series.rhPercent[0]).toBeLessThan(0)
    expect(series.rhPercent[4]).toBeNaN()
  })
})
