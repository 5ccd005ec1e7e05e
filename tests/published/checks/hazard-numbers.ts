import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { figure, line, saying } from '../../said.ts'
import { printedDecimal, wholeNumber } from '../tolerance.ts'

const wipes = { work: 'brookhaven-2017', place: 'attachment 9.3', known: 'read' } as const
const masks = { work: 'digikulth-2026', place: 'Hazardous substances', known: 'read' } as const
const dry = { state_now: 'dry', burial: ['free-draining'] } as const

describe('numbers about dangers', () => {
  printed(
    {
      check: 'open texts 51',
      ...wipes,
      tolerance: printedDecimal,
      says: 'lead on a wipe of 100 cm²: 50 µg at work, 22 elsewhere, 4.3 where people eat',
    },
    () => {
      const [working, ordinary, eating] = ['working', 'ordinary', 'eating'].map((area) =>
        figure(`lead-wipe-${area}-area`),
      )
      expect([working!.value, ordinary!.value, eating!.value]).toEqual([50, 22, 4.3])
      expect(30).toBeLessThan(working!.value)
      expect(30).toBeGreaterThan(ordinary!.value)
      expect(5).toBeGreaterThan(eating!.value)
      const powder = line(planOf(dry, { material: 'lead', seen: ['white-powder'] }).cautions, 'lead')
      expect(powder.figures).toEqual(saying('lead-wipe-ordinary-area'))
      return powder
    },
  )

  printed(
    {
      check: 'open texts 53',
      ...wipes,
      tolerance: printedDecimal,
      says: 'outside the laboratory cadmium 3.3 and arsenic 6.7 µg on a wipe',
    },
    () => {
      expect(figure('cadmium-wipe-ordinary-area')).toMatchObject({ value: 3.3 })
      expect(figure('arsenic-wipe-ordinary-area')).toMatchObject({ value: 6.7 })
      expect(figure('cadmium-wipe-ordinary-area').unit).toBe(figure('lead-wipe-ordinary-area').unit)
      return [figure('cadmium-wipe-ordinary-area'), figure('arsenic-wipe-ordinary-area')]
    },
  )

  printed(
    { check: 'open texts 54', ...masks, tolerance: wholeNumber, says: 'dust wants a mask FFP2, mould FFP3' },
    () => {
      expect(figure('mask-class-dust').value).toBe(2)
      expect(figure('mask-class-mould').value).toBe(3)
      const mould = line(
        planOf({ ...dry, hazards_noticed: ['mould'] }, { material: 'leather' }).cautions,
        'mould',
      )
      expect(mould.figures).toContain('mask-class-mould')
      const dust = line(planOf({ ...dry, proposed: ['dry-brush'] }, { material: 'iron' }).cautions, 'dust')
      expect(dust.figures).toContain('mask-class-dust')
      return [mould, dust]
    },
  )

  printed(
    {
      check: 'practice 49, dust',
      work: 'berlin-museum-dust-2019',
      place: 'abstract',
      known: 'read',
      tolerance: wholeNumber,
      says: 'dust of old collections held up to 3507 mg/kg of arsenic and 32 of mercury',
    },
    () => {
      expect(figure('museum-dust-arsenic')).toMatchObject({ value: 3507, unit: 'mg-per-kilogram' })
      expect(figure('museum-dust-mercury')).toMatchObject({ value: 32, unit: 'mg-per-kilogram' })
      return [figure('museum-dust-arsenic'), figure('museum-dust-mercury')]
    },
  )

  printed(
    {
      check: 'practice 62, line',
      work: 'nih-oxygen-deficiency',
      place: null,
      known: 'read',
      tolerance: printedDecimal,
      says: 'air below 19.5 % of oxygen is dangerous',
    },
    () => {
      expect(figure('oxygen-hazard-line')).toMatchObject({ value: 19.5, unit: 'percent' })
      return figure('oxygen-hazard-line')
    },
  )
})
