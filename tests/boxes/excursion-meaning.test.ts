import { describe, expect, it } from 'vitest'
import {
  excursionMeaning,
  type ExcursionMeaning,
  type MeaningOptions,
} from '../../lib/boxes/excursion-meaning.ts'
import type { Plan } from '../../lib/engine/plan.ts'
import type { Excursion } from '../../lib/logger/excursions.ts'
import { chanceOver, chanceUnder } from '../../lib/logger/sensor-error.ts'
import { error, hour, start } from '../logger/at-hand.ts'
import { planOf } from '../record-at-hand.ts'

const nail = planOf(
  { find_number: 'TW-1', state_now: 'dry', object_kind: 'nail' },
  { material: 'iron', seen: ['bright-orange-spots'] },
)
const knife = planOf(
  { find_number: 'TW-2', state_now: 'dry' },
  { material: 'iron' },
  { material: 'wood', role: 'handle' },
)
const shoe = planOf({ find_number: 'TW-3', state_now: 'dry' }, { material: 'leather' })
const pin = planOf(
  { find_number: 'TW-4', state_now: 'dry' },
  { material: 'copper-alloy', seen: ['compact-green'] },
)
const post = planOf({ find_number: 'TW-5', state_now: 'wet' }, { material: 'wood' })

const options: MeaningOptions = { error, perhapsChance: 0.05 }

function excursion(
  kind: Excursion['kind'],
  worstRhPercent: number,
  hours = 5,
  limitRhPercent = 12,
): Excursion {
  return {
    kind,
    limitRhPercent,
    fromMs: start,
    toMs: start + hours * hour,
    worstRhPercent,
    worstAtMs: start,
    doseRhPercentHours: 1,
    readings: hours,
    chanceReal: (kind === 'above' ? chanceOver : chanceUnder)(worstRhPercent, limitRhPercent, error),
    brokenOff: false,
  }
}
const above = (plan: Plan, worst: number, hours?: number) =>
  excursionMeaning(plan, excursion('above', worst, hours), options)
const below = (plan: Plan, worst: number, hours?: number) =>
  excursionMeaning(plan, excursion('below', worst, hours, 40), options)
const because = ({ reasons }: ExcursionMeaning) => reasons.map((reason) => reason.because)

