import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, line, methods, saying } from '../../said.ts'
import { inWords } from '../tolerance.ts'

const inlaid = { work: 'conservation-distlist', place: '2013/0220', known: 'read' } as const
const perlik = { work: 'conservation-distlist', place: '2013/0254', known: 'read' } as const
const masaryk = { work: 'masaryk-organic-remains', place: 'abstract', known: 'read' } as const

const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const iron = { material: 'iron', seen: ['orange-brown-crust'] } as const
const buckle = { material: 'iron', evidence: ['bright-specks-in-rust'] } as const

describe('iron with inlay, plating or traces', () => {
  printed(
    {
      check: 'practice 8',
      ...inlaid,
      tolerance: inWords,
      says: 'bright specks in the rust of a buckle: X-ray now, no cleaning',
    },
    () => {
      const plan = planOf({ ...dry, object_kind: 'buckle', proposed: ['investigative-cleaning'] }, buckle)
      expect(codes(plan.handling)).toContain('do-not-clean')
      expect(plan.requests[0]?.method).toBe('x-radiography')
      expect(line(plan.objections, 'radiograph-before-cleaning').level).toBe('block')
      return [line(plan.handling, 'do-not-clean'), line(plan.objections, 'radiograph-before-cleaning')]
    },
  )

  printed(
    {
      check: 'practice 9',
      ...perlik,
      tolerance: inWords,
      says: 'a tinned spur and a bath: blocked, for the tin dissolves',
    },
    () => {
      const spur = { material: 'iron', evidence: ['white-metal-sheen'], core: 'solid' } as const
      const plan = planOf(
        {
          ...dry,
          object_kind: 'spur',
          proposed: ['alkaline-desalination'],
          tests: ['radiograph:core-solid'],
        },
        spur,
      )
      const objection = line(plan.objections, 'desalination-plated')
      expect(objection).toMatchObject({ level: 'block', precautionary: false, to: 'alkaline-desalination' })
      const listed = planOf({ ...dry, proposed: ['alkaline-desalination'] }, iron, {
        material: 'tin',
        role: 'coating',
      })
      expect(line(listed.objections, 'desalination-alkali-metal')).toMatchObject({
        level: 'block',
        components: ['coating'],
      })
      return objection
    },
  )

  printed(
    {
      check: 'practice 10',
      ...inlaid,
      tolerance: inWords,
      says: 'inlay and gold foil came off in cleaning: stop until a conservator decides',
    },
    () => {
      const foil = { material: 'iron', evidence: ['gold-coloured-film', 'bright-specks-in-rust'] } as const
      const plan = planOf(
        { ...dry, proposed: ['investigative-cleaning'], tests: ['radiograph:bright-lines'] },
        foil,
      )
      expect(line(plan.objections, 'record-before-cleaning')).toMatchObject({
        level: 'block',
        precautionary: false,
      })
      expect(codes(plan.referrals)).toContain('decide-uncovering')
      return line(plan.objections, 'record-before-cleaning')
    },
  )

  printed(
    {
      check: 'practice 11',
      ...masaryk,
      tolerance: inWords,
      says: 'a ghost of textile on iron: photograph in low light, no brush, a specialist',
    },
    () => {
      const plan = planOf(
        { ...dry, proposed: ['dry-brush'] },
        { material: 'iron', evidence: ['weave-pattern'] },
      )
      expect(codes(plan.handling)).toEqual(saying('do-not-brush', 'photograph-first'))
      expect(methods(plan)).toEqual(saying('photography', 'optical-microscopy'))
      expect(line(plan.objections, 'brush-traces').level).toBe('block')
      return line(plan.referrals, 'ask-organics-specialist')
    },
  )
})
