import { expect, test } from 'vitest'
import { knowledge } from '../knowledge-at-hand.ts'
import { assemblage } from '../demo/assemblage.ts'
import { today } from '../record-at-hand.ts'
import { figuresOf, guideDrawn, guideRecorded } from '../simulated/guided-finds.ts'

// The whole measure is `npm run bench -- guided`; these are its first finds, the same on every machine.
const drawn = guideDrawn(80, knowledge, today)

test('questions lead to the plan of the full record with at most half of its facts on average', () => {
  const { needed, reached } = figuresOf(drawn)
  expect(needed.mean).toBeLessThanOrEqual(0.5)
  expect(reached).toBeGreaterThanOrEqual(0.9)
})

test('of a full record nothing is asked that it cannot answer, and nothing twice', () => {
  for (const { asked, inVain } of drawn) {
    expect(new Set(asked).size).toBe(asked.length)
    expect(inVain).toBe(0)
  }
})

test('what is needed lies between what is at hand and the full record', () => {
  for (const { reachedAt, full, atHand } of drawn) {
    expect(atHand).toBeLessThan(full)
    expect(reachedAt === null || (reachedAt >= atHand && reachedAt <= full)).toBe(true)
  }
})

test('the finds of the demo need no more', () => {
  const some = assemblage().records.filter((_, at) => at % 12 === 0)
  const { needed } = figuresOf(guideRecorded(some, knowledge, today))
  expect(needed.mean).toBeLessThanOrEqual(0.5)
})
