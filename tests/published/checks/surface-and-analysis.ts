import { describe, expect } from 'vitest'
import { knowledge } from '../../knowledge-at-hand.ts'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { figure, line, side, request } from '../../said.ts'
import { inWords, printedDecimal, wholeNumber } from '../tolerance.ts'

const guidelines = (place: string) => ({ work: 'bourgarit-2025-guidelines', place, known: 'read' }) as const
const frenchSilver = { work: 'chasen-heginbotham-wolfe-2023', place: 'Table 2', known: 'read' } as const

const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const bearing = (
  evidence: NonNullable<Parameters<typeof planOf>[1]['evidence']>[number],
  material: 'copper-alloy' | 'silver' | 'iron' = 'copper-alloy',
) => planOf(dry, { material, evidence: [evidence] })

describe('what a surface may be, and who is asked', () => {
  printed(
    {
      check: 'practice 13',
      work: 'meeks-1986',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'a silver-grey skin was long called silver and is often tin: microscope and XRF',
    },
    () => {
      const sheen = bearing('white-metal-sheen')
      expect(request(sheen, 'xrf').question).toMatch(/tin, silver, arsenic/)
      return request(sheen, 'optical-microscopy').basis
    },
  )

  printed(
    {
      check: 'open texts 22',
      ...guidelines('chapter I.7, section 1.3.2'),
      tolerance: inWords,
      says: 'small white pieces are very often tinned: "white metal" until it is named',
    },
    () => {
      const [looked] = request(bearing('white-metal-sheen'), 'optical-microscopy').basis
      expect(looked!.text).toMatch(/white metal, not silvering/)
      return looked!
    },
  )

  printed(
    {
      check: 'open texts 19',
      ...frenchSilver,
      tolerance: printedDecimal,
      says: 'gilt silver held 1.2 to 6.4 % of mercury: 2.5 % counts as amalgam gilding',
    },
    () => {
      expect(figure('gilding-mercury-lowest')).toMatchObject({ value: 1.2, unit: 'percent' })
      expect(figure('gilding-mercury-highest')).toMatchObject({ value: 6.4, unit: 'percent' })
      expect(2.5).toBeGreaterThan(figure('gilding-mercury-lowest').value)
      expect(knowledge.contested['gilding-mercury']?.follows).toMatch(/less never rules it out/)
      return [figure('gilding-mercury-lowest'), figure('gilding-mercury-highest')]
    },
  )

  printed(
    {
      check: 'practice 15',
      ...frenchSilver,
      tolerance: wholeNumber,
      says: 'one lid read 1.2 outside and 6.4 inside: two spots',
    },
    () => {
      expect(figure('gilding-spots').value).toBe(2)
      const gold = request(bearing('gold-coloured-film', 'silver'), 'xrf')
      expect(gold.question).toMatch(/two spots/)
      return gold.basis
    },
  )

  printed(
    {
      check: 'practice 14',
      work: 'margreiter-2022',
      place: 'abstract',
      known: 'read',
      tolerance: wholeNumber,
      says: 'fire gilding typically holds 5 % of mercury or more',
    },
    () => {
      expect(figure('gilding-mercury-old-cut-off')).toMatchObject({ value: 5, unit: 'percent' })
      expect(figure('gilding-mercury-lowest').value).toBeLessThan(5)
      return [figure('gilding-mercury-old-cut-off'), side('gilding-mercury', 'margreiter-2022')]
    },
  )

  printed(
    {
      check: 'practice 16',
      work: 'mohr-pseudogilding',
      place: 'abstract',
      known: 'read',
      tolerance: inWords,
      says: 'a gold-coloured film from wet ground may be sulphide: not cleaned, gold looked for',
    },
    () => {
      const film = planOf(
        { ...dry, burial: ['intertidal'] },
        { material: 'copper-alloy', seen: ['brassy-film'], evidence: ['gold-coloured-film'] },
      )
      expect(line(film.handling, 'do-not-clean').also.map(({ rule }) => rule)).toContain(
        'handling-traces/false-gold',
      )
      expect(request(film, 'xrf').question).toMatch(/copper, iron and sulphur/)
      return request(film, 'xrf').basis
    },
  )

  printed(
    {
      check: 'practice 25',
      work: 'furst-2016',
      place: 'abstract',
      known: 'read',
      tolerance: wholeNumber,
      says: 'about 15 % of coral is named wrongly: Raman in place',
    },
    () => {
      expect(figure('raman-coral-wrong-share')).toMatchObject({ value: 15, unit: 'percent' })
      return request(bearing('white-pegs'), 'raman').basis
    },
  )
})
