import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, line, rule } from '../said.ts'
import { inWords } from '../tolerance.ts'

const recognising = { work: 'cci-notes-9-1', place: 'opening', known: 'read' } as const
const assessment = { work: 'sha-conservation-faqs', place: 'identification and assessment', known: 'read' } as const
const scottOnChloride = { work: 'scott-1990', place: 'section 2', known: 'read' } as const
const scottOnStorage = { work: 'scott-1990', place: 'section 5', known: 'read' } as const
const chapter38 = { work: 'argyropoulos-2017', place: 'chapter 38', known: 'read' } as const

type Part = Parameters<typeof planOf>[1]
const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const ceiling = (part: Part, ...tests: readonly string[]) =>
  planOf({ ...dry, tests }, part).storage.components[0]!.limit.max

describe('signs that metal is corroding', () => {
  printed(
    { check: 'practice 3', ...recognising, tolerance: inWords, says: 'loose flakes or powder beside it: assume active' },
    () => {
      for (const material of ['iron', 'copper-alloy', 'lead', 'pewter', 'zinc'] as const) {
        const plan = planOf(dry, { material, seen: ['loose-flakes'] })
        expect(plan.urgency, material).toBe('days')
        expect(codes(plan.referrals), material).toContain('treat-active-corrosion')
      }
      return planOf(dry, { material: 'iron', seen: ['powder-in-bag'] }).urgencyBasis
    },
  )

  printed(
    { check: 'practice 2', ...assessment, tolerance: inWords, says: 'iron with orange drops or spots: dry box, radiograph, conservator' },
    () => {
      for (const seen of ['orange-droplets', 'dry-orange-blisters', 'bright-orange-spots'] as const) {
        const plan = planOf(dry, { material: 'iron', seen: [seen] })
        expect(codes(plan.packing), seen).toContain('dry-box')
        expect(plan.requests.map(({ method }) => method), seen).toContain('x-radiography')
        expect(codes(plan.referrals), seen).toContain('treat-active-corrosion')
      }
      return rule('signs/iron-orange')
    },
  )

  printed(
    { check: 'practice 12', work: 'cci-notes-9-1', place: 'introduction', known: 'read', tolerance: inWords,
      says: 'pale green powder: kept apart and dry, tested by a conservator' },
    () => {
      const plan = planOf(dry, { material: 'copper-alloy', seen: ['pale-green-powder'] })
      expect(codes(plan.packing)).toEqual(expect.arrayContaining(['dry-box', 'keep-metals-apart']))
      expect(plan.requests.map(({ method }) => method)).toContain('chloride-test')
      return plan.requests.flatMap(({ basis }) => basis)
    },
  )

  printed(
    { check: 'corrosion 23', ...scottOnChloride, tolerance: inWords, says: 'waxy grey-green matter on copper may be nantokite' },
    () => {
      expect(ceiling({ material: 'copper-alloy', seen: ['waxy-grey-green'] })).toBe(35)
      expect(ceiling({ material: 'copper-alloy', seen: ['compact-green'] })).toBe(55)
      return rule('signs/copper-waxy')
    },
  )

  printed(
    { check: 'corrosion 22', ...scottOnStorage, tolerance: inWords, says: 'atacamite alone does not make bronze active' },
    () => {
      expect(ceiling({ material: 'bronze', seen: ['compact-green'] }, 'xrd:atacamite+paratacamite')).toBe(42)
      expect(ceiling({ material: 'bronze', seen: ['compact-green'] }, 'xrd:nantokite+cuprite')).toBe(35)
      return [rule('tested/basic-chlorides-found'), rule('signs/compact-green')]
    },
  )

  printed(
    { check: 'corrosion 24', ...scottOnChloride, tolerance: inWords, says: 'wholly mineralised: at rest, frail, and still worth keeping' },
    () => {
      const gone = { material: 'iron', seen: ['orange-brown-crust'], core: 'none', fragility: 'friable' } as const
      const plan = planOf({ ...dry, retention: 'discard-proposed' }, gone)
      expect(ceiling(gone)).toBe(35)
      expect(ceiling({ ...gone, core: 'partial' })).toBe(12)
      expect(codes(plan.handling)).toEqual(expect.arrayContaining(['support-fully', 'do-not-touch']))
      return line(plan.selection, 'no-metal-is-no-reason')
    },
  )

  printed(
    { check: 'open texts 4', ...chapter38, tolerance: inWords, says: 'no nantokite in the diffraction changes nothing' },
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
    { check: 'corrosion 63', work: 'wang-2020', place: 'abstract', known: 'read', tolerance: inWords,
      says: 'pale blue powder is not bronze disease by default: have it named' },
    () => {
      const plan = planOf(dry, { material: 'copper-alloy', seen: ['pale-blue-powder'] })
      expect(plan.storage.components[0]!.limit.max).toBe(42)
      expect(codes(plan.referrals)).not.toContain('treat-active-corrosion')
      expect(codes(plan.referrals)).toContain('judge-activity')
      expect(plan.requests.map(({ method }) => method)).toContain('xrd')
      return rule('signs/copper-pale-blue')
    },
  )

  printed(
    { check: 'open texts 62', work: 'bourgarit-2025-guidelines', place: 'chapter I.4 §1.2', known: 'read', tolerance: inWords,
      says: 'raised green along a seam: look for flux before calling it active' },
    () => {
      expect(ceiling({ material: 'brass', seen: ['raised-green-along-seam'] })).toBe(42)
      expect(ceiling({ material: 'brass', seen: ['warty-green'] })).toBe(35)
      return rule('signs/copper-seam')
    },
  )

  printed(
    { check: 'corrosion 65', work: 'nps-conserve-o-gram-6-3', place: null, known: 'read', tolerance: inWords,
      says: 'a white cloud shows chloride; a clear test proves nothing' },
    () => {
      const green = { material: 'bronze', seen: ['compact-green'] } as const
      expect(ceiling(green, 'silver-nitrate:positive')).toBe(42)
      expect(ceiling({ material: 'iron' }, 'silver-nitrate:negative')).toBe(12)
      expect(ceiling({ ...green, seen: ['pale-green-powder'] }, 'silver-nitrate:negative')).toBe(35)
      return [rule('tested/silver-nitrate-positive'), rule('tested/silver-nitrate-negative')]
    },
  )

  printed(
    { check: 'open texts 61', work: 'bourgarit-2025-guidelines', place: 'chapter I.3 §1', known: 'read', tolerance: inWords,
      says: 'iron inside bronze expands and cracks it: iron sets the humidity' },
    () => {
      const cored = planOf(dry, { material: 'bronze', seen: ['bright-orange-spots'] }, { material: 'iron', role: 'filling' })
      expect(cored.storage.rhPercent).toEqual({ min: 0, max: 12 })
      expect(cored.storage.components.map(({ limit }) => limit.max)).toEqual([35, 12])
      return rule('signs/sign-of-another-metal')
    },
  )
})
