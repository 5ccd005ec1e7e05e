import { describe, expect, it } from 'vitest'
import { forecast } from '../../lib/boxes/forecast.ts'
import { timeToLimit } from '../../lib/boxes/forecast-limit.ts'
import { learnLeak } from '../../lib/boxes/learn.ts'
import { seasonalDaysToLimit } from '../../lib/climate/seasonal.ts'
import { timeConstantDays } from '../../lib/climate/enclosure.ts'
import { about, box, orderly, readings, room, strip, sure, trade, truthAfter } from './learn-samples.ts'

const exact = { ...orderly, airChangesPerDay: sure(0.5, 0), from: 'written' as const }
const known = learnLeak(box, room, [], exact)
const guessed = learnLeak(box, room, [], trade)
const read = learnLeak(box, room, readings(120), trade)

describe('the fan', () => {
  it('is the closed solution where everything is known', () => {
    const fan = forecast(box, room, known, { from: box.startedOn, days: 365 })
    for (const day of [0, 30, 90, 180, 365])
      expect(Math.abs(fan.p50[day]! / truthAfter(day) - 1)).toBeLessThan(0.01)
  })

  it('has a value for every day, both ends among them, and its lines in order', () => {
    const fan = forecast(box, room, read, { from: read.asOf, days: 200 })
    expect(fan.days).toHaveLength(201)
    expect(fan.days[0]).toBe(read.asOf)
    fan.days.forEach((_, at) => {
      const lines = [fan.p10, fan.p25, fan.p50, fan.p75, fan.p90].map((line) => line[at]!)
      expect(lines.toSorted((a, b) => a - b)).toEqual(lines)
    })
  })

  it('begins with the last sighting: what was before is known', () => {
    const fan = forecast(box, room, read, { from: box.startedOn, days: 10 })
    expect(fan.days[0]).toBe(read.asOf)
  })

  it('of no days is the day itself', () => {
    const fan = forecast(box, room, read, { from: read.asOf + 3, days: 0 })
    expect(fan.days).toEqual([read.asOf + 3])
    expect(fan.p50[0]).toBeGreaterThan(fan.p10[0]!)
  })

  it('opens ahead, and is narrower for what was read', () => {
    const opened = (of: typeof read, day: number) => {
      const fan = forecast(box, room, of, { from: read.asOf, days: 365 })
      return fan.p90[day]! - fan.p10[day]!
    }
    expect(opened(read, 200)).toBeGreaterThan(opened(read, 20))
    expect(opened(read, 200)).toBeLessThan(0.6 * opened(guessed, 200))
  })

  it('never leaves what humidity can be', () => {
    const dry = { ...box, startRhPercent: about(0.5, 3) }
    const damp = { ...room, meanRhPercent: about(97, 8) }
    const fan = forecast(dry, damp, learnLeak(dry, damp, [], trade), { from: box.startedOn, days: 3000 })
    expect(Math.min(...fan.p10)).toBe(0)
    expect(Math.max(...fan.p90)).toBe(100)
  })
})

describe('the day the limit is reached', () => {
  const limit = (of: typeof read, limitRhPercent: number, days?: number) =>
    timeToLimit(box, room, of, {
      limitRhPercent,
      from: of.asOf,
      ...(days === undefined ? {} : { days }),
    })

  it('is that of the closed solution where everything is known', () => {
    const enclosure = { ...box, reservoirGPerKgPercent: 5, airChangesPerDay: 0.5 }
    const season = { meanRhPercent: 55, swingRhPercent: 8, highestOnDay: room.highestOn }
    const days = seasonalDaysToLimit(timeConstantDays(enclosure), season, 5, box.startedOn, 15)!
    const { p10, p50, p90 } = limit(known, 15)
    expect(p50! - box.startedOn).toBeCloseTo(days, -0.5)
    expect(p90! - p10!).toBeLessThan(8)
  })

  it('comes later for a higher limit', () => {
    const days = [8, 12, 15, 20].map((value) => limit(read, value).p50!)
    expect(days.toSorted((a, b) => a - b)).toEqual(days)
  })

  it('early, likely and late stand in this order', () => {
    const { p10, p50, p90 } = limit(read, 20)
    expect(p10).toBeLessThan(p50!)
    expect(p50).toBeLessThan(p90!)
  })

  it('is unknown beyond what was looked ahead, with the chance that it comes at all', () => {
    const { p10, p50, p90, until, overAtAll } = limit(read, 30, 60)
    expect([p10, p50, p90]).toEqual([null, null, null])
    expect(until).toBe(read.asOf + 60)
    expect(overAtAll).toBeLessThan(0.1)
  })

  it('is today for a box that is over already', () => {
    const found = limit(learnLeak(box, room, [strip(100, 42)], trade), 15)
    expect(found.p50).toBe(found.from)
    expect(found.overAlready).toBeGreaterThan(0.9)
  })

  it('never comes in a room no damper than the limit', () => {
    const arid = { ...room, meanRhPercent: about(12, 0.5), swingRhPercent: 1 }
    const found = timeToLimit(box, arid, learnLeak(box, arid, [], exact), {
      limitRhPercent: 20,
      from: box.startedOn,
    })
    expect(found.p90).toBeNull()
    expect(found.overAtAll).toBeLessThan(0.01)
  })
})
