import { expect, test } from 'vitest'
import { planOf } from '../record-at-hand.ts'

const tiers = (plan: ReturnType<typeof planOf>) =>
  plan.storage.act.map(({ aboveRhPercent, belowRhPercent, withinDays, says }) => [
    aboveRhPercent ?? -belowRhPercent!,
    withinDays,
    says.code,
  ])

test('a tier that a sooner one has overtaken is not said', () => {
  const buckle = planOf(
    { state_now: 'dry', burial: ['clay'] },
    { material: 'copper-alloy', seen: ['compact-green'] },
    { material: 'iron', seen: ['orange-brown-crust'] },
  )
  expect(tiers(buckle)).toEqual(
    expect.arrayContaining([
      [50, 1, 'dry-again'],
      [30, 7, 'dry-again'],
      [15, 30, 'renew-gel'],
    ]),
  )
  const late = buckle.storage.act.filter(
    ({ aboveRhPercent, withinDays }) => aboveRhPercent! > 50 && withinDays > 1,
  )
  expect(late).toEqual([])
})

test('a later tier that calls for something else on the same day stays', () => {
  const knife = planOf({ state_now: 'dry' }, { material: 'iron' }, { material: 'wood', role: 'handle' })
  expect(tiers(knife)).toEqual(expect.arrayContaining([[75, 1, 'too-damp']]))
  expect(tiers(knife)).not.toEqual(expect.arrayContaining([[70, 7, 'too-damp']]))
})
