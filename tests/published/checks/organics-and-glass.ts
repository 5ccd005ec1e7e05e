import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { figure, firing, humidityOf } from '../../said.ts'
import { asBand, asLine, wholeNumber } from '../tolerance.ts'

const standards = {
  work: 'padfield-conservation-physics',
  place: 'relative humidity standards',
  known: 'read',
} as const
const manual = (place: string) => ({ work: 'wa-museum-2017', place, known: 'read' }) as const

const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const alone = (material: 'glass' | 'wood' | 'leather' | 'textile' | 'bone' | 'ivory' | 'horn' | 'antler') =>
  planOf(dry, { material })
const limit = (material: Parameters<typeof alone>[0]) => alone(material).storage.components[0]!.limit

describe('organic parts', () => {
  printed(
    {
      check: 'corrosion 43',
      ...manual('ivory; appendix 2'),
      tolerance: asBand,
      says: 'bone, antler, horn, ivory at 45–55 %',
    },
    () => {
      const { min, max } = limit('bone')
      expect([min, max]).toEqual([45, 55])
      expect((['antler', 'horn', 'ivory'] as const).map(limit)).toEqual([
        limit('bone'),
        limit('bone'),
        limit('bone'),
      ])
      return humidityOf(alone('ivory'))
    },
  )

  printed(
    {
      check: 'corrosion 44, leather',
      ...manual('leather; appendix 2'),
      tolerance: asBand,
      says: 'undyed leather at 45–65 %',
    },
    () => {
      expect(limit('leather')).toEqual({ min: 45, max: 65 })
      return humidityOf(alone('leather'))
    },
  )

  printed(
    { check: 'corrosion 44, wood', ...manual('wood'), tolerance: asBand, says: 'wood at 40–60 %' },
    () => {
      expect(limit('wood')).toEqual({ min: 40, max: 60 })
      return humidityOf(alone('wood'))
    },
  )

  printed(
    {
      check: 'corrosion 44, textile',
      ...manual('appendix 2'),
      tolerance: asBand,
      says: 'textile at 45–55 %',
    },
    () => {
      expect(limit('textile')).toEqual({ min: 45, max: 55 })
      return humidityOf(alone('textile'))
    },
  )

  printed(
    {
      check: 'corrosion 45',
      ...standards,
      tolerance: asLine,
      says: 'organic matter below 25 % may split, however briefly',
    },
    () => {
      expect(figure('organic-splits-rh')).toMatchObject({ value: 25, unit: 'percent' })
      expect(firing(alone('wood'), 24).map(({ says }) => says.code)).toContain('too-dry')
      return firing(alone('wood'), 24).map(({ says }) => says)
    },
  )

  printed(
    {
      check: 'corrosion 46',
      ...manual('ivory'),
      tolerance: wholeNumber,
      says: 'no more than 5 % and 4 °C of change in a day',
    },
    () => {
      expect(figure('organic-daily-rh-swing')).toMatchObject({ value: 5, unit: 'percentage-point' })
      expect(figure('organic-daily-temperature-swing')).toMatchObject({ value: 4, unit: 'kelvin-difference' })
      const said = humidityOf(alone('bone'))
      expect(said.flatMap(({ figures }) => figures)).toContain('organic-daily-rh-swing')
      return [figure('organic-daily-temperature-swing'), ...said]
    },
  )

  printed(
    {
      check: 'corrosion 47',
      ...manual('wet materials, preventive'),
      tolerance: asLine,
      says: 'dried wood from wet ground below 55 %: acid above',
    },
    () => {
      const drained = planOf({ ...dry, burial: ['waterlogged'] }, { material: 'wood' })
      expect(drained.storage.components[0]!.limit).toEqual({ min: 40, max: 55 })
      return humidityOf(drained)
    },
  )
})
