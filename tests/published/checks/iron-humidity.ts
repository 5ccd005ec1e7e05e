import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { daysToAct, figure, humidityOf, rule } from '../../said.ts'
import { asLine, inWords, wholeNumber } from '../tolerance.ts'

const watkinsonLewis = { work: 'watkinson-lewis-2005', place: 'abstract', known: 'read' } as const
const museumManual = {
  work: 'wa-museum-2017',
  place: 'metals, preventive conservation',
  known: 'read',
} as const
const lewis = { work: 'lewis-2009', place: 'abstract', known: 'read' } as const
const turgoose = { work: 'turgoose-1982', place: 'as later papers report it', known: 'second-hand' } as const
const nails = { work: 'watkinson-rimmer-emmerson-2019', place: 'abstract', known: 'read' } as const
const cardiff = { work: 'cardiff-guidance-projects', place: null, known: 'read' } as const
const stahl = { work: 'stahl-2003', place: 'abstract', known: 'read' } as const

const dry = { state_now: 'dry' } as const
const active = () => planOf(dry, { material: 'iron', seen: ['bright-orange-spots'] })
/** Iron that was watched for more than two years in air damp enough to show corrosion, and stayed as it was. */
const atRest = (...tests: readonly string[]) =>
  planOf(
    { ...dry, burial: ['free-draining'], watched_days: 800, stored_rh_percent: 40, tests },
    { material: 'iron', seen: ['no-change-seen'] },
  )

describe('humidity of iron', () => {
  printed(
    {
      check: 'corrosion 1',
      ...watkinsonLewis,
      tolerance: wholeNumber,
      says: 'chloride-bearing iron at 12 % or below',
    },
    () => {
      const nobodyLooked = planOf(dry, { material: 'iron' })
      expect(active().storage.rhPercent).toEqual({ min: 0, max: 12 })
      expect(nobodyLooked.storage.rhPercent).toEqual({ min: 0, max: 12 })
      return humidityOf(active())
    },
  )

  printed(
    {
      check: 'corrosion 2',
      ...museumManual,
      tolerance: wholeNumber,
      says: 'both chloride phases: 12 % or below',
    },
    () => {
      const plan = planOf({ ...dry, tests: ['xrd:akaganeite+ferrous-chloride'] }, { material: 'iron' })
      expect(figure('iron-both-chlorides-rh-ceiling').value).toBe(12)
      expect(plan.storage.rhPercent?.max).toBe(12)
      return humidityOf(plan)
    },
  )

  printed(
    {
      check: 'corrosion 3',
      ...museumManual,
      tolerance: asLine,
      says: 'a manual accepts chloride iron up to 15 %',
    },
    () => {
      expect(daysToAct(active(), 15)).toBeNull()
      expect(daysToAct(active(), 16)).not.toBeNull()
      return active().storage.act.map(({ says }) => says)
    },
  )

  printed(
    {
      check: 'corrosion 4',
      ...lewis,
      tolerance: wholeNumber,
      says: 'unwashed akaganeite corrodes iron from 15 % up',
    },
    () => {
      expect(figure('iron-akaganeite-onset-rh')).toMatchObject({ value: 15, unit: 'percent' })
      expect(active().storage.rhPercent!.max).toBeLessThan(15)
      return [figure('iron-akaganeite-onset-rh'), ...humidityOf(active())]
    },
  )

  printed(
    {
      check: 'corrosion 5, newer',
      ...lewis,
      tolerance: wholeNumber,
      says: 'ferrous chloride corrodes iron from 22 % up',
    },
    () => {
      expect(figure('iron-ferrous-chloride-onset-rh')).toMatchObject({ value: 22, unit: 'percent' })
      expect(active().storage.rhPercent!.max).toBeLessThan(22)
      return figure('iron-ferrous-chloride-onset-rh')
    },
  )

  printed(
    {
      check: 'corrosion 5, older',
      ...turgoose,
      tolerance: wholeNumber,
      says: 'older papers put that onset at 20 %',
    },
    () => {
      expect(figure('iron-ferrous-chloride-onset-rh-older')).toMatchObject({ value: 20, unit: 'percent' })
      expect(active().storage.rhPercent!.max).toBeLessThan(20)
      return figure('iron-ferrous-chloride-onset-rh-older')
    },
  )

  printed(
    {
      check: 'corrosion 13',
      ...nails,
      tolerance: inWords,
      says: 'chloride alone foretells nothing for one object',
    },
    () => {
      const inSoil = (soil_chloride_mg_kg: number) =>
        planOf({ ...dry, soil_chloride_mg_kg }, { material: 'iron', seen: ['orange-brown-crust'] })
      expect(inSoil(1).storage.rhPercent).toEqual(inSoil(5000).storage.rhPercent)
      expect(inSoil(1).urgency).toBe(inSoil(5000).urgency)
      expect(inSoil(1).storage.rhPercent?.max).toBe(12)
      return rule('activity/iron-suspected')
    },
  )

  printed(
    { check: 'corrosion 14', ...cardiff, tolerance: asLine, says: 'iron below 30 % is at low risk' },
    () => {
      expect(atRest().storage.rhPercent).toEqual({ min: 0, max: 30 })
      expect(daysToAct(atRest(), 28)).toBeNull()
      return humidityOf(atRest())
    },
  )

  printed(
    {
      check: 'corrosion 19, iron',
      ...museumManual,
      tolerance: asLine,
      says: 'most iron below 35 %: the limit at rest',
    },
    () => {
      expect(atRest().storage.components[0]!.limit).toEqual({ min: 0, max: 35 })
      expect(daysToAct(atRest(), 35)).toBeNull()
      expect(daysToAct(atRest(), 36)).not.toBeNull()
      return humidityOf(atRest())
    },
  )

  printed(
    {
      check: 'corrosion 64',
      ...stahl,
      tolerance: inWords,
      says: 'akaganeite is a mark of chloride: back to 12 %',
    },
    () => {
      expect(atRest('xrd:goethite').storage.rhPercent?.max).toBe(30)
      expect(atRest('xrd:goethite+akaganeite').storage.rhPercent?.max).toBe(12)
      return rule('tested/akaganeite-found')
    },
  )
})
