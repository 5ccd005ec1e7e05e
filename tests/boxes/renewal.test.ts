import { describe, expect, it } from 'vitest'
import { learnLeak } from '../../lib/boxes/learn.ts'
import { renewalOf } from '../../lib/boxes/renewal.ts'
import { spanOfGel, withFreshGel } from '../../lib/boxes/renewal-fresh.ts'
import { forecast } from '../../lib/boxes/forecast.ts'
import { about, box, orderly, readings, room, strip, sure, trade, truthAfter } from './learn-samples.ts'

const read = learnLeak(box, room, readings(60), trade)

describe('the next renewal', () => {
  it('is none where nothing limits the box', () => {
    expect(renewalOf({ ...box, limitRhPercent: null }, room, read, { from: read.asOf })).toBeNull()
  })

  it('is due when one box in ten would be over, where nothing was read in it', () => {
    const unread = learnLeak(box, room, [], trade)
    const { because, renewBy, crossing, guardRhPercent } = renewalOf(box, room, unread, {
      from: box.startedOn,
    })!
    expect(because).toBe('one-in-ten')
    expect(renewBy).toBe(crossing.p10)
    expect(guardRhPercent).toBeNull()
  })

  it('keeps the error of the sensor from the limit where the box is known well', () => {
    const { because, renewBy, crossing, guardRhPercent } = renewalOf(box, room, read, { from: read.asOf })!
    expect(because).toBe('sensor-guard')
    expect(guardRhPercent).toBe(3)
    expect(renewBy).toBeLessThan(crossing.p10!)
    // With the truth at 12 % the logger may be read as 15 % by then.
    expect(truthAfter(renewBy! - box.startedOn)).toBeCloseTo(12, 0)
  })

  it('uses no guard that even fresh gel could not keep', () => {
    const low = { ...box, limitRhPercent: 9 }
    const by = renewalOf(low, room, learnLeak(low, room, [strip(5)], trade), { from: box.startedOn })!
    expect(by.guardRhPercent).toBeNull()
    expect(by.because).toBe('one-in-ten')
  })

  it('is today for a box that is likely over already', () => {
    const over = learnLeak(box, room, [strip(200, 37)], trade)
    const { because, renewBy } = renewalOf(box, room, over, { from: over.asOf })!
    expect([because, renewBy]).toEqual(['over-already', over.asOf])
  })

  it('is not within what is looked ahead for a box that hardly leaks', () => {
    const tight = { ...trade, airChangesPerDay: sure(0.01, 0.1), from: 'written' as const }
    const by = renewalOf(box, room, learnLeak(box, room, [], tight), { from: box.startedOn, days: 400 })!
    expect([by.renewBy, by.because]).toEqual([null, null])
  })
})

describe('fresh gel', () => {
  const known = learnLeak(box, room, [], { ...orderly, airChangesPerDay: sure(0.5, 0), from: 'written' })
  const span = (gelKg: number, of = known) => spanOfGel(box, room, of, { gelKg, on: box.startedOn })!

  it('of twice the mass lasts about twice as long', () => {
    // Not exactly: the room has its seasons, and the air counts a little.
    expect(span(0.2).p50! / span(0.1).p50!).toBeCloseTo(2, 0)
    expect(span(0.1).p50).toBeGreaterThan(100)
  })

  it('of the same mass lasts as long as the box did from its own start', () => {
    const { crossing } = renewalOf(box, room, known, { from: box.startedOn })!
    expect(span(0.1).p50).toBeCloseTo(crossing.p50! - box.startedOn, 0)
  })

  it('begins anew, whatever the box had come to, and keeps what was learnt of leak and room', () => {
    const dampRoom = { ...room, meanRhPercent: about(55, 15) }
    const damp = learnLeak(box, dampRoom, readings(300, { airChangesPerDay: 0.5 }), trade)
    const fresh = withFreshGel(box, damp, { gelKg: 0.1, on: damp.asOf })
    const fan = forecast(fresh.box, dampRoom, fresh.foreseen, { from: damp.asOf, days: 100 })
    expect(fan.p50[0]).toBeCloseTo(5, 1)
    const unread = learnLeak(fresh.box, dampRoom, [], trade)
    const wide = forecast(fresh.box, dampRoom, unread, { from: damp.asOf, days: 100 })
    expect(fan.p90[100]! - fan.p10[100]!).toBeLessThan(0.7 * (wide.p90[100]! - wide.p10[100]!))
  })

  it('is told no span where nothing limits the box', () => {
    expect(spanOfGel({ ...box, limitRhPercent: null }, room, known, { gelKg: 1, on: 0 })).toBeNull()
  })
})
