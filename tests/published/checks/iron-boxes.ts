import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, daysToAct, figure, firing, side } from '../../said.ts'
import { asLine, printedDecimal, wholeNumber } from '../tolerance.ts'

const nails = { work: 'watkinson-rimmer-emmerson-2019', place: 'abstract', known: 'read' } as const
const cardiff = { work: 'cardiff-guidance-projects', place: null, known: 'read' } as const
const museumManual = {
  work: 'wa-museum-2017',
  place: 'metals, preventive conservation',
  known: 'read',
} as const
const bags = { work: 'paterakis-mariano-2013', place: 'opening pages', known: 'read' } as const

const nail = planOf(
  { state_now: 'dry', object_kind: 'nail' },
  { material: 'iron', seen: ['bright-orange-spots'] },
)
const said = nail.storage.act.map(({ says }) => says)
/** Days [d] a box may wait at a humidity; endlessly where it wants nobody. */
const wait = (rhPercent: number) => daysToAct(nail, rhPercent) ?? Number.POSITIVE_INFINITY
const asked = (rhPercent: number) => codes(firing(nail, rhPercent).map(({ says }) => says))

describe('a box of iron at a humidity', () => {
  printed(
    { check: 'practice 33', ...museumManual, tolerance: asLine, says: 'at 12 % it is as it should be' },
    () => {
      expect(asked(12)).toEqual([])
      expect(nail.storage.rhPercent?.max).toBe(12)
      return said
    },
  )

  printed(
    {
      check: 'practice 34',
      ...museumManual,
      tolerance: asLine,
      says: 'at 25 % the gel is due, and no more than that',
    },
    () => {
      expect(asked(25)).toEqual(['renew-gel'])
      return said
    },
  )

  printed(
    {
      check: 'corrosion 7',
      work: 'watkinson-lewis-2005',
      place: 'abstract',
      known: 'read',
      tolerance: wholeNumber,
      says: 'corrosion is appreciable at 25 %, so somebody is called before that',
    },
    () => {
      expect(figure('iron-appreciable-rh')).toMatchObject({ value: 25, unit: 'percent' })
      expect(daysToAct(nail, 25)).not.toBeNull()
      return figure('iron-appreciable-rh')
    },
  )

  printed(
    { check: 'corrosion 8', ...nails, tolerance: wholeNumber, says: 'at 20 % a nail corrodes negligibly' },
    () => {
      expect(figure('nails-negligible-rh')).toMatchObject({ value: 20, unit: 'percent' })
      expect(asked(20)).toEqual(['renew-gel'])
      return [figure('nails-negligible-rh'), ...said]
    },
  )

  printed(
    { check: 'corrosion 9', ...nails, tolerance: wholeNumber, says: 'at 40 % a nail still corrodes slowly' },
    () => {
      expect(figure('nails-slow-rh')).toMatchObject({ value: 40, unit: 'percent' })
      expect(wait(40)).toBeLessThan(wait(20))
      expect(wait(40)).toBeGreaterThan(wait(60))
      return figure('nails-slow-rh')
    },
  )

  printed(
    {
      check: 'practice 35',
      ...cardiff,
      tolerance: asLine,
      says: 'between 30 and 50 % the rate rises slowly',
    },
    () => {
      expect(asked(30)).not.toContain('dry-again')
      expect(wait(31)).toBeLessThan(wait(30))
      expect(wait(50)).toBe(wait(31))
      return said
    },
  )

  printed(
    {
      check: 'practice 36',
      ...cardiff,
      tolerance: asLine,
      says: 'above 50 % iron corrodes very fast',
    },
    () => {
      expect(wait(51)).toBeLessThan(wait(50))
      expect(wait(60)).toBe(wait(51))
      return said
    },
  )

  printed(
    { check: 'corrosion 10', ...nails, tolerance: wholeNumber, says: 'Roman nails corrode fast at 60 %' },
    () => {
      expect(figure('nails-fast-rh-roman')).toMatchObject({ value: 60, unit: 'percent' })
      expect(wait(60)).toBeLessThan(wait(40))
      return figure('nails-fast-rh-roman')
    },
  )

  printed(
    { check: 'corrosion 11', ...nails, tolerance: wholeNumber, says: 'medieval nails corrode fast at 70 %' },
    () => {
      expect(figure('nails-fast-rh-medieval')).toMatchObject({ value: 70, unit: 'percent' })
      expect(wait(70)).toBeLessThan(wait(40))
      return figure('nails-fast-rh-medieval')
    },
  )

  printed(
    { check: 'corrosion 12', ...nails, tolerance: wholeNumber, says: '129 nails were measured' },
    () => {
      expect(figure('nails-tested')).toMatchObject({ value: 129, unit: 'count' })
      return figure('nails-tested')
    },
  )

  printed(
    {
      check: 'corrosion 15',
      work: 'watkinson-emmerson-seifert-2016',
      place: 'abstract',
      known: 'read',
      tolerance: wholeNumber,
      says: 'treated cast iron from the sea must not stand at 55 %',
    },
    () => {
      const shot = planOf(
        { state_now: 'dry', burial: ['marine'], done_already: ['desalinated'] },
        { material: 'cast-iron' },
      )
      expect(figure('cast-iron-unsuitable-rh')).toMatchObject({ value: 55, unit: 'percent' })
      expect(daysToAct(shot, 55)).toBe(Math.min(...shot.storage.act.map(({ withinDays }) => withinDays)))
      return [figure('cast-iron-unsuitable-rh'), side('iron-with-organic', 'watkinson-emmerson-seifert-2016')]
    },
  )

  printed(
    {
      check: 'corrosion 29',
      ...bags,
      tolerance: wholeNumber,
      says: '3 h with absorber, 14 h with gel, to 10 %',
    },
    () => {
      expect(figure('absorber-bag-hours')).toMatchObject({ value: 3, unit: 'hour' })
      expect(figure('gel-bag-hours')).toMatchObject({ value: 14, unit: 'hour' })
      expect(figure('test-bag-target-rh')).toMatchObject({ value: 10, unit: 'percent' })
      return [figure('absorber-bag-hours'), figure('gel-bag-hours')]
    },
  )

  printed(
    { check: 'corrosion 30', ...bags, tolerance: printedDecimal, says: 'oxygen-free means below 0.1 %' },
    () => {
      expect(figure('oxygen-free-percent')).toMatchObject({ value: 0.1, unit: 'percent' })
      return figure('oxygen-free-percent')
    },
  )
})
