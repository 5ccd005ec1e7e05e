import { expect, test } from 'vitest'
import { assess } from '../../lib/engine/assess.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { record, today } from '../record-at-hand.ts'

type Find = Parameters<typeof record>[0]
type Part = Parameters<typeof record>[1]

const questions = (find: Find, ...parts: readonly Part[]) =>
  assess(record(find, ...parts), knowledge, { asOf: today }).lookNext.map(({ fact }) => fact)

test('of a dull nail somebody first asks whether it is wet', () => {
  const nail = { material: 'iron', seen: ['orange-brown-crust'] } as const
  expect(questions({ object: 'nail' }, { material: 'iron' })[0]).toBe('state_now')
  expect(questions({ object: 'nail', burial: ['damp'] }, nail)[0]).toBe('state_now')
})

test('of a dry one what was done to it, and nothing about a core that would settle nothing', () => {
  const nail = { material: 'iron', seen: ['orange-brown-crust'] } as const
  const asked = questions({ object: 'nail', burial: ['damp'], state_now: 'dry' }, nail)
  expect(asked[0]).toBe('done_already')
  expect(asked).not.toContain('body.core')
})

test('of a buckle whether it is wet and what shows on it; of a lead weight what shows on it', () => {
  expect(questions({ object: 'buckle' }, { material: 'copper-alloy' }).slice(0, 2)).toEqual([
    'state_now',
    'body.seen',
  ])
  expect(questions({ object: 'lead weight' }, { material: 'lead' })[0]).toBe('body.seen')
})

test('of a wet knife what ground it came from', () => {
  expect(questions({ object: 'knife', state_now: 'wet' }, { material: 'iron' })[0]).toBe('burial')
})

test('grenades, block lifts and radiographs are asked after all else', () => {
  const asked = questions(
    { object: 'knife', state_now: 'damp' },
    { material: 'iron', seen: ['orange-brown-crust'] },
  )
  const last = ['hazards_noticed', 'lifted_as', 'body.core'].filter((fact) => asked.includes(fact))
  expect(asked.slice(-last.length).toSorted()).toEqual(last.toSorted())
})