describe('iron in a dry box', () => {
  it('is noted above its limit, where no level of its plan was passed', () => {
    const meaning = above(nail, 12.4)
    expect(meaning.answer).toBe('noted')
    expect(because(meaning)).toContain('limit')
  })

  it('is looked at soon where the gel is due, and now where rust runs fast', () => {
    expect(above(nail, 16)).toMatchObject({ answer: 'look-soon', withinDays: 30 })
    expect(above(nail, 31)).toMatchObject({ answer: 'look-soon', withinDays: 7 })
    expect(above(nail, 51)).toMatchObject({ answer: 'look-now', withinDays: 1 })
  })

  it('says which statement each rests on, with rule and sources', () => {
    const [gravest] = above(nail, 51).reasons
    expect(gravest).toMatchObject({ because: 'act', levelRhPercent: 50 })
    expect(gravest!.says[0]!.rule).toMatch(/^storage-act\//)
    expect(gravest!.says[0]!.sources.length).toBeGreaterThan(0)
  })

  it('never reads a higher worst level as milder, nor a longer time', () => {
    const ranks = ['none', 'noted', 'look-soon', 'look-now']
    let last = 0
    for (let worst = 5; worst <= 95; worst += 1) {
      const rank = ranks.indexOf(above(nail, worst).answer)
      expect(rank).toBeGreaterThanOrEqual(last)
      expect(ranks.indexOf(above(nail, worst, 24 * 400).answer)).toBeGreaterThanOrEqual(rank)
      last = rank
    }
    expect(last).toBe(3)
  })

  it('is late where a level was passed for longer than the plan gives', () => {
    const meaning = above(nail, 31, 24 * 8)
    expect(meaning.answer).toBe('look-now')
    expect(because(meaning)).toContain('act-overdue')
    expect(because(above(nail, 31, 24 * 7))).not.toContain('act-overdue')
  })

  it('counts only the hours beyond the level, where they are known', () => {
    const meaning = excursionMeaning(nail, excursion('above', 31, 24 * 20), {
      ...options,
      hoursBeyond: (level) => (level >= 30 ? 2 : 24 * 20),
    })
    expect(because(meaning)).not.toContain('act-overdue')
    expect(meaning.answer).toBe('look-soon')
  })

  it('is looked at soon where its limit was passed for longer than it is left alone', () => {
    const days = nail.inspection.everyDays
    expect(above(nail, 12.4, 24 * days)).toMatchObject({ answer: 'noted' })
    const longer = above(nail, 12.4, 24 * days + 1)
    expect(longer.answer).toBe('look-soon')
    expect(because(longer)).toContain('limit-long')
  })

  it('takes a level that the sensor may have missed for perhaps passed, a degree milder', () => {
    // 29 read with ±3 leaves one chance in four that it was over 30.
    const meaning = above(nail, 29)
    const perhaps = meaning.reasons.find((reason) => reason.because === 'act-perhaps')
    expect(perhaps).toMatchObject({ levelRhPercent: 30, answer: 'noted' })
    expect(perhaps!.chance).toBeCloseTo(0.2525, 3)
    expect(because(above(nail, 49))).toContain('act-perhaps')
    expect(above(nail, 49).reasons.find((reason) => reason.levelRhPercent === 50)!.answer).toBe('look-soon')
    // 44 read is one chance in thirty thousand for 50.
    expect(above(nail, 44).reasons.every((reason) => reason.levelRhPercent !== 50)).toBe(true)
  })

  it('minds no dryness', () => {
    expect(below(nail, 3)).toMatchObject({ answer: 'none', reasons: [] })
  })
})

describe('other finds of the same box', () => {
  it('a pin of bronze rests through what is too damp for iron', () => {
    expect(above(pin, 20)).toMatchObject({ answer: 'none', reasons: [] })
    expect(above(pin, 47).answer).toBe('look-now')
  })

  it('leather is held to both ends', () => {
    expect(below(shoe, 29)).toMatchObject({ answer: 'look-now', withinDays: 1 })
    expect(below(shoe, 44).answer).toBe('noted')
    expect(above(shoe, 76).answer).toBe('look-now')
    // Within the limits, outside of what would be better for dyed leather.
    expect(because(above(shoe, 60))).toEqual(['preference'])
  })

  it('a find whose parts disagree is held to the band it waits in, and a conservator decides', () => {
    expect(knife.storage.interim).not.toBeNull()
    const meaning = above(knife, 41.5)
    expect(because(meaning)).toContain('holding-band')
    expect(meaning).toMatchObject({ answer: 'look-soon', decidedBy: 'conservator' })
    expect(because(above(knife, 35))).not.toContain('limit')
    expect(below(knife, 25).answer).toBe('look-now')
  })

  it('what lies in water fears dry air only', () => {
    expect(above(post, 99)).toMatchObject({ answer: 'none', reasons: [] })
    expect(because(below(post, 30))).toEqual(['kept-wet'])
  })
})

describe('what lets nobody rest', () => {
  const resting = (basis: Plan['storage']['components'][number]['basis'], max: number): Plan => ({
    ...pin,
    storage: {
      ...pin.storage,
      act: [],
      rhPercent: { min: 0, max },
      components: [{ component: 'body', limit: { min: 0, max }, preference: null, basis }],
    },
  })
  const basis = pin.storage.components[0]!.basis

  it('a limit from memory alone', () => {
    const remembered = basis.map((one) => ({
      ...one,
      sources: one.sources.map((source) => ({ ...source, known: 'memory' as const })),
    }))
    expect(because(above(resting(remembered, 55), 20))).toEqual(['only-from-memory'])
    expect(above(resting(remembered, 55), 20).answer).toBe('noted')
    expect(above(resting(basis, 55), 20).answer).toBe('none')
  })

  it('a part of which nothing is known', () => {
    const meaning = above(resting([], 100), 20)
    expect([meaning.answer, because(meaning)]).toEqual(['noted', ['no-limit-known']])
  })

  it('a limit with no level that says when to act', () => {
    expect(because(above(resting(basis, 55), 57))).toEqual(['limit-without-act'])
    expect(above(resting(basis, 55), 57).answer).toBe('look-soon')
  })

  it('a stop, while it stands, is said with the answer', () => {
    const grenade = planOf(
      { find_number: 'TW-6', state_now: 'dry', notes: 'perhaps a grenade' },
      { material: 'iron' },
    )
    expect(grenade.cautions.some(({ level }) => level === 'stop')).toBe(true)
    expect(above(grenade, 60).stopped).toBe(true)
    expect(above(nail, 60).stopped).toBe(false)
  })
})
