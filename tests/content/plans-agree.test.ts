import { describe, expect, test } from 'vitest'
import { assess } from '../../lib/engine/assess.ts'
import type { Plan, Statement } from '../../lib/engine/plan.ts'
import { assemblage } from '../demo/assemblage.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { planOf, today } from '../record-at-hand.ts'
import { codes, firing } from '../said.ts'
import { codesOf, unfolded } from '../properties/statements.ts'

/** No plan of the demo tells two people two things. */
const planned = assemblage().records.map((record) => ({
  record,
  plan: assess(record, knowledge, { asOf: today, questions: false }),
}))
const where = (holds: (plan: Plan) => boolean) =>
  planned.filter(({ plan }) => holds(plan)).map(({ plan }) => plan.find)
const says = (lines: readonly Statement[], ...all: readonly string[]) =>
  all.every((code) => codesOf(lines).has(code))
const stopped = ({ cautions }: Plan) => cautions.some(({ level }) => level === 'stop')

describe('plans of the demo agree with themselves', () => {
  test('no part of a plan says the same sentence twice', () => {
    const twice = planned.flatMap(({ plan }) =>
      [plan.handling, plan.packing, plan.steps, plan.storage.basis, plan.referrals].flatMap((lines) => {
        const texts = lines
          .flatMap(unfolded)
          .map(({ text }) => text)
          .filter((text) => text !== '')
        return texts.filter((text, at) => texts.indexOf(text) !== at).map((text) => `${plan.find}: ${text}`)
      }),
    )
    expect(twice).toEqual([])
  })

  test('what is to be done now is not kept waiting by what is to be done today', () => {
    const late = where(({ steps }) => {
      const first = steps.findIndex(({ by }) => by === 'today')
      return first >= 0 && steps.slice(first).some(({ by }) => by === 'now')
    })
    expect(late).toEqual([])
  })

  test('boxes and bags: dry or not, with holes or not, opened or left', () => {
    expect(where(({ packing }) => says(packing, 'dry-box', 'no-dry-box'))).toEqual([])
    expect(where(({ packing }) => says(packing, 'perforated-bag', 'closed-bag'))).toEqual([])
    expect(where(({ packing }) => says(packing, 'repack', 'ask-before-moving'))).toEqual([])
    expect(where(({ packing }) => says(packing, 'check-gel', 'ask-before-moving'))).toEqual([])
  })

  test('what handling or packing keeps dark is kept dark', () => {
    const light = where(
      ({ handling, packing, storage }) =>
        (says(handling, 'keep-cool-and-dark') || says(packing, 'keep-dark')) && storage.light !== 'dark',
    )
    expect(light).toEqual([])
  })

  test('a find kept in water is asked no humidity, and nobody goes to the box of one under a stop', () => {
    const asked = where(
      ({ storage }) =>
        storage.keep === 'wet' && storage.basis.some(({ rule }) => rule.startsWith('storage-humidity')),
    )
    expect(asked).toEqual([])
    expect(where((plan) => stopped(plan) && plan.storage.act.length > 0)).toEqual([])
  })

  test('nothing is called routine while its box calls for somebody within a week', () => {
    const calm = planned.filter(({ record, plan }) => {
      const rh = record.stored_rh_percent
      if (typeof rh !== 'number' || plan.urgency !== 'routine') return false
      return firing(plan, rh).some(({ withinDays }) => withinDays <= 7)
    })
    expect(calm.map(({ plan }) => plan.find)).toEqual([])
  })

  test('whoever has parts that disagree is sent to the conservator', () => {
    const alone = where(
      ({ storage, referrals }) => storage.conflict !== null && !says(referrals, 'humidity-conflict'),
    )
    expect(alone).toEqual([])
  })
})

describe('what a record calls for', () => {
  test('a box of iron that has failed presses', () => {
    const boxed = { packed_in: ['dry-box', 'with-gel'], state_now: 'dry' } as const
    const nail = { material: 'iron', seen: ['orange-brown-crust'] } as const
    expect(planOf({ ...boxed, stored_rh_percent: 62 }, nail).urgency).toBe('days')
    expect(planOf({ ...boxed, stored_rh_percent: 11 }, nail).urgency).toBe('planned')
  })

  test('iron lifted years ago goes on the next plates, and what is needed soon before its date', () => {
    const nail = { material: 'iron', seen: ['orange-brown-crust'] } as const
    const booked = (find: Parameters<typeof planOf>[0]) =>
      planOf(find, nail).steps.find(({ code }) => code === 'book-x-radiography')
    expect(booked({ days_since_lifting: 3 })?.by).toBe('before the assessment report')
    expect(booked({ days_since_lifting: 2000 })?.by).toBe('with the next plates')
    expect(booked({ days_since_lifting: 2000, needed_by: today })?.by).toBe('this week')
  })

  test('a buckle with an iron pin is not parted from its pin', () => {
    const buckle = planOf(
      { object: 'buckle', state_now: 'dry' },
      { material: 'copper-alloy' },
      { material: 'iron', role: 'pin' },
    )
    expect(codes(buckle.packing)).not.toContain('keep-metals-apart')
    expect(codes(buckle.packing)).toContain('dry-box')
  })

  test('a crumbling thread on a sound lead seal is no lead dust', () => {
    const seal = planOf(
      { object: 'cloth seal' },
      { material: 'lead', seen: ['grey-skin'] },
      { material: 'textile', role: 'adhering', fragility: 'friable' },
    )
    expect(seal.cautions.filter(({ code }) => code === 'lead').map(({ level }) => level)).toEqual(['note'])
  })

  test('a gas mask is closed in a bag without holes', () => {
    const mask = planOf({ object: 'gas mask', state_now: 'dry' }, { material: 'steel' })
    expect(codes(mask.packing)).toContain('closed-bag')
    expect(codes(mask.packing)).not.toContain('perforated-bag')
  })

  test('a block stays in what it was lifted in, and nobody opens its wrapping', () => {
    const block = planOf(
      { lifted_as: 'block', state_now: 'dry', packed_in: ['sealed-bag'] },
      { material: 'iron' },
    )
    expect(codes(block.packing)).toEqual(expect.arrayContaining(['keep-as-lifted', 'ask-before-moving']))
    expect(codes(block.packing)).not.toContain('repack')
  })
})
