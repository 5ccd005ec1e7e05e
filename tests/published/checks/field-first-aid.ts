import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, figure, line, methods, saying } from '../../said.ts'
import { asBand, inWords, wholeNumber } from '../tolerance.ts'

const drying = {
  work: 'cardiff-guidance-storage',
  place: 'Immediate post-excavation actions',
  known: 'read',
} as const
const method = { ...drying, place: 'Immediate post-excavation actions, method 1' } as const
const note = (number: number) =>
  ({ work: 'finds-scheme-advice-notes', place: `note ${number}`, known: 'read' }) as const
const library = (place: string | null) => ({ work: 'nlm-2018', place, known: 'read' }) as const

const fromDryGround = { state_now: 'damp', burial: ['free-draining'] } as const
const lump = planOf(
  { ...fromDryGround, object_kind: 'unidentified-lump' },
  { material: 'iron', seen: ['soil-concretion'] },
)
const sealed = planOf({ ...fromDryGround, packed_in: ['sealed-bag'] }, { material: 'iron' })
const flooded = planOf(
  { state_now: 'wet', wetted_by: 'flood', burial: ['free-draining'], proposed: ['freeze'] },
  { material: 'iron' },
)
const at = (plan: typeof lump, code: string) => line(plan.steps, code).order

describe('the first days of a find', () => {
  printed(
    {
      check: 'practice 1, washing',
      ...note(1),
      tolerance: inWords,
      says: 'a damp lump of iron is dried unwashed, soil on',
    },
    () => {
      expect(codes(lump.handling)).toEqual(saying('do-not-wash', 'leave-soil-on'))
      return [line(lump.handling, 'do-not-wash'), line(lump.handling, 'leave-soil-on')]
    },
  )

  printed(
    {
      check: 'practice 1, brushing',
      ...note(5),
      tolerance: inWords,
      says: 'no brush: the old surface lies in the corrosion',
    },
    () => line(lump.handling, 'do-not-brush'),
  )

  printed(
    {
      check: 'practice 1, drying',
      ...drying,
      tolerance: inWords,
      says: 'dried openly first, then the dry box, then X-rayed',
    },
    () => {
      expect(lump.storage.keep).toBe('dry')
      expect(at(lump, 'air-dry-openly')).toBeLessThan(at(lump, 'dry-box'))
      expect(methods(lump)).toContain('x-radiography')
      return line(lump.steps, 'air-dry-openly')
    },
  )

  printed(
    {
      check: 'practice 1, two weeks',
      ...method,
      tolerance: wholeNumber,
      says: 'weighed until constant, or two weeks',
    },
    () => {
      expect(figure('air-dry-default-days')).toMatchObject({ value: 14, unit: 'day' })
      expect(line(lump.steps, 'air-dry-openly')).toMatchObject({
        until: 'it stops losing mass',
        due: '2026-12-09',
      })
      expect(codes(lump.steps)).toContain('weigh-until-constant')
      return line(lump.steps, 'air-dry-openly')
    },
  )

  printed(
    {
      check: 'practice 4',
      ...drying,
      tolerance: inWords,
      says: 'wet in a sealed bag: opened and dried, no gel first',
    },
    () => {
      expect(codes(sealed.packing)).toContain('repack')
      expect(at(sealed, 'open-the-pack')).toBeLessThan(at(sealed, 'air-dry-openly'))
      expect(at(sealed, 'air-dry-openly')).toBeLessThan(at(sealed, 'dry-box'))
      return line(sealed.steps, 'open-the-pack')
    },
  )

  printed(
    {
      check: 'corrosion 74',
      ...drying,
      tolerance: inWords,
      says: 'a wet object is never dried in a closed box of gel',
    },
    () => {
      const inGel = planOf({ ...fromDryGround, packed_in: ['with-gel'] }, { material: 'iron' })
      expect(codes(inGel.handling)).toContain('do-not-seal-wet')
      return line(inGel.packing, 'repack')
    },
  )

  printed(
    {
      check: 'practice 42',
      ...drying,
      tolerance: inWords,
      says: 'no damp find is sealed, with or without gel',
    },
    () => {
      expect(
        codes(planOf({ ...fromDryGround, state_now: 'dry' }, { material: 'iron' }).handling),
      ).not.toContain('do-not-seal-wet')
      return line(lump.handling, 'do-not-seal-wet')
    },
  )

  printed(
    {
      check: 'practice 43',
      ...library('Metals, recovery priority'),
      tolerance: asBand,
      says: 'flooded metal is dried within 24 to 48 hours, archaeological metal first',
    },
    () => {
      expect(figure('flood-drying-hours-low')).toMatchObject({ value: 24, unit: 'hour' })
      expect(figure('flood-drying-hours-high')).toMatchObject({ value: 48, unit: 'hour' })
      expect(flooded.storage.keep).toBe('dry')
      expect(flooded.urgency).toBe('days')
      return flooded.urgencyBasis
    },
  )
})
