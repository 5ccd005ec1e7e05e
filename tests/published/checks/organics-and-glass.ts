import { describe, expect } from 'vitest'
import { planOf } from '../../record-at-hand.ts'
import { printed } from '../printed.ts'
import { codes, daysToAct, figure, firing, humidityOf, line } from '../said.ts'
import { asBand, asLine, inWords, wholeNumber } from '../tolerance.ts'

const koob = { work: 'conservation-distlist', place: '2002/0697', known: 'read' } as const
const copy = { work: 'glass-textbook-copy', place: null, known: 'second-hand' } as const
const eggert = { work: 'eggert-fischer-formates', place: 'abstract', known: 'read' } as const
const standards = { work: 'padfield-conservation-physics', place: 'relative humidity standards', known: 'read' } as const
const manual = (place: string) => ({ work: 'wa-museum-2017', place, known: 'read' }) as const

const dry = { state_now: 'dry', burial: ['free-draining'] } as const
const alone = (material: 'glass' | 'wood' | 'leather' | 'textile' | 'bone' | 'ivory' | 'horn' | 'antler') =>
  planOf(dry, { material })
const limit = (material: Parameters<typeof alone>[0]) => alone(material).storage.components[0]!.limit
const glass = planOf(dry, { material: 'glass', seen: ['iridescence'] })

describe('organic parts, glass and enamel', () => {
  printed({ check: 'corrosion 43', ...manual('ivory; appendix 2'), tolerance: asBand, says: 'bone, antler, horn, ivory at 45–55 %' }, () => {
    for (const material of ['bone', 'antler', 'horn', 'ivory'] as const) {
      expect(limit(material), material).toEqual({ min: 45, max: 55 })
    }
    return humidityOf(alone('ivory'))
  })

  printed({ check: 'corrosion 44, leather', ...manual('leather; appendix 2'), tolerance: asBand, says: 'undyed leather at 45–65 %' }, () => {
    expect(limit('leather')).toEqual({ min: 45, max: 65 })
    return humidityOf(alone('leather'))
  })

  printed({ check: 'corrosion 44, wood', ...manual('wood'), tolerance: asBand, says: 'wood at 40–60 %' }, () => {
    expect(limit('wood')).toEqual({ min: 40, max: 60 })
    return humidityOf(alone('wood'))
  })

  printed({ check: 'corrosion 44, textile', ...manual('appendix 2'), tolerance: asBand, says: 'textile at 45–55 %' }, () => {
    expect(limit('textile')).toEqual({ min: 45, max: 55 })
    return humidityOf(alone('textile'))
  })

  printed(
    { check: 'corrosion 45', ...standards, tolerance: asLine, says: 'organic matter below 25 % may split, however briefly' },
    () => {
      expect(figure('organic-splits-rh')).toMatchObject({ value: 25, unit: 'percent' })
      expect(daysToAct(alone('wood'), 24)).toBe(1)
      expect(firing(alone('wood'), 24).map(({ says }) => says.code)).toContain('too-dry')
      return firing(alone('wood'), 24).map(({ says }) => says)
    },
  )

  printed({ check: 'corrosion 46', ...manual('ivory'), tolerance: wholeNumber, says: 'no more than 5 % and 4 °C of change in a day' }, () => {
    expect(figure('organic-daily-rh-swing')).toMatchObject({ value: 5, unit: 'percentage-point' })
    expect(figure('organic-daily-temperature-swing')).toMatchObject({ value: 4, unit: 'kelvin-difference' })
    const said = humidityOf(alone('bone'))
    expect(said.flatMap(({ figures }) => figures)).toContain('organic-daily-rh-swing')
    return [figure('organic-daily-temperature-swing'), ...said]
  })

  printed(
    { check: 'corrosion 47', ...manual('wet materials, preventive'), tolerance: asLine, says: 'dried wood from wet ground below 55 %: acid above' },
    () => {
      const drained = planOf({ ...dry, burial: ['waterlogged'] }, { material: 'wood' })
      expect(drained.storage.components[0]!.limit).toEqual({ min: 40, max: 55 })
      return humidityOf(drained)
    },
  )

  printed({ check: 'corrosion 40', ...koob, tolerance: asBand, says: 'glass in cases run at 40–45 %, best 42 ± 2' }, () => {
    expect(glass.storage.rhPercent).toEqual({ min: 40, max: 45 })
    expect(figure('glass-middle-rh').value).toBe(42)
    expect(figure('glass-middle-rh-tolerance').value).toBe(2)
    return humidityOf(glass)
  })

  printed({ check: 'corrosion 40, excavated', ...copy, tolerance: wholeNumber, says: 'a textbook gives 42 % for excavated glass' }, () => {
    expect(figure('glass-excavated-rh')).toMatchObject({ value: 42, unit: 'percent' })
    expect(glass.storage.rhPercent!.min).toBeLessThanOrEqual(42)
    expect(glass.storage.rhPercent!.max).toBeGreaterThanOrEqual(42)
    return figure('glass-excavated-rh')
  })

  printed({ check: 'corrosion 41', ...eggert, tolerance: asLine, says: 'hydrated glass at 30 % is too dry' }, () => {
    expect(daysToAct(glass, 30)).toBe(1)
    expect(firing(glass, 30).map(({ says }) => says.code)).toEqual(['too-dry'])
    expect(daysToAct(glass, 35)).toBeNull()
    return firing(glass, 30).map(({ says }) => says)
  })

  printed({ check: 'corrosion 42', ...eggert, tolerance: asLine, says: 'glass with metal never below 35 %' }, () => {
    for (const material of ['copper-alloy', 'silver', 'gold', 'lead', 'pewter', 'zinc'] as const) {
      const both = planOf(dry, { material, seen: ['no-change-seen'] }, { material: 'enamel', role: 'inlay' })
      expect(both.storage.rhPercent!.min, material).toBeGreaterThanOrEqual(35)
      expect(codes(both.packing), material).toContain('no-dry-box')
    }
    const withIron = planOf(dry, { material: 'iron' }, { material: 'glass', role: 'inlay' })
    expect(withIron.storage.rhPercent).toBeNull()
    expect(withIron.storage.interim!.rhPercent.min).toBeGreaterThanOrEqual(35)
    return humidityOf(withIron, 'inlay')
  })

  printed(
    { check: 'practice 24', work: 'stapleton-freestone-bowman-1999', place: 'abstract', known: 'read', tolerance: inWords,
      says: 'red or green glassy fill is enamel: no acid, no ultrasonic bath' },
    () => {
      const enamelled = { ...dry, proposed: ['acid-or-edta', 'ultrasonic'] } as const
      const { objections } = planOf(enamelled, { material: 'copper-alloy', evidence: ['red-fill'] })
      expect(line(objections, 'acid-fill')).toMatchObject({ level: 'block', precautionary: false })
      expect(line(objections, 'ultrasonic-metal').level).toBe('block')
      return line(objections, 'acid-fill')
    },
  )

  printed(
    { check: 'practice 26', work: 'furst-2016', place: 'abstract', known: 'read', tolerance: inWords,
      says: 'a pale chalky inlay may be coral, which is carbonate: no acid' },
    () => {
      const { objections } = planOf({ ...dry, proposed: ['acid-or-edta'] }, { material: 'copper-alloy', evidence: ['white-pegs'] },
        { material: 'coral', role: 'inlay' })
      expect(line(objections, 'acid-calcareous')).toMatchObject({ level: 'block', components: ['inlay'] })
      expect(line(objections, 'acid-fill').level).toBe('block')
      return line(objections, 'acid-calcareous')
    },
  )
})
