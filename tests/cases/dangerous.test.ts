import { describe, expect, test } from 'vitest'
import { planOf } from '../record-at-hand.ts'
import { codes, line, saying } from '../said.ts'

describe('finds that may hurt somebody', () => {
  test('a cartridge case to be washed: nobody touches it, because old does not mean inert', () => {
    const plan = planOf(
      {
        object: 'cartridge case',
        object_kind: 'cartridge',
        burial: ['ploughsoil'],
        state_now: 'dry',
        proposed: ['wash'],
      },
      { material: 'brass', seen: ['compact-green'] },
    )
    expect(plan.urgency).toBe('now')
    expect(plan.cautions[0]).toMatchObject({ code: 'ammunition', level: 'stop', call: 'police' })
    expect(codes(plan.handling)[0]).toBe('do-not-touch')
    expect(plan.steps[0]).toMatchObject({ code: 'stop-and-call', order: 1, due: plan.asOf })
    expect(new Set(plan.steps.slice(1).map(({ by }) => by))).toEqual(new Set(['once the stop is cleared']))
    expect(plan.requests).toEqual([])
    expect(plan.objections[0]).toMatchObject({ code: 'stopped', level: 'block', to: 'wash' })
    expect(codes(plan.packing)).not.toContain('perforated-bag')
  })

  test('a record of nothing but "mortar bomb": stopped all the same, because a hazard in words is a hazard', () => {
    const plan = planOf({ object: 'mortar bomb' }, { material: 'metal-unidentified' })
    expect(plan.urgency).toBe('now')
    expect(plan.cautions[0]).toMatchObject({ code: 'ammunition', level: 'stop' })
    expect(plan.requests).toEqual([])
  })

  test('a compass with a luminous dial, to be cleaned: closed and left, because its paint may still radiate', () => {
    const plan = planOf(
      {
        object: 'compass with luminous dial',
        object_kind: 'instrument',
        burial: ['ploughsoil'],
        state_now: 'dry',
        proposed: ['investigative-cleaning'],
      },
      { material: 'brass' },
      { component: 'window', material: 'glass' },
    )
    expect(plan.cautions[0]).toMatchObject({ code: 'radioactive', level: 'stop', call: 'radiation-adviser' })
    expect(plan.objections.filter(({ level }) => level === 'block').map(({ code }) => code)).toContain(
      'stopped',
    )
    expect(plan.urgency).toBe('now')
  })

  test('a brooch with hair on it, from a grave: paused where it lies, because it may be somebody', () => {
    const plan = planOf(
      {
        object: 'brooch',
        object_kind: 'brooch',
        burial: ['grave'],
        state_now: 'damp',
        hazards_noticed: ['bone-hair-or-skin'],
      },
      { material: 'copper-alloy', seen: ['compact-green'], evidence: ['weave-pattern'] },
      { material: 'iron', role: 'pin' },
    )
    expect(plan.cautions[0]).toMatchObject({ code: 'human-remains', level: 'stop', call: 'coroner' })
    expect(codes(plan.handling)).toEqual(saying('do-not-touch', 'do-not-wash', 'leave-soil-on'))
    expect(codes(plan.handling)).not.toContain('air-dry-openly')
    expect(codes(plan.referrals)).toEqual(saying('ask-osteologist', 'ask-organics-specialist'))
    expect(codes(plan.cautions)).toContain('legal-duty')
  })

  test('a swollen tin that smells of fuel: everybody away, because what is inside may burst', () => {
    const plan = planOf(
      {
        object: 'tin',
        burial: ['industrial'],
        state_now: 'damp',
        hazards_noticed: ['swollen-tin-or-cylinder', 'fuel-or-chemical-smell'],
      },
      { material: 'steel', seen: ['lamination-cracks'] },
    )
    expect(plan.cautions[0]).toMatchObject({ code: 'stored-energy', level: 'stop', call: 'police' })
    expect(plan.cautions.filter(({ level }) => level === 'warn').map(({ code }) => code)).toContain(
      'contaminated-ground',
    )
    expect(codes(plan.handling)).not.toContain('air-dry-openly')
    expect(codes(plan.handling)).not.toContain('keep-crumbs')
    expect(plan.packing).toEqual([])
  })

  test('a steel helmet with its liner: not worn or pulled about, because liners held asbestos', () => {
    const plan = planOf(
      {
        object: 'steel helmet with liner',
        object_kind: 'helmet',
        burial: ['ploughsoil'],
        state_now: 'dry',
        hazards_noticed: ['gas-mask-or-helmet', 'sharp'],
        packed_in: ['newspaper'],
      },
      { material: 'steel', seen: ['orange-brown-crust'] },
      { component: 'liner', material: 'textile', role: 'backing' },
    )
    expect(codes(plan.cautions)).toEqual(saying('asbestos', 'sharp-edges'))
    expect(plan.cautions.some(({ level }) => level === 'stop')).toBe(false)
    expect(plan.storage.conflict?.gapPercent).toBe(33)
    expect(codes(plan.handling)).toEqual(saying('do-not-take-apart', 'wear-gloves', 'leave-soil-on'))
  })

  test('a sword of an old collection in blue gel: taken for poisoned, because such horn and hide were', () => {
    const plan = planOf(
      {
        object: 'sword',
        object_kind: 'weapon',
        state_now: 'dry',
        packed_in: ['with-gel', 'wool-or-felt'],
        hazards_noticed: ['old-collection-label', 'blue-or-pink-gel'],
        done_already: ['waxed', 'tannic-acid'],
      },
      { material: 'iron', seen: ['no-change-seen'] },
      { material: 'horn', role: 'handle' },
    )
    expect(codes(plan.cautions)).toEqual(saying('pesticide-residue', 'cobalt-indicator'))
    expect(line(plan.handling, 'wear-gloves').strength).toBe('should')
    expect(codes(plan.objections)).toEqual(saying('tannated-already', 'waxed-already'))
    expect(plan.storage.conflict).toMatchObject({ between: ['body', 'handle'], gapPercent: 33 })
    expect(codes(plan.packing)).toEqual(saying('repack', 'ask-before-moving'))
  })
})
