import { describe, expect, it } from 'vitest'
import { gelFiguresOf, gelForPacking, packFiguresOf } from '../../lib/boxes/pack-gel.ts'
import { gelKgByQuantityEquation } from '../../lib/climate/gel-mass.ts'
import { saturationAbsoluteHumidityGPerM3 } from '../../lib/climate/humidity.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { aBox } from './pack-samples.ts'

const figures = packFiguresOf(knowledge)
const gel = gelForPacking(gelFiguresOf(knowledge), figures)
const room = { roomRhPercent: { min: 45, max: 55 }, roomTemperatureC: { min: 20, max: 20 } }
const box = aBox('B1', { ...room, airChangesPerDay: 0.5 })

describe('gel for a box', () => {
  it('is what the quantity equation of the trade gives, within two parts in a hundred', () => {
    const byTrade = gelKgByQuantityEquation(
      saturationAbsoluteHumidityGPerM3(20, 'water'),
      55 - 10,
      0.01,
      0.5,
      365,
      5,
      10,
    )
    expect(Math.abs(gel(box, { min: 0, max: 15 }) / byTrade - 1)).toBeLessThan(0.02)
  })

  it('is more the drier, the leakier and the larger the box', () => {
    const dry = { min: 0, max: 12 }
    expect(gel(box, dry)).toBeGreaterThan(gel(box, { min: 0, max: 20 }))
    expect(gel({ ...box, airChangesPerDay: 1 }, dry)).toBeCloseTo(2 * gel(box, dry), 2)
    expect(gel({ ...box, volumeL: 20 }, dry)).toBeCloseTo(2 * gel(box, dry), 9)
  })

  it('is none where the room never gets beyond what is borne', () => {
    expect(gel(box, { min: 0, max: 55 })).toBe(0)
  })

  it('holds both ends of a band in between: against a drier room as against a damper one', () => {
    const band = { min: 40, max: 50 }
    const at = (min: number, max: number) => gel({ ...box, roomRhPercent: { min, max } }, band)
    expect(at(30, 45)).toBeGreaterThan(0)
    expect(at(45, 60)).toBeCloseTo(at(30, 45), 9)
    expect(at(30, 60)).toBeCloseTo(at(30, 45), 9)
    expect(at(42, 48)).toBe(0)
  })

  it('is reckoned from what is supposed where nothing is written', () => {
    const unknown = { ...box, airChangesPerDay: null, roomRhPercent: null, roomTemperatureC: null }
    const { airChangesPerDay, roomRhPercent: rh, roomTemperatureC: t } = gelFiguresOf(knowledge)
    const written = {
      ...box,
      airChangesPerDay,
      roomRhPercent: { min: rh, max: rh },
      roomTemperatureC: { min: t, max: t },
    }
    expect(gel(unknown, { min: 0, max: 12 })).toBe(gel(written, { min: 0, max: 12 }))
  })
})
