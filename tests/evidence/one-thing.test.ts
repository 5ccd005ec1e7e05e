import { describe, expect, test } from 'vitest'
import { raisedBy, withIdentified } from '../../lib/evidence/raised.ts'
import { weighedOf } from '../../lib/evidence/weigh.ts'
import { factsOf } from '../../lib/record/facts.ts'
import { evidence, material, seen } from '../../lib/record/ids.ts'
import type { Component } from '../../lib/record/record.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { record, today } from '../record-at-hand.ts'

const raised = (part: Pick<Component, 'material'> & Partial<Component>) =>
  raisedBy(factsOf(record({}, part), knowledge.vocabulary.textWords, today), knowledge)

describe('explanations of one thing', () => {
  test.each(material)('sum to one at most, whatever is seen on %s', (of) => {
    const sights = [
      ...evidence.map((value) => ({ evidence: [value] })),
      ...seen.map((value) => ({ seen: [value] })),
    ]
    for (const sight of sights) {
      const all = raised({ material: of, ...sight }).map(weighedOf)
      if (all.length === 0) continue
      const sum = all.flatMap(({ rivals }) => rivals).reduce((whole, { probability }) => whole + probability, 0)
      expect(sum).toBeCloseTo(1, 9)
    }
  })

  test('on a metal that nobody could name are open, until one question is the right one', () => {
    const both = raised({ material: 'metal-unidentified', evidence: ['white-metal-sheen'] })
    expect(both.map(({ matter }) => matter.id)).toEqual(['white-skin', 'white-skin-on-iron'])
    expect(both.map((one) => weighedOf(one).standing)).toEqual(['open', 'open'])
    const [found, ...moot] = withIdentified(both, [
      { component: 'body', matter: 'white-skin', interpretation: 'tinning' },
    ])
    expect(moot).toEqual([])
    expect(weighedOf(found!).rivals[0]).toMatchObject({ id: 'tinning', probability: 1 })
  })
})
