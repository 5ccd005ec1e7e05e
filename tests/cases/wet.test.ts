import { describe, expect, test } from 'vitest'
import { planOf } from '../record-at-hand.ts'
import { codes, line, methods, saying, request } from '../said.ts'

describe('finds that are wet, flooded or frozen', () => {
  test('a waterlogged knife in its wooden handle: kept wet, because the wood is lost first', () => {
    const plan = planOf(
      {
        object: 'knife',
        object_kind: 'knife',
        burial: ['waterlogged'],
        state_now: 'wet',
        wet_when_lifted: 'yes',
        days_since_lifting: 0,
        packed_in: ['sealed-bag'],
      },
      { material: 'iron', seen: ['black-compact-layer'] },
      { material: 'wood', role: 'handle' },
    )
    expect(plan.urgency).toBe('hours')
    expect(plan.storage).toMatchObject({
      keep: 'wet',
      rhPercent: null,
      interim: null,
      light: 'dark',
      decidedBy: 'conservator',
    })
    expect(plan.storage.conflict?.gapPercent).toBe(28)
    expect(codes(plan.handling)).toEqual(
      saying('keep-wet', 'keep-cool-and-dark', 'do-not-freeze', 'do-not-heat', 'do-not-take-apart'),
    )
    expect(codes(plan.handling)).not.toContain('air-dry-openly')
    expect(codes(plan.packing)).toEqual(
      saying('wet-tub', 'keep-metals-apart', 'label-inside-and-out', 'keep-dark'),
    )
    expect(codes(plan.packing)).not.toContain('dry-box')
    expect(line(plan.steps, 'ring-conservator').due).toBe(plan.asOf)
    expect(codes(plan.referrals)).toEqual(saying('wet-composite', 'humidity-conflict'))
  })

  test('a pewter plate from the sea: kept in water by itself, because nobody has said what its crust is', () => {
    const plan = planOf(
      {
        object: 'plate',
        object_kind: 'vessel',
        burial: ['marine'],
        state_now: 'wet',
        packed_in: ['water-tub'],
      },
      { material: 'pewter', seen: ['black-crust', 'grey-warts'] },
    )
    expect(plan.urgency).toBe('hours')
    expect(plan.storage).toMatchObject({ keep: 'wet', rhPercent: null, temperatureC: { min: 2, max: 5 } })
    expect(codes(plan.handling)).toEqual(saying('keep-wet', 'leave-soil-on', 'wear-gloves'))
    expect(codes(plan.packing)).toEqual(saying('keep-metals-apart', 'no-wood-or-card'))
    expect(codes(plan.packing)).not.toContain('repack')
    expect(codes(plan.cautions)).toEqual(['lead', 'legal-duty'])
    expect(codes(plan.referrals)).toEqual(saying('wet-metal', 'judge-activity'))
  })

  test('an iron shot from the sea, lying dry in a tray: into water now, and looked at for a fuze without lifting it', () => {
    const plan = planOf(
      {
        object: 'round shot',
        object_kind: 'shot',
        burial: ['marine'],
        state_now: 'wet',
        packed_in: ['nothing'],
        days_since_lifting: 0,
      },
      { material: 'cast-iron', seen: ['soil-concretion'] },
    )
    expect(plan.storage.keep).toBe('wet')
    expect(line(plan.cautions, 'ammunition')).toMatchObject({ level: 'warn', call: 'police' })
    expect(line(plan.steps, 'repack').by).toBe('now')
    expect(codes(plan.handling)).toEqual(saying('keep-wet', 'leave-soil-on'))
    expect(plan.urgency).toBe('hours')
  })

  test('a strap-end on wet leather: one plan for both, because leather dried by chance is lost', () => {
    const plan = planOf(
      {
        object: 'strap-end',
        object_kind: 'strap-fitting',
        burial: ['waterlogged'],
        state_now: 'damp',
        wet_when_lifted: 'yes',
        set_with: ['TW-0101'],
      },
      { material: 'copper-alloy', seen: ['brassy-film'], evidence: ['openwork', 'white-metal-sheen'] },
      { material: 'leather', role: 'backing' },
    )
    expect(plan.storage.keep).toBe('wet')
    expect(line(plan.handling, 'do-not-clean').also.map(({ rule }) => rule)).toContain(
      'handling-traces/false-gold',
    )
    expect(codes(plan.handling)).toEqual(saying('leave-soil-on', 'photograph-first'))
    expect(methods(plan)).toEqual(saying('optical-microscopy', 'xrf'))
    expect(request(plan, 'xrf').question).toMatch(/tin, silver, arsenic/)
  })

  test('a hinge from a flooded store: dried within days and not frozen, because it was dry before', () => {
    const plan = planOf(
      {
        object: 'hinge',
        object_kind: 'hinge',
        burial: ['free-draining'],
        state_now: 'wet',
        wetted_by: 'flood',
        packed_in: ['cardboard'],
        proposed: ['freeze'],
      },
      { material: 'iron', seen: ['orange-brown-crust'] },
    )
    expect(plan.urgency).toBe('days')
    expect(plan.storage.keep).toBe('dry')
    expect(line(plan.objections, 'freeze-metal').level).toBe('block')
    expect(line(plan.steps, 'air-dry-openly').order).toBeLessThan(line(plan.steps, 'dry-box').order)
    expect(codes(plan.packing)).toContain('repack')
    expect(codes(plan.handling)).toEqual(saying('do-not-freeze', 'do-not-heat', 'do-not-seal-wet'))
  })

  test('an axe frozen with its haft: left closed, because thawing is the treatment', () => {
    const plan = planOf(
      { object: 'axe', object_kind: 'tool', burial: ['waterlogged'], state_now: 'frozen' },
      { material: 'iron' },
      { component: 'haft', material: 'wood', role: 'handle' },
    )
    expect(plan.urgency).toBe('days')
    expect(plan.storage.keep).toBe('as-found')
    expect(codes(plan.handling)).toEqual(saying('leave-frozen-closed', 'do-not-heat'))
    expect(codes(plan.handling)).not.toContain('do-not-freeze')
    expect(codes(plan.steps)).not.toContain('air-dry-openly')
    expect(line(plan.steps, 'ring-conservator').due).toBe(plan.asOf)
    expect(plan.notCovered.map(({ what }) => what).join()).toMatch(/frozen find/)
  })
})
