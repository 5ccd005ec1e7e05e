import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, figure, line, rule, side } from '../../said.ts'
import { inWords, wholeNumber } from '../tolerance.ts'

const chamber = { work: 'argyropoulos-2017', place: null, known: 'read' } as const
const sulphides = { work: 'remazeilles-2013', place: 'abstract', known: 'read' } as const
const tylecote = { work: 'tylecote-1979', place: 'abstract', known: 'read' } as const
const underWater = (place: string) =>
  ({ work: 'nautical-archaeology-society-2009', place, known: 'read' }) as const

type Ground = NonNullable<Parameters<typeof planOf>[0]['burial']>[number]
const bronzeFrom = (ground: Ground) =>
  planOf({ state_now: 'dry', burial: [ground] }, { material: 'bronze', seen: ['compact-green'] })
const wetShoe = planOf(
  { state_now: 'wet', burial: ['waterlogged'] },
  { material: 'iron', role: 'rivet' },
  { material: 'leather' },
)

describe('the ground a find lay in, and how long it can wait', () => {
  printed(
    {
      check: 'open texts 2',
      ...chamber,
      tolerance: inWords,
      says: 'copper from the sea turned active in damp air: held for salty without a spot',
    },
    () => {
      const ceiling = (ground: Ground) => bronzeFrom(ground).storage.components[0]!.limit.max
      expect((['marine', 'intertidal', 'saline'] as const).map(ceiling)).toEqual([42, 42, 42])
      expect(ceiling('free-draining')).toBe(55)
      return rule('activity/copper-from-salt')
    },
  )

  printed(
    {
      check: 'corrosion 59',
      ...tylecote,
      tolerance: inWords,
      says: 'peat is acid and kind to bronze: a contested matter',
    },
    () => {
      expect(bronzeFrom('peat').storage.rhPercent).toEqual(bronzeFrom('calcareous').storage.rhPercent)
      return side('peat', 'tylecote-1979')
    },
  )

  printed(
    {
      check: 'corrosion 60',
      ...tylecote,
      tolerance: inWords,
      says: 'acid ground is hard on bronze, yet what is seen decides',
    },
    () => {
      expect(bronzeFrom('acid-sand').storage.rhPercent).toEqual(bronzeFrom('peat').storage.rhPercent)
      return side('peat', 'tylecote-1979')
    },
  )

  printed(
    {
      check: 'corrosion 57',
      ...sulphides,
      tolerance: inWords,
      says: 'iron sulphides beside wood turn acid on drying: pale yellow bloom is active, a brassy glint no gilding',
    },
    () => {
      const bloom = planOf(
        { state_now: 'dry', burial: ['waterlogged'] },
        { material: 'iron', seen: ['pale-yellow-bloom'] },
      )
      expect(codes(bloom.referrals)).toContain('treat-active-corrosion')
      const glint = planOf(
        { state_now: 'dry', burial: ['waterlogged'] },
        { material: 'iron', seen: ['brassy-glint'] },
      )
      expect(codes(glint.referrals)).not.toContain('treat-active-corrosion')
      expect(line(glint.handling, 'do-not-clean').text).toMatch(/no gilding/)
      return [...bloom.requests, ...glint.requests]
        .filter(({ method }) => method === 'xrd')
        .flatMap(({ basis }) => basis)
    },
  )

  printed(
    {
      check: 'corrosion 52, hours',
      work: 'hamilton-1999',
      place: 'file 1',
      known: 'read',
      tolerance: inWords,
      says: 'organic matter from water may crumble within hours of drying',
    },
    () => {
      expect(wetShoe.urgency).toBe('hours')
      expect(line(wetShoe.steps, 'keep-wet').by).toBe('now')
      return wetShoe.urgencyBasis
    },
  )

  printed(
    {
      check: 'corrosion 52, two weeks',
      ...underWater('p. 158'),
      tolerance: wholeNumber,
      says: 'cold water is for days, two weeks at most, before treatment',
    },
    () => {
      expect(figure('wet-treatment-within-days')).toMatchObject({ value: 14, unit: 'day' })
      expect(line(wetShoe.steps, 'hand-over').due).toBe('2026-12-09')
      return line(wetShoe.steps, 'hand-over')
    },
  )

  printed(
    {
      check: 'corrosion 52, labels',
      ...underWater('p. 153'),
      tolerance: inWords,
      says: 'two waterproof labels go with it',
    },
    () => {
      const labels = line(wetShoe.packing, 'label-inside-and-out')
      expect(labels.text).toMatch(/Two waterproof labels/)
      return labels
    },
  )
})
