import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, daysToAct, exceptions, figure, firing, humidityOf, line, rule, side } from '../../said.ts'
import { asBand, asLine, inWords, wholeNumber } from '../tolerance.ts'

const canada = { work: 'cci-notes-9-2', place: 'first page', known: 'read' } as const
const casaletto = {
  work: 'casaletto-basilissi-2017',
  place: 'section “Bronze disease”',
  // The line itself is cited there to Angelucci 1978.
  known: 'second-hand',
} as const
const scottOnAir = { work: 'scott-1990', place: 'section 4', known: 'read' } as const
const scottOnStorage = { work: 'scott-1990', place: 'section 5', known: 'read' } as const
const chamber = { work: 'argyropoulos-2017', place: null, known: 'read' } as const

const dry = { state_now: 'dry' } as const
const stable = planOf({ ...dry, burial: ['free-draining'] }, { material: 'brass', seen: ['compact-green'] })
const active = planOf(dry, { material: 'bronze', seen: ['pale-green-powder'] })
const suspected = planOf({ ...dry, burial: ['marine'] }, { material: 'bronze', seen: ['compact-green'] })
const said = (plan: typeof stable) => plan.storage.act.map(({ says }) => says)

describe('humidity of copper alloy', () => {
  printed(
    { check: 'corrosion 16', ...canada, tolerance: wholeNumber, says: 'corroding metal below 35 %' },
    () => {
      const metals = ['lead', 'pewter', 'silver', 'zinc', 'bronze'] as const
      const ceiling = (material: (typeof metals)[number]) =>
        planOf(dry, { material, seen: ['powder-in-bag'] }).storage.rhPercent?.max
      expect(exceptions(metals, (metal) => ceiling(metal) === 35)).toEqual([])
      return humidityOf(active)
    },
  )

  printed(
    {
      check: 'practice 38',
      work: 'cci-notes-9-2',
      place: null,
      known: 'read',
      tolerance: inWords,
      says: 'and apart from the rest',
    },
    () => {
      expect(codes(active.packing)).toContain('keep-metals-apart')
      return line(active.packing, 'keep-metals-apart')
    },
  )

  printed(
    { check: 'corrosion 17', ...canada, tolerance: asBand, says: 'stable metal may live at 35–55 %' },
    () => {
      expect(figure('stable-metal-rh-low').value).toBe(35)
      expect(stable.storage.components[0]!.limit).toEqual({ min: 0, max: 55 })
      expect([36, 45, 55].map((rh) => daysToAct(stable, rh))).toEqual([null, null, null])
      return [figure('stable-metal-rh-low'), ...humidityOf(stable)]
    },
  )

  printed(
    { check: 'corrosion 18', ...canada, tolerance: asLine, says: 'stable metal above 55 % is moved' },
    () => {
      expect(daysToAct(stable, 58)).not.toBeNull()
      expect(daysToAct(stable, 55)).toBeNull()
      return firing(stable, 58).map(({ says }) => says)
    },
  )

  printed(
    { check: 'practice 37', ...canada, tolerance: asLine, says: 'stable brass at 45 % is well kept' },
    () => {
      expect(stable.storage.rhPercent).toEqual({ min: 0, max: 45 })
      expect(daysToAct(stable, 45)).toBeNull()
      return humidityOf(stable)
    },
  )

  printed(
    {
      check: 'corrosion 19, metals',
      work: 'wa-museum-2017',
      place: 'metals, preventive conservation',
      known: 'read',
      tolerance: wholeNumber,
      says: 'most metals below 45 %: what stable copper alloy should have',
    },
    () => {
      expect(stable.storage.components[0]!.preference?.max).toBe(45)
      return humidityOf(stable)
    },
  )

  printed(
    {
      check: 'corrosion 20',
      ...scottOnStorage,
      tolerance: asBand,
      says: '42–46 % does for most bronzes, problem pieces lower',
    },
    () => {
      expect(figure('bronze-most-rh-low').value).toBe(42)
      expect(figure('bronze-most-rh-high').value).toBe(46)
      expect(suspected.storage.components[0]!.limit).toEqual({ min: 0, max: 42 })
      return [figure('bronze-most-rh-high'), ...humidityOf(suspected)]
    },
  )

  printed(
    {
      check: 'corrosion 21',
      ...scottOnAir,
      tolerance: wholeNumber,
      says: 'an older museum rule: unstable bronze below 39 %',
    },
    () => {
      expect(figure('bronze-unstable-museum-rh')).toMatchObject({ value: 39, unit: 'percent' })
      expect(active.storage.rhPercent!.max).toBeLessThan(39)
      return [figure('bronze-unstable-museum-rh'), side('bronze-humidity', 'scott-1990')]
    },
  )

  printed(
    {
      check: 'open texts 1',
      ...casaletto,
      tolerance: asLine,
      says: 'cuprous chloride reacts above 35 %: 36 is over the line, 34 under it',
    },
    () => {
      expect(active.storage.rhPercent).toEqual({ min: 0, max: 35 })
      expect(daysToAct(active, 34)).toBeNull()
      expect(daysToAct(active, 35)).toBeNull()
      expect(daysToAct(active, 36)).not.toBeNull()
      return humidityOf(active)
    },
  )

  printed(
    {
      check: 'corrosion 25',
      ...chamber,
      tolerance: wholeNumber,
      says: 'a day at 70 % shows the activity of sea copper (one fragment)',
    },
    () => {
      expect(figure('copper-chamber-rh')).toMatchObject({ value: 70, unit: 'percent' })
      expect(figure('copper-chamber-hours')).toMatchObject({ value: 24, unit: 'hour' })
      expect(daysToAct(suspected, 70)).toBeLessThan(daysToAct(stable, 70)!)
      return [figure('copper-chamber-rh'), ...said(suspected)]
    },
  )

  printed(
    {
      check: 'open texts 3',
      ...chamber,
      tolerance: inWords,
      says: 'a treated piece that stayed quiet is not thereby safe',
    },
    () => {
      const treated = planOf(
        {
          ...dry,
          burial: ['marine'],
          done_already: ['benzotriazole'],
          watched_days: 400,
          stored_rh_percent: 45,
        },
        { material: 'bronze', seen: ['no-change-seen'] },
      )
      expect(figure('copper-treated-quiet-years')).toMatchObject({ value: 1, unit: 'year' })
      expect(treated.storage.components[0]!.limit.max).toBe(42)
      return [figure('copper-treated-quiet-years'), rule('activity/copper-from-salt')]
    },
  )

  printed(
    {
      check: 'corrosion 37',
      work: 'paterakis-2003',
      place: 'section read',
      known: 'read',
      tolerance: asBand,
      says: '400–500 ppb of acetic acid in wooden cupboards: copper out of wood',
    },
    () => {
      expect(figure('cupboard-acetic-low')).toMatchObject({ value: 400, unit: 'ppb' })
      expect(figure('cupboard-acetic-high')).toMatchObject({ value: 500, unit: 'ppb' })
      expect(stable.storage.air).toContain('no-acid-vapour')
      expect(codes(stable.packing)).toContain('no-wood-or-card')
      return line(stable.storage.basis, 'no-acid-vapour')
    },
  )
})
