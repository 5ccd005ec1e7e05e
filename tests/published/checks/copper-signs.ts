import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, methods, rule, saying } from '../../said.ts'
import { inWords } from '../tolerance.ts'

const scottOnChloride = { work: 'scott-1990', place: 'section 2', known: 'read' } as const
const scottOnStorage = { work: 'scott-1990', place: 'section 5', known: 'read' } as const
const chapter38 = { work: 'argyropoulos-2017', place: 'chapter 38', known: 'read' } as const

type Part = Parameters<typeof planOf>[1]
const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const ceiling = (part: Part, ...tests: readonly string[]) =>
  planOf({ ...dry, tests }, part).storage.components[0]!.limit.max

describe('signs on copper alloy', () => {
  printed(
    {
      check: 'practice 12',
      work: 'bourgarit-2025-guidelines',
      place: 'chapter I.8, section 2',
      known: 'read',
      tolerance: inWords,
      says: 'raised light green is active, to be confirmed by a chemical test',
    },
    () => {
      const plan = planOf(dry, { material: 'copper-alloy', seen: ['pale-green-powder'] })
      expect(codes(plan.packing)).toEqual(saying('dry-box', 'keep-metals-apart'))
      expect(methods(plan)).toContain('chloride-test')
      return plan.requests.flatMap(({ basis }) => basis)
    },
  )

  printed(
    {
      check: 'corrosion 23',
      ...scottOnChloride,
      tolerance: inWords,
      says: 'waxy grey-green matter on copper may be nantokite',
    },
    () => {
      expect(ceiling({ material: 'copper-alloy', seen: ['waxy-grey-green'] })).toBe(35)
      expect(ceiling({ material: 'copper-alloy', seen: ['compact-green'] })).toBe(55)
      return rule('signs/copper-waxy')
    },
  )

  printed(
    {
      check: 'corrosion 22',
      ...scottOnStorage,
      tolerance: inWords,
      says: 'atacamite alone does not make bronze active',
    },
    () => {
      expect(ceiling({ material: 'bronze', seen: ['compact-green'] }, 'xrd:atacamite+paratacamite')).toBe(42)
      expect(ceiling({ material: 'bronze', seen: ['compact-green'] }, 'xrd:nantokite+cuprite')).toBe(35)
      return [rule('tested/basic-chlorides-found'), rule('signs/compact-green')]
    },
  )

  printed(
    {
      check: 'open texts 4',
      ...chapter38,
      tolerance: inWords,
      says: 'no nantokite in the diffraction changes nothing',
    },
    () => {
      const part = { material: 'copper-alloy', seen: ['pale-green-powder'] } as const
      const products = 'xrd:tenorite+cuprite+malachite+chalcocite'
      expect(ceiling(part, products)).toBe(ceiling(part))
      expect(ceiling(part, products)).toBe(35)
      const plan = planOf({ ...dry, tests: [products] }, part)
      return plan.requests.flatMap(({ basis }) => basis)
    },
  )

  printed(
    {
      check: 'corrosion 63',
      work: 'wang-2020',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'pale blue powder is not bronze disease by default: have it named',
    },
    () => {
      const plan = planOf(dry, { material: 'copper-alloy', seen: ['pale-blue-powder'] })
      expect(plan.storage.components[0]!.limit.max).toBe(42)
      expect(codes(plan.referrals)).not.toContain('treat-active-corrosion')
      expect(codes(plan.referrals)).toContain('judge-activity')
      expect(methods(plan)).toContain('xrd')
      return rule('signs/copper-pale-blue')
    },
  )

  printed(
    {
      check: 'open texts 62',
      work: 'bourgarit-2025-guidelines',
      place: 'chapter I.4 §1.2',
      known: 'read',
      tolerance: inWords,
      says: 'raised green along a seam: look for flux before calling it active',
    },
    () => {
      expect(ceiling({ material: 'brass', seen: ['raised-green-along-seam'] })).toBe(42)
      expect(ceiling({ material: 'brass', seen: ['warty-green'] })).toBe(35)
      return rule('signs/copper-seam')
    },
  )
})
