import { expect, test } from 'vitest'
import { meaningsOf } from '../../lib/evidence/meanings.ts'
import { raisedBy } from '../../lib/evidence/raised.ts'
import { factsOf } from '../../lib/record/facts.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { record, today } from '../record-at-hand.ts'

test('what a crust hides altogether cannot show, and nothing is said of what it would mean', () => {
  const crusted = record(
    { state_now: 'dry' },
    {
      material: 'silver',
      evidence: ['black-in-recesses'],
      seen: ['black-tarnish', 'green-on-silver', 'lavender-grey-waxy'],
    },
  )
  const raised = raisedBy(factsOf(crusted, knowledge.vocabulary.textWords, today), knowledge)
  expect(raised.length).toBeGreaterThan(0)
  for (const { joint } of raised) {
    joint.groups.forEach((_, group) => {
      const means = meaningsOf(joint, group)
      expect(means.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9)
      for (const { chance, probability, leader } of means) {
        expect(chance).toBeGreaterThan(0)
        expect(Number.isFinite(probability)).toBe(true)
        expect(leader).toBeDefined()
      }
    })
  }
})
