import { expect, test } from 'vitest'
import { figureTakenWords } from '../../lib/wording/figure-taken.ts'
import { knowledge } from '../knowledge-at-hand.ts'

test('a printed figure stands as it is printed; one of ours shows its number and whose it is', () => {
  const words = (id: string) => figureTakenWords(knowledge.figures[id]!, knowledge)
  expect(words('heat-capacity-iron')).toBe('530 J/(kg·K)')
  expect(words('overnight-hours')).toBe('overnight is sufficient')
  expect(words('coupon-weighing-error')).toBe('0.2 mg, ours')
})
