import { describe, expect, test } from 'vitest'
import { daysToLimit } from '../../lib/climate/enclosure-constant.ts'
import {
  solveEnclosure,
  sorptionOf,
  straightSorption,
  type Sorption,
} from '../../lib/climate/enclosure-solved.ts'
import { timeConstantDays, type Enclosure } from '../../lib/climate/enclosure.ts'
import { dubininAstakhov, toth } from '../../lib/climate/isotherm-equations.ts'

const box: Enclosure = {
  volumeL: 10,
  gelKg: 0.5,
  reservoirGPerKgPercent: 5,
  airChangesPerDay: 0.5,
  temperatureC: 20,
}
const room = () => 55

/** The equation of Thu 2013 written out anew and followed below what it was fitted to. */
const dubinin: Sorption = {
  known: { from: 0.1, to: 99.9 },
  contentGPerKg: (rh) =>
    998.2 * 0.327 * Math.exp(-(((8.314462618 * 293.15 * Math.log(100 / rh)) / 4384) ** 1.35)),
  slopeGPerKgPercent: (rh) => (dubinin.contentGPerKg(rh + 1e-3) - dubinin.contentGPerKg(rh - 1e-3)) / 2e-3,
}

describe('a box whose gel bends', () => {
  test.each([
    ['Dubinin–Astakhov', dubinin, 15, 858],
    ['Dubinin–Astakhov', dubinin, 20, 1269],
    ['Tóth', sorptionOf(toth, 20), 15, 766],
    ['Tóth', sorptionOf(toth, 20), 20, 1131],
  ] as const)('by %s comes to a limit later than the straight line has it', (_, sorption, limit, days) => {
    const run = solveEnclosure(box, sorption, room, 5, limit, 4000)
    expect(run.ended).toBe('at-limit')
    expect(Math.round(run.days)).toBe(days)
    expect(run.rhPercent).toBeCloseTo(limit, 6)
    expect(run.days).toBeGreaterThan(daysToLimit(timeConstantDays(box), 55, 5, limit)!)
  })

  test('stops at the end of the days it is given', () => {
    const run = solveEnclosure(box, straightSorption(5), room, 5, 15, 300)
    expect([run.ended, run.days]).toEqual(['at-end', 300])
    expect(run.rhPercent).toBeLessThan(15)
  })

  test('says when it leaves what is known of the gel, above, below, or from the start', () => {
    const above = solveEnclosure(box, sorptionOf(toth, 20), () => 99, 60, 95, 1e5)
    expect([above.ended, above.rhPercent]).toEqual(['beyond', expect.closeTo(83.19, 2)])
    const below = solveEnclosure(box, sorptionOf(dubininAstakhov, 20), () => 2, 8, 15, 1e5)
    expect([below.ended, below.rhPercent]).toEqual(['beyond', expect.closeTo(5.6, 6)])
    expect(solveEnclosure(box, sorptionOf(dubininAstakhov, 20), room, 5, 15, 1000)).toMatchObject({
      ended: 'beyond',
      days: 0,
    })
    expect(solveEnclosure(box, sorptionOf(dubininAstakhov, 60), room, 10, 15, 1000)).toMatchObject({
      ended: 'beyond',
      days: 0,
    })
  })

  test('over its limit already takes no time', () => {
    expect(solveEnclosure(box, straightSorption(5), room, 16, 15, 1000)).toMatchObject({
      ended: 'at-limit',
      days: 0,
    })
  })

  test('the first crossing of a room that comes and goes counts, not a later one', () => {
    const swinging = (day: number) => (day % 60 < 30 ? 90 : 5)
    const leaky = { ...box, gelKg: 0.01, airChangesPerDay: 5 }
    const run = solveEnclosure(leaky, straightSorption(5), swinging, 5, 15, 1000)
    const tau = timeConstantDays(leaky)
    expect(run.days).toBeCloseTo(daysToLimit(tau, 90, 5, 15)!, 4)
  })
})
