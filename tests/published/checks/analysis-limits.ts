import { describe, expect } from 'vitest'
import { knowledge } from '../../knowledge-at-hand.ts'
import type { Method } from '../../../lib/knowledge/knowledge.ts'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, figure, request } from '../../said.ts'
import { asBand, inWords, printedDecimal, wholeNumber } from '../tolerance.ts'

const guidelines = (place: string) => ({ work: 'bourgarit-2025-guidelines', place, known: 'read' }) as const
const damascus = (place: string) => ({ work: 'kantarelou-2017', place, known: 'read' }) as const

const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const bearing = (
  evidence: NonNullable<Parameters<typeof planOf>[1]['evidence']>[number],
  material: 'copper-alloy' | 'silver' | 'iron' = 'copper-alloy',
) => planOf(dry, { material, evidence: [evidence] })
const method = (id: string): Method => knowledge.methods[id]!

describe('what an analysis can say', () => {
  printed(
    {
      check: 'practice 50',
      work: 'hse-ionising-radiation',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'hand-held XRF needs registration and training',
    },
    () => {
      expect(request(bearing('white-metal-sheen'), 'xrf').cautions.join(' ')).toMatch(/trained, registered/)
      return method('xrf').cautions
    },
  )

  printed(
    {
      check: 'practice 51',
      ...damascus('table 46.2'),
      tolerance: wholeNumber,
      says: 'XRF through a patina reads the patina, not the alloy',
    },
    () => {
      expect(method('xrf').cannot).toMatch(/260/)
      return method('xrf')
    },
  )

  printed(
    {
      check: 'open texts 26',
      ...damascus('table 46.2'),
      tolerance: 'one in the last digit: 16.4 over 6.3 is 2.603, printed as 260 %',
      says: 'tin read 16.4 for a true 6.3 %: 2.6 times',
    },
    () => {
      expect(figure('xrf-tin-over-read-high')).toMatchObject({ value: 260, unit: 'percent' })
      expect(Math.abs((16.4 / 6.3) * 100 - figure('xrf-tin-over-read-high').value)).toBeLessThan(1)
      return figure('xrf-tin-over-read-high')
    },
  )

  printed(
    {
      check: 'open texts 28',
      ...guidelines('II.5, section 2.1'),
      tolerance: asBand,
      says: 'XRF sees 30–80 µm of copper alloy, a crust may be 600: the metal is not reached',
    },
    () => {
      expect(figure('xrf-depth-low')).toMatchObject({ value: 30, unit: 'micrometre' })
      expect(figure('xrf-depth-high')).toMatchObject({ value: 80, unit: 'micrometre' })
      expect(figure('crust-depth-leaded-statue').value).toBe(600)
      return figure('xrf-depth-high')
    },
  )

  printed(
    {
      check: 'open texts 30',
      work: 'tykot-2017',
      place: 'chapter 36',
      known: 'read',
      tolerance: printedDecimal,
      says: 'zinc of 1.6 % at one spot came from a treatment: no brass',
    },
    () => {
      expect(figure('xrf-zinc-residue')).toMatchObject({ value: 1.6, unit: 'percent' })
      return [figure('xrf-zinc-residue')]
    },
  )

  printed(
    {
      check: 'open texts 48',
      ...guidelines('II.1, section 2'),
      tolerance: wholeNumber,
      says: 'an examination wants 1500 lx and a colour rendering of 95',
    },
    () => {
      expect(figure('examination-light')).toMatchObject({ value: 1500, unit: 'lux' })
      expect(figure('examination-colour-rendering').value).toBe(95)
      expect(figure('office-light')).toMatchObject({ value: 500, unit: 'lux' })
      return [figure('examination-light'), ...request(bearing('cut-lines'), 'photography').basis]
    },
  )

  printed(
    {
      check: 'open texts 5',
      work: 'argyropoulos-2017',
      place: 'chapter 38',
      known: 'read',
      tolerance: asBand,
      says: 'that diffraction took 15 mg of powder and 20–60 minutes',
    },
    () => {
      expect(figure('xrd-powder')).toMatchObject({ value: 15, unit: 'milligram' })
      expect(figure('xrd-run-low')).toMatchObject({ value: 20, unit: 'minute' })
      expect(figure('xrd-run-high')).toMatchObject({ value: 60, unit: 'minute' })
      expect(codes(method('xrd').cautions)).toContain('ionising-radiation')
      return [figure('xrd-powder'), method('xrd')]
    },
  )
})
