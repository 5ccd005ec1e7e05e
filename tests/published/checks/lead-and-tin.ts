import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, figure, line, methods, saying, side } from '../../said.ts'
import { asBand, inWords, printedDecimal, wholeNumber } from '../tolerance.ts'

const tetreault = { work: 'tetreault-2003', place: 'abstract', known: 'read' } as const
const inAcetic = { work: 'niklasson-2005', place: 'abstract', known: 'read' } as const
const inCold = { work: 'niklasson-2008', place: 'abstract', known: 'read' } as const
const knight = { work: 'conservation-distlist', place: '1998/1293', known: 'read' } as const
const leadPosts = {
  work: 'conservation-distlist',
  place: '2000/1439, 2004/1337 and 2004/0285',
  known: 'read',
} as const
const leadPages = { work: 'hazards-in-collections', place: 'lead', known: 'read' } as const

const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const inOak = planOf(
  { ...dry, packed_in: ['wood'], stored_rh_percent: 40 },
  { material: 'lead', seen: ['white-powder'] },
)

describe('lead, tin and the air around them', () => {
  printed(
    {
      check: 'corrosion 31',
      ...tetreault,
      tolerance: printedDecimal,
      says: 'formic acid darkens lead at 0.04 ppm, weighs at 0.1',
    },
    () => {
      expect(figure('lead-formic-darkens')).toMatchObject({ value: 0.04, unit: 'ppm' })
      expect(figure('lead-formic-gains')).toMatchObject({ value: 0.1, unit: 'ppm' })
      return [figure('lead-formic-darkens'), figure('lead-formic-gains')]
    },
  )

  printed(
    {
      check: 'corrosion 32',
      ...tetreault,
      tolerance: printedDecimal,
      says: 'copper shows formic acid above 0.4 ppm: 0.3 is below',
    },
    () => {
      expect(figure('copper-formic-look')).toMatchObject({ value: 0.4, unit: 'ppm' })
      expect(figure('lead-formic-gains').value).toBeLessThan(figure('copper-formic-look').value)
      return figure('copper-formic-look')
    },
  )

  printed(
    {
      check: 'corrosion 33',
      ...tetreault,
      tolerance: wholeNumber,
      says: 'formaldehyde up to 3 ppm adds nothing on lead and copper',
    },
    () => {
      expect(figure('formaldehyde-harmless')).toMatchObject({ value: 3, unit: 'ppm' })
      return figure('formaldehyde-harmless')
    },
  )

  printed(
    {
      check: 'corrosion 34',
      ...inCold,
      tolerance: asBand,
      says: 'in acid air lead hardly minds 50 or 95 %: drying does not save it',
    },
    () => {
      expect(figure('lead-vapour-rh-low').value).toBe(50)
      expect(figure('lead-vapour-rh-high').value).toBe(95)
      expect(codes(inOak.packing)).toContain('repack')
      expect(inOak.storage.air).toContain('no-acid-vapour')
      return line(inOak.storage.basis, 'no-acid-vapour')
    },
  )

  printed(
    {
      check: 'corrosion 35',
      ...inCold,
      tolerance: wholeNumber,
      says: 'lead in acid air corrodes faster at 4 than at 22 °C',
    },
    () => {
      expect(figure('lead-vapour-cold')).toMatchObject({ value: 4, unit: 'degree-celsius' })
      expect(figure('lead-vapour-warm')).toMatchObject({ value: 22, unit: 'degree-celsius' })
      expect(inOak.storage.temperatureC.min).toBeGreaterThan(4)
      return line(inOak.storage.basis, 'lead-not-cold')
    },
  )

  printed(
    {
      check: 'corrosion 36',
      ...inAcetic,
      tolerance: asBand,
      says: 'acetic acid was tried on lead from 170 to 1100 ppb',
    },
    () => {
      expect(figure('lead-acetic-low')).toMatchObject({ value: 170, unit: 'ppb' })
      expect(figure('lead-acetic-high')).toMatchObject({ value: 1100, unit: 'ppb' })
      return [figure('lead-acetic-low'), figure('lead-acetic-high')]
    },
  )

  printed(
    {
      check: 'corrosion 38',
      ...tetreault,
      tolerance: inWords,
      says: 'white powder on lead in wood: acid air, take the wood away',
    },
    () => {
      expect(codes(inOak.packing)).toEqual(saying('no-wood-or-card', 'repack'))
      expect(methods(inOak)).toContain('xrd')
      return inOak.requests.flatMap(({ basis }) => basis)
    },
  )

  printed(
    {
      check: 'practice 28',
      ...leadPosts,
      tolerance: wholeNumber,
      says: 'lead in oak moves to polyethylene or steel; a crate did it in 20 years',
    },
    () => {
      expect(figure('lead-crate-years')).toMatchObject({ value: 20, unit: 'year' })
      const repack = line(inOak.packing, 'repack')
      expect(repack.text).toMatch(/polyethylene or steel/)
      return [repack, side('plywood-cases', 'conservation-distlist')]
    },
  )

  printed(
    { check: 'practice 29', ...leadPosts, tolerance: inWords, says: 'no buffered board against lead' },
    () => {
      const barred = line(planOf(dry, { material: 'lead' }).packing, 'no-wood-or-card')
      expect(barred.text).toMatch(/buffered board/)
      return barred
    },
  )

  printed(
    {
      check: 'practice 27',
      ...leadPages,
      tolerance: inWords,
      says: 'white powder of lead is poison: gloves, no dust, a label',
    },
    () => {
      const powder = line(inOak.cautions, 'lead')
      expect(powder.level).toBe('warn')
      expect(powder.text).toMatch(/Mark the bag/)
      expect(codes(inOak.handling)).toContain('wear-gloves')
      expect(line(planOf(dry, { material: 'lead', seen: ['grey-skin'] }).cautions, 'lead').level).toBe('note')
      return powder
    },
  )

  printed(
    {
      check: 'corrosion 68',
      ...knight,
      tolerance: printedDecimal,
      says: 'tin changes below 13.2 °C: pewter is not chilled',
    },
    () => {
      expect(figure('tin-changes-temperature')).toMatchObject({ value: 13.2, unit: 'degree-celsius' })
      expect(planOf(dry, { material: 'pewter' }).storage.temperatureC.min).toBe(13.2)
      expect(planOf(dry, { material: 'iron' }).storage.temperatureC.min).toBeNull()
      return line(planOf(dry, { material: 'pewter' }).storage.basis, 'tin-not-cold')
    },
  )

  printed(
    {
      check: 'corrosion 70',
      work: 'tetreault-2003-pollutants',
      place: null,
      known: 'memory',
      tolerance: printedDecimal,
      says: 'targets for ten years: acetic acid 100, hydrogen sulphide 0.1 µg/m³; remembered, so no rule rests on them',
    },
    () => {
      expect(figure('target-acetic')).toMatchObject({ value: 100, unit: 'ug-per-cubic-metre' })
      expect(figure('target-sulphide')).toMatchObject({ value: 0.1, unit: 'ug-per-cubic-metre' })
      expect([figure('target-acetic').kept, figure('target-sulphide').kept]).not.toContain(undefined)
      return [figure('target-acetic'), figure('target-sulphide')]
    },
  )
})
