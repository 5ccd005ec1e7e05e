import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, exceptions, line, rule, saying } from '../../said.ts'
import { inWords } from '../tolerance.ts'

const recognising = { work: 'cci-notes-9-1', place: 'opening', known: 'read' } as const
const assessment = {
  work: 'sha-conservation-faqs',
  place: 'identification and assessment',
  known: 'read',
} as const
const scottOnChloride = { work: 'scott-1990', place: 'section 2', known: 'read' } as const

type Part = Parameters<typeof planOf>[1]
const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const ceiling = (part: Part, ...tests: readonly string[]) =>
  planOf({ ...dry, tests }, part).storage.components[0]!.limit.max

describe('signs that metal is corroding', () => {
  printed(
    {
      check: 'practice 3',
      ...recognising,
      tolerance: inWords,
      says: 'loose flakes or powder beside it: assume active',
    },
    () => {
      const shedding = (material: Part['material']) => planOf(dry, { material, seen: ['loose-flakes'] })
      const metals = ['iron', 'copper-alloy', 'lead', 'pewter', 'zinc'] as const
      expect(exceptions(metals, (metal) => shedding(metal).urgency === 'days')).toEqual([])
      expect(
        exceptions(metals, (metal) => codes(shedding(metal).referrals).includes('treat-active-corrosion')),
      ).toEqual([])
      return planOf(dry, { material: 'iron', seen: ['powder-in-bag'] }).urgencyBasis
    },
  )

  printed(
    {
      check: 'practice 2',
      ...assessment,
      tolerance: inWords,
      says: 'orange drops, blisters or bright spots: the iron is corroding',
    },
    () => {
      const signs = ['orange-droplets', 'dry-orange-blisters', 'bright-orange-spots'] as const
      const plans = signs.map((seen) => planOf(dry, { material: 'iron', seen: [seen] }))
      expect(exceptions(plans, (plan) => codes(plan.packing).includes('dry-box'))).toEqual([])
      expect(
        exceptions(plans, (plan) => plan.requests.some(({ method }) => method === 'x-radiography')),
      ).toEqual([])
      expect(exceptions(plans, (plan) => codes(plan.referrals).includes('treat-active-corrosion'))).toEqual(
        [],
      )
      return rule('signs/iron-orange')
    },
  )

  printed(
    {
      check: 'corrosion 24',
      ...scottOnChloride,
      tolerance: inWords,
      says: 'wholly mineralised bronze is at rest and frail; iron that is so stays dry until a conservator has decided',
    },
    () => {
      const gone = {
        material: 'iron',
        seen: ['orange-brown-crust'],
        core: 'none',
        fragility: 'friable',
      } as const
      const plan = planOf({ ...dry, retention: 'discard-proposed' }, gone)
      expect(ceiling(gone)).toBe(12)
      expect(codes(plan.referrals)).toEqual(saying('mineralised-iron'))
      expect(codes(plan.handling)).toEqual(saying('support-fully', 'do-not-touch'))
      return line(plan.selection, 'no-metal-is-no-reason')
    },
  )

  printed(
    {
      check: 'corrosion 65',
      work: 'nps-conserve-o-gram-6-3',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'a white cloud shows chloride; a clear test proves nothing',
    },
    () => {
      const green = { material: 'bronze', seen: ['compact-green'] } as const
      expect(ceiling(green, 'silver-nitrate:positive')).toBe(42)
      expect(ceiling({ material: 'iron' }, 'silver-nitrate:negative')).toBe(12)
      expect(ceiling({ ...green, seen: ['pale-green-powder'] }, 'silver-nitrate:negative')).toBe(35)
      return [rule('tested/silver-nitrate-positive'), rule('tested/silver-nitrate-negative')]
    },
  )

  printed(
    {
      check: 'open texts 61',
      work: 'bourgarit-2025-guidelines',
      place: 'chapter I.3 §1',
      known: 'read',
      tolerance: inWords,
      says: 'iron inside bronze expands and cracks it: orange on bronze is a sign',
    },
    () => {
      const cored = planOf(
        dry,
        { material: 'bronze', seen: ['bright-orange-spots'] },
        { material: 'iron', role: 'filling' },
      )
      expect(cored.storage.rhPercent).toEqual({ min: 0, max: 12 })
      expect(cored.storage.components.map(({ limit }) => limit.max)).toEqual([35, 12])
      return rule('signs/sign-of-another-metal')
    },
  )
})
