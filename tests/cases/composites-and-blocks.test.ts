import { describe, expect, test } from 'vitest'
import { planOf } from '../record-at-hand.ts'
import { codes, daysToAct, line, methods, saying } from '../said.ts'

describe('finds of several materials, blocks and hoards', () => {
  test('shears in their sheath, already in a dry box: a conservator decides, because leather and iron lie 33 % apart', () => {
    const plan = planOf(
      {
        object: 'shears in sheath',
        object_kind: 'shears',
        burial: ['dry'],
        state_now: 'dry',
        packed_in: ['dry-box'],
        stored_rh_percent: 14,
      },
      { material: 'iron', seen: ['orange-brown-crust'] },
      { component: 'sheath', material: 'leather', role: 'backing' },
    )
    expect(plan.storage).toMatchObject({ rhPercent: null, decidedBy: 'conservator', keep: 'as-found' })
    expect(plan.storage.conflict).toMatchObject({ between: ['body', 'sheath'], gapPercent: 33 })
    expect(codes(plan.storage.conflict?.waysOut ?? [])).toEqual(
      saying('is-it-still-organic', 'radiograph-for-core', 'oxygen-free-pack'),
    )
    expect(plan.storage.interim?.rhPercent).toEqual({ min: 30, max: 40 })
    expect(daysToAct(plan, 14)).toBe(1)
    expect(codes(plan.packing)).toEqual(saying('ask-before-moving', 'no-dry-box', 'guard-edges'))
    expect(codes(plan.handling)).toEqual(saying('do-not-take-apart', 'leave-as-found'))
    expect(plan.inspection.everyDays).toBe(7)
  })

  test('coins fused in a cloth, lifted as a block: neither parted nor dried, because layers and cloth are the evidence', () => {
    const plan = planOf(
      {
        object: 'fused coins in cloth',
        object_kind: 'hoard',
        burial: ['clay'],
        state_now: 'damp',
        lifted_as: 'block',
      },
      { material: 'base-silver', seen: ['green-on-silver'] },
      { component: 'cloth', material: 'textile', role: 'adhering' },
    )
    expect(plan.urgency).toBe('hours')
    expect(plan.storage.keep).toBe('as-found')
    expect(codes(plan.handling)).toEqual(
      saying('do-not-take-apart', 'support-fully', 'photograph-first', 'leave-as-found'),
    )
    expect(codes(plan.packing)).toContain('keep-as-lifted')
    expect(codes(plan.packing)).not.toContain('bag-singly')
    expect(methods(plan)).toEqual(saying('x-radiography', 'ct'))
    expect(line(plan.steps, 'tell-finds-officer').due).toBe(plan.asOf)
    expect(codes(plan.referrals)).toEqual(saying('keep-hoard-together', 'open-block', 'ask-finds-officer'))
    expect(codes(plan.cautions)).toContain('legal-duty')
  })

  test('a bowl in twelve bits with its contents, for the oven: no oven, because soil, soot and leavings are in it', () => {
    const plan = planOf(
      {
        object: 'bowl with contents',
        object_kind: 'vessel',
        quantity: 1,
        fragments: 12,
        burial: ['clay'],
        state_now: 'damp',
        lifted_as: 'vessel-with-contents',
        proposed: ['oven-drying'],
      },
      { material: 'copper-alloy', seen: ['compact-green', 'black-layer'], fragility: 'in-pieces' },
    )
    expect(codes(plan.objections.filter(({ level }) => level === 'block'))).toEqual(
      saying('oven-block', 'oven-other-metal'),
    )
    expect(codes(plan.handling)).toEqual(
      saying('leave-soil-on', 'support-fully', 'do-not-take-apart', 'do-not-clean'),
    )
    expect(codes(plan.packing)).toContain('keep-as-lifted')
    expect(methods(plan)).toEqual(['x-radiography', 'ct'])
    expect(codes(plan.referrals)).toContain('open-block')
    expect(plan.urgency).toBe('hours')
  })

  test('a crucible to be dated by luminescence: dark and not X-rayed, because the beam would add a thousand years', () => {
    const plan = planOf(
      {
        object: 'crucible',
        burial: ['ash-burnt'],
        state_now: 'damp',
        needed_for: ['luminescence-dating'],
        proposed: ['sampling'],
      },
      { material: 'ceramic' },
      { component: 'droplet', material: 'copper-alloy', role: 'adhering', seen: ['red-layer'] },
    )
    expect(methods(plan)[0]).toBe('luminescence')
    expect(line(plan.objections, 'luminescence-first')).toMatchObject({
      level: 'block',
      to: 'sampling',
    })
    expect(codes(plan.steps)).toContain('luminescence-first')
    expect(codes(plan.steps)).not.toContain('book-x-radiography')
    expect(codes(plan.packing)).toContain('keep-dark')
    expect(codes(plan.handling)).toContain('do-not-heat')
  })
})
