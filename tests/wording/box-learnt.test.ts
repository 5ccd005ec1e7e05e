import { describe, expect, it } from 'vitest'
import { littleWords, misfitWords, renewalBecauseWords } from '../../lib/wording/box-learnt.ts'
import { restsOnLines } from '../../lib/wording/box-outlook.ts'

const outlook = {
  airChangesPerDay: { low: 0.31, nominal: 0.8, high: 2.04 },
  airChangesFrom: 'assumed' as const,
  surroundings: { from: 'logger' as const },
  nowRhPercent: { p10: 8, p50: 10, p90: 13 },
  limitRhPercent: 15,
  renewOn: null,
  departedSince: null,
  modelDoubtful: false,
}

describe('what a box told of itself, in words', () => {
  it('says why its readings tell little, beside what the leak rests on', () => {
    const lines = restsOnLines({ ...outlook, littleBecause: 'below-range' })
    expect(lines[0]).toContain('0.31 to 2 times a day')
    expect(lines).toContain(littleWords['below-range'])
    expect(restsOnLines({ ...outlook, littleBecause: null })).toHaveLength(1)
  })

  it('says what set the day of the renewal', () => {
    expect(renewalBecauseWords({ because: 'one-in-ten', guardRhPercent: null })).toContain(
      'one such box in ten',
    )
    expect(renewalBecauseWords({ because: 'sensor-guard', guardRhPercent: 3 })).toContain(
      'within 3 % of its limit',
    )
    expect(renewalBecauseWords({ because: null, guardRhPercent: null })).toBeNull()
    const lines = restsOnLines({ ...outlook, renewalBecause: { because: 'over-already', guardRhPercent: 3 } })
    expect(lines.at(-1)).toMatch(/^Renewal of the gel: .*over its limit/)
  })

  it('keeps to plain words', () => {
    const all = [...Object.values(littleWords), ...Object.values(misfitWords)].join(' ')
    expect(all).not.toMatch(/\bp\d\d\b|posterior|percentile|sigma|bayes|probab|model/i)
  })
})
