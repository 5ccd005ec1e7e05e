import { expect, test } from 'vitest'
import { planOf } from '../record-at-hand.ts'

const marks = (plan: ReturnType<typeof planOf>) =>
  Object.fromEntries(
    [...plan.urgencyBasis, ...plan.steps, ...plan.inspection.basis].map(({ rule, precautionary }) => [
      rule,
      precautionary,
    ]),
  )

test('what follows from an answer that was only taken to be safe is marked as a precaution too', () => {
  expect(marks(planOf({ object: 'nail' }, { material: 'iron' }))).toMatchObject({
    'urgency/active': true,
    'steps-first/unstable-photographed': true,
    'inspection/active-metal': true,
    'steps-dry/boxed-dry': false,
  })
})

test('what follows from what was seen is not', () => {
  const nail = planOf({ object: 'nail' }, { material: 'iron', seen: ['orange-droplets'] })
  expect(marks(nail)).toMatchObject({
    'urgency/active': false,
    'steps-first/unstable-photographed': false,
    'inspection/active-metal': false,
  })
})

test('one part that was looked at settles what is said of the whole find', () => {
  const bolt = planOf(
    { object: 'clench bolt' },
    { material: 'iron', seen: ['orange-droplets'] },
    { material: 'iron' },
  )
  expect(marks(bolt)).toMatchObject({ 'urgency/active': false, 'inspection/active-metal': false })
})
