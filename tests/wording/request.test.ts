import { describe, expect, test } from 'vitest'
import { gainOf } from '../../lib/wording/gain.ts'
import { planChangesWords, planChangeWords } from '../../lib/wording/plan-change.ts'
import { answerTables, timeWords } from '../../lib/wording/request.ts'
import { interpretation, interpretations, knowledge, request } from '../app/evidence/fixture.ts'

describe('how much of a question is settled', () => {
  const even = [interpretation('tinning', 0.5, [0.4, 0.6]), interpretation('silvering', 0.5, [0.4, 0.6])]

  test.each([
    [0.9, 'most'],
    [0.5, 'most'],
    [0.3, 'good-part'],
    [0.1, 'little'],
    [0.01, 'none'],
  ] as const)('%d of one bit that is open', (gainBits, words) => {
    expect(gainOf({ ...request, gainBits }, even)).toBe(words)
  })
  test('counts only the matters it is asked about', () => {
    const elsewhere = even.map((one) => ({ ...one, component: 'pin' }))
    expect(gainOf({ ...request, gainBits: 0.5 }, [...even, ...elsewhere])).toBe('most')
  })
  test('says nothing where no matter hangs on it, and none where nothing is open', () => {
    expect(gainOf({ ...request, gainBits: null }, even)).toBeNull()
    expect(gainOf({ ...request, gainBits: 0 }, [interpretation('tinning', 1, [1, 1])])).toBe('none')
  })
})

describe('what would change in the plan', () => {
  test('is said as the plan would say it', () => {
    const change = { code: '', text: 'Keep it from copper.' }
    expect(
      planChangesWords([
        { ...change, part: 'keep', code: 'wet' },
        { ...change, part: 'storage', rhPercent: { min: 0, max: 12 } },
        { ...change, part: 'urgency', code: 'days' },
        { ...change, part: 'packing' },
        { ...change, part: 'handling' },
      ]),
    ).toEqual([
      'Keep it wet.',
      'Relative humidity: 12 % or below.',
      'See to it: days.',
      'Keep it from copper.',
    ])
  })
  test('names a humidity that no one figure can give, or that falls away', () => {
    const storage = { part: 'storage', code: 'rh-percent', text: '' } as const
    expect(planChangeWords({ ...storage, rhPercent: null })).toBe('No one humidity for all of it.')
    expect(planChangeWords({ ...storage, rhPercent: { min: 0, max: 100 } })).toBe(
      'Nothing would limit its humidity.',
    )
  })
})

describe('the answers of a request', () => {
  test('stand group by group, those of a group that the knowledge has no more by themselves', () => {
    const [shown, rest] = request.means
    const foreign = { ...shown!, group: 'what-no-matter-has-any-more' }
    const tables = answerTables(
      { ...request, means: [shown!, rest!, foreign] },
      knowledge,
    )
    expect(tables.map(({ label, answers }) => [label, answers.length])).toEqual([
      ['Group elements', 2],
      ['', 1],
    ])
    expect(interpretations).toHaveLength(3)
  })
  test('take their time', () => {
    const minutes = { setUp: 0, each: 150, figures: [], known: 'read' } as const
    expect(timeWords({ minutes })).toBe('About 2.5 hours')
  })
})
