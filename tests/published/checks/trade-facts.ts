import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, line, methods, rule } from '../../said.ts'
import { inWords } from '../tolerance.ts'

const trade = { work: 'common-practice', place: null, known: 'common-practice', tolerance: inWords } as const
const dry = { state_now: 'dry', burial: ['free-draining'] } as const

describe('facts of the trade', () => {
  printed(
    {
      check: 'trade 1',
      ...trade,
      says: 'what lay behind openwork was meant to be seen: soil stays in the holes',
    },
    () => {
      const plate = planOf(dry, { material: 'copper-alloy', evidence: ['openwork'] })
      expect(line(plate.handling, 'leave-soil-on').text).toMatch(/look there first for leather/)
      return line(plate.handling, 'leave-soil-on')
    },
  )

  printed(
    { check: 'trade 2', ...trade, says: 'ornament under corrosion shows in raking light, not by picking' },
    () => {
      const mount = planOf(dry, { material: 'copper-alloy', evidence: ['cast-relief'] })
      expect(line(mount.handling, 'do-not-clean').text).toMatch(/raking light/)
      expect(methods(mount)).toContain('photography')
      return line(mount.handling, 'do-not-clean')
    },
  )

  printed(
    {
      check: 'trade 3',
      ...trade,
      says: 'decoration dates a fitting: what is uncovered is decided, not tried',
    },
    () => {
      const fitting = planOf(
        { ...dry, object_kind: 'strap-fitting' },
        { material: 'copper-alloy', evidence: ['glassy-fill'] },
      )
      return line(fitting.referrals, 'decide-uncovering')
    },
  )

  printed(
    { check: 'trade 4', ...trade, says: 'loop, tongue and rivets of several metals are not parted' },
    () => {
      const buckle = planOf(
        { ...dry, object_kind: 'buckle' },
        { material: 'copper-alloy' },
        { material: 'iron', role: 'pin' },
      )
      expect(codes(buckle.handling)).toContain('do-not-take-apart')
      expect(codes(planOf(dry, { material: 'copper-alloy' }).handling)).not.toContain('do-not-take-apart')
      return rule('handling-make-up/mixed-metals-whole')
    },
  )
})
