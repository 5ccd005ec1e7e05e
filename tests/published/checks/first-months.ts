import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, exceptions, line, methods } from '../../said.ts'
import { inWords } from '../tolerance.ts'

const drying = {
  work: 'cardiff-guidance-storage',
  place: 'Immediate post-excavation actions',
  known: 'read',
} as const
const note = (number: number) =>
  ({ work: 'finds-scheme-advice-notes', place: `note ${number}`, known: 'read' }) as const
const library = (place: string | null) => ({ work: 'nlm-2018', place, known: 'read' }) as const

const fromDryGround = { state_now: 'damp', burial: ['free-draining'] } as const
const lump = planOf(
  { ...fromDryGround, object_kind: 'unidentified-lump' },
  { material: 'iron', seen: ['soil-concretion'] },
)
const flooded = planOf(
  { state_now: 'wet', wetted_by: 'flood', burial: ['free-draining'], proposed: ['freeze'] },
  { material: 'iron' },
)

describe('the first months of a find', () => {
  printed(
    {
      check: 'practice 5',
      ...note(1),
      tolerance: inWords,
      says: 'nails already washed: record the deviation, dry, not again',
    },
    () => {
      const nails = planOf(
        { ...fromDryGround, object_kind: 'nail', quantity: 12, done_already: ['washed'] },
        { material: 'iron' },
      )
      expect(line(nails.objections, 'washed-already').level).toBe('warn')
      expect(codes(nails.handling)).toContain('record-what-was-done')
      expect(codes(nails.handling)).toContain('air-dry-openly')
      return line(nails.objections, 'washed-already')
    },
  )

  printed({ check: 'practice 44', ...library(null), tolerance: inWords, says: 'metal is not frozen' }, () => {
    expect(line(flooded.objections, 'freeze-metal')).toMatchObject({ level: 'block', to: 'freeze' })
    expect(codes(flooded.handling)).toContain('do-not-freeze')
    return line(flooded.objections, 'freeze-metal')
  })

  printed(
    {
      check: 'practice 66',
      ...drying,
      known: 'memory',
      tolerance: inWords,
      says: 'iron not in its dry box after two weeks is chased',
    },
    () => {
      const waiting = planOf({ state_now: 'dry', packed_in: ['perforated-bag'] }, { material: 'iron' })
      expect(waiting.urgency).toBe('weeks')
      expect(line(waiting.steps, 'dry-box').due).toBe('2026-12-09')
      return waiting.urgencyBasis
    },
  )

  printed(
    {
      check: 'corrosion 66',
      work: 'fell-mould-white-2006',
      place: 'preface',
      known: 'read',
      tolerance: inWords,
      says: 'metal finds are X-rayed as a matter of course after the excavation',
    },
    () => {
      const metals = ['iron', 'copper-alloy', 'silver', 'pewter'] as const
      const requests = (material: (typeof metals)[number]) =>
        methods(planOf({ state_now: 'dry' }, { material }))
      expect(exceptions(metals, (metal) => requests(metal).includes('x-radiography'))).toEqual([])
      return lump.requests.flatMap(({ basis }) => basis)
    },
  )
})
