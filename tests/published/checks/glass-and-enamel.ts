import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, daysToAct, exceptions, figure, firing, humidityOf, line } from '../../said.ts'
import { asBand, asLine, inWords, wholeNumber } from '../tolerance.ts'

const koob = { work: 'conservation-distlist', place: '2002/0697', known: 'read' } as const
const copy = { work: 'glass-textbook-copy', place: null, known: 'second-hand' } as const
const eggert = { work: 'eggert-fischer-formates', place: 'abstract', known: 'read' } as const

const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const glass = planOf(dry, { material: 'glass', seen: ['iridescence'] })

describe('glass and enamel', () => {
  printed(
    { check: 'corrosion 40', ...koob, tolerance: asBand, says: 'glass in cases run at 40–45 %, best 42 ± 2' },
    () => {
      expect(glass.storage.rhPercent).toEqual({ min: 40, max: 45 })
      expect(figure('glass-middle-rh').value).toBe(42)
      expect(figure('glass-middle-rh-tolerance').value).toBe(2)
      return humidityOf(glass)
    },
  )

  printed(
    {
      check: 'corrosion 40, excavated',
      ...copy,
      tolerance: wholeNumber,
      says: 'a textbook gives 42 % for excavated glass',
    },
    () => {
      expect(figure('glass-excavated-rh')).toMatchObject({ value: 42, unit: 'percent' })
      expect(glass.storage.rhPercent!.min).toBeLessThanOrEqual(42)
      expect(glass.storage.rhPercent!.max).toBeGreaterThanOrEqual(42)
      return figure('glass-excavated-rh')
    },
  )

  printed(
    { check: 'corrosion 41', ...eggert, tolerance: asLine, says: 'hydrated glass at 30 % is too dry' },
    () => {
      expect(firing(glass, 30).map(({ says }) => says.code)).toEqual(['too-dry'])
      expect(daysToAct(glass, 35)).toBeNull()
      return firing(glass, 30).map(({ says }) => says)
    },
  )

  printed(
    { check: 'corrosion 42', ...eggert, tolerance: asLine, says: 'glass with metal never below 35 %' },
    () => {
      const metals = ['copper-alloy', 'silver', 'gold', 'lead', 'pewter', 'zinc'] as const
      const plans = metals.map((material) =>
        planOf(dry, { material, seen: ['no-change-seen'] }, { material: 'enamel', role: 'inlay' }),
      )
      expect(exceptions(plans, (plan) => (plan.storage.rhPercent?.min ?? 0) >= 35)).toEqual([])
      expect(exceptions(plans, (plan) => codes(plan.packing).includes('no-dry-box'))).toEqual([])
      const withIron = planOf(dry, { material: 'iron' }, { material: 'glass', role: 'inlay' })
      expect(withIron.storage.rhPercent).toBeNull()
      expect(withIron.storage.interim!.rhPercent.min).toBeGreaterThanOrEqual(35)
      return humidityOf(withIron, 'inlay')
    },
  )

  printed(
    {
      check: 'practice 24',
      work: 'stapleton-freestone-bowman-1999',
      place: 'abstract',
      known: 'memory',
      tolerance: inWords,
      says: 'red or green glassy fill is enamel: no acid, no ultrasonic bath',
    },
    () => {
      const enamelled = { ...dry, proposed: ['acid-or-edta', 'ultrasonic'] } as const
      const { objections } = planOf(enamelled, { material: 'copper-alloy', evidence: ['red-fill'] })
      expect(line(objections, 'acid-fill')).toMatchObject({ level: 'block', precautionary: false })
      expect(line(objections, 'ultrasonic-metal').level).toBe('block')
      return line(objections, 'acid-fill')
    },
  )

  printed(
    {
      check: 'practice 26',
      work: 'furst-2016',
      place: 'abstract',
      known: 'memory',
      tolerance: inWords,
      says: 'a pale chalky inlay may be coral, which is carbonate: no acid',
    },
    () => {
      const { objections } = planOf(
        { ...dry, proposed: ['acid-or-edta'] },
        { material: 'copper-alloy', evidence: ['white-pegs'] },
        { material: 'coral', role: 'inlay' },
      )
      expect(line(objections, 'acid-calcareous')).toMatchObject({ level: 'block', components: ['inlay'] })
      expect(line(objections, 'acid-fill').level).toBe('block')
      return line(objections, 'acid-calcareous')
    },
  )
})
