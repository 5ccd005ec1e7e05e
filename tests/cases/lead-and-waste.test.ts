import { describe, expect, test } from 'vitest'
import { planOf } from '../record-at-hand.ts'
import { codes, line, methods, saying } from '../said.ts'

describe('lead, slag and lumps', () => {
  test('a lead weight in an oak box: out of the wood, because its acid makes the white powder, and the powder is poison', () => {
    const plan = planOf(
      {
        object: 'weight',
        object_kind: 'weight',
        burial: ['free-draining'],
        state_now: 'dry',
        packed_in: ['wood'],
      },
      { material: 'lead', seen: ['white-powder'], extent: 'patches' },
    )
    expect(codes(plan.packing)).toEqual(
      saying('repack', 'no-wood-or-card', 'keep-metals-apart', 'keep-from-organics', 'inert-foam'),
    )
    expect(plan.storage.air).toEqual(['no-acid-vapour'])
    expect(plan.storage.temperatureC.min).toBe(15)
    expect(line(plan.cautions, 'lead')).toMatchObject({ level: 'warn', call: 'safety-adviser' })
    expect(codes(plan.handling)).toEqual(saying('wear-gloves', 'photograph-first'))
    expect(methods(plan)).toEqual(['xrd'])
    expect(plan.urgency).toBe('weeks')
  })

  test('a musket ball with a hard white crust: lead to be kept cleanly and no ammunition, because there is no case to it', () => {
    const plan = planOf(
      {
        object: 'musket ball',
        object_kind: 'shot',
        burial: ['ploughsoil'],
        state_now: 'dry',
        packed_in: ['paper-envelope'],
      },
      { material: 'lead', seen: ['white-hard-crust'] },
    )
    expect(codes(plan.cautions)).toEqual(['lead'])
    expect(plan.cautions[0]?.level).toBe('note')
    expect(plan.urgency).toBe('routine')
    expect(codes(plan.packing)).toEqual(saying('repack', 'no-wood-or-card'))
    expect(codes(plan.referrals)).not.toContain('treat-active-corrosion')
  })

  test('a leaded window with weathered glass: 40 to 45 %, because that suits the glass and does lead no harm', () => {
    const plan = planOf(
      { object: 'window came with glass', burial: ['free-draining'], state_now: 'dry' },
      { material: 'lead', seen: ['white-hard-crust'] },
      { component: 'quarry', material: 'glass', seen: ['iridescence'] },
    )
    expect(plan.storage).toMatchObject({ rhPercent: { min: 40, max: 45 }, conflict: null })
    expect(codes(plan.packing)).toContain('no-dry-box')
    expect(codes(plan.handling)).toEqual(saying('do-not-clean', 'do-not-take-apart'))
    expect(line(plan.referrals, 'treat-active-corrosion').components).toEqual(['quarry'])
  })

  test('a crate of slag to be thrown out: a sample stays, because nobody can judge slag by its look', () => {
    const slag = {
      object: 'slag',
      object_kind: 'slag-lump',
      quantity: 60,
      mass_g: 8400,
      burial: ['ash-burnt'],
      state_now: 'dry',
      retention: 'discard-proposed',
    } as const
    const plan = planOf(slag, { material: 'slag' })
    expect(codes(plan.selection)).toEqual(
      saying('no-discard-before-record', 'never-discard-slag-sample', 'never-discard-unidentified'),
    )
    expect(codes(plan.packing)).toContain('bulk-by-context')
    expect(codes(plan.packing)).not.toContain('dry-box')
    expect(codes(plan.referrals)).toContain('ask-archaeometallurgist')
    const pulling = planOf({ ...slag, tests: ['magnet:strong'] }, { material: 'slag' })
    expect(codes(pulling.packing)).toContain('dry-box')
    expect(pulling.storage.rhPercent?.max).toBe(35)
  })

  test('an unnamed metal lump to be thrown out: kept like iron, because it may be iron, and X-rayed before anybody decides', () => {
    const plan = planOf(
      {
        object: 'lump',
        object_kind: 'unidentified-lump',
        burial: ['organic-urban'],
        state_now: 'dry',
        retention: 'discard-proposed',
      },
      { material: 'metal-unidentified', seen: ['soil-concretion'] },
    )
    expect(plan.storage.rhPercent).toEqual({ min: 0, max: 12 })
    expect(codes(plan.selection)).toContain('never-discard-unidentified')
    expect(methods(plan)).toEqual(['x-radiography', 'xrf'])
    expect(codes(plan.handling)).toContain('leave-soil-on')
  })
})
