import { describe, expect, it } from 'vitest'
import type { Sighting } from '../../lib/boxes/box.ts'
import { learnLeak } from '../../lib/boxes/learn.ts'
import {
  about,
  box,
  orderly,
  readings,
  room,
  strip,
  sure,
  trade,
  truthAfter,
  width,
} from './learn-samples.ts'

const learn = (sightings: readonly Sighting[], prior = trade, of = box) =>
  learnLeak(of, room, sightings, prior)

describe('the leak of a box', () => {
  it('is what the trade supposes where nothing was seen', () => {
    const estimate = learn([])
    expect(estimate.airChangesPerDay).toEqual(trade.airChangesPerDay)
    expect(estimate.littleBecause).toBe('no-sightings')
    expect(estimate.learnt).toBe(0)
    expect(estimate.asOf).toBe(box.startedOn)
  })

  it.each([0.2, 0.5, 1.5])(
    'is found from a logger that reads true: %d air changes a day',
    (airChangesPerDay) => {
      const { airChangesPerDay: found } = learn(readings(200, { airChangesPerDay }), orderly)
      expect(found.nominal / airChangesPerDay).toBeCloseTo(1, 1)
      expect(found.low).toBeLessThan(airChangesPerDay)
      expect(found.high).toBeGreaterThan(airChangesPerDay)
    },
  )

  it('is found though the logger reads three percent too high, for it starts too high already', () => {
    const estimate = learn(readings(200, { off: 3 }), orderly)
    expect(estimate.airChangesPerDay.nominal).toBeCloseTo(0.5, 1)
    expect(estimate.offsets[0]!.rhPercent.nominal).toBeCloseTo(3, 1)
    expect(estimate.rhPercent.p50).toBeCloseTo(truthAfter(200), 0)
  })

  it('is not known better for a thousand readings that share one offset', () => {
    // A start that nobody knows: the offset hides in it.
    const of = { ...box, startRhPercent: about(5, 3), reservoirGPerKgPercent: sure(5) }
    const few = learn(readings(60, { every: 5 }), trade, of)
    const many = learn(readings(60, { every: 0.05 }), trade, of)
    expect(many.rhPercent.p90 - many.rhPercent.p10).toBeGreaterThan(
      0.8 * (few.rhPercent.p90 - few.rhPercent.p10),
    )
    expect(many.rhPercent.p90 - many.rhPercent.p10).toBeGreaterThan(2)
  })

  it('takes each logger for itself where one followed the other', () => {
    const first = readings(100, { off: 2, serial: 'A' })
    const second = readings(200, { off: -2, serial: 'B', from: 101 })
    const estimate = learn([...first, ...second], orderly)
    expect(estimate.airChangesPerDay.nominal).toBeCloseTo(0.5, 1)
    expect(estimate.offsets.map(({ serial }) => serial)).toEqual(['A', 'B'])
    expect(estimate.offsets[0]!.rhPercent.nominal).toBeCloseTo(2, 0)
    expect(estimate.offsets[1]!.rhPercent.nominal).toBeCloseTo(-2, 0)
  })

  it('narrows with strips, a little at a time', () => {
    const widths = [1, 2, 4].map((rounds) =>
      width(learn(Array.from({ length: rounds }, (_, at) => strip(91 * (at + 1)))).airChangesPerDay),
    )
    expect(widths.toSorted((a, b) => b - a)).toEqual(widths)
    expect(widths.at(-1)).toBeLessThan(0.7 * width(trade.airChangesPerDay))
  })

  it('does not depend on the order in which sightings are given', () => {
    const sightings = [
      ...readings(100),
      strip(30),
      strip(91),
      { kind: 'lid-loose', on: box.startedOn + 50 } as const,
    ]
    expect(learn(sightings.toReversed())).toEqual(learn(sightings))
  })

  it('leaves out what was seen before the gel was renewed, and counts it', () => {
    const earlier = readings(50).map((one) => ({ ...one, on: one.on - 400 }))
    const estimate = learn([...earlier, ...readings(50)])
    expect(estimate.airChangesPerDay).toEqual(learn(readings(50)).airChangesPerDay)
    expect(estimate.sightings).toEqual({ logger: 50, rounds: 0, beforeStart: 50 })
  })

  it('rests on what is written where that is exact, whatever was read', () => {
    const written = { ...trade, airChangesPerDay: sure(0.7, 0), from: 'written' as const }
    const estimate = learn(readings(100, { airChangesPerDay: 0.69 }), written)
    expect(estimate.airChangesPerDay.nominal).toBeCloseTo(0.7, 1)
    expect(Number.isFinite(estimate.learnt)).toBe(true)
  })
})

describe('what gel and lid tell', () => {
  const now = (sightings: readonly Sighting[]) => learn(sightings).rhPercent

  it('gel of spent colour makes a box damper than was thought', () => {
    const day = box.startedOn + 100
    expect(now([{ kind: 'gel-spent', on: day }]).p50).toBeGreaterThan(now([strip(100)]).p50)
    expect(now([{ kind: 'gel-spent', on: day }]).p50).toBeGreaterThan(15)
  })

  it('seen twice it tells no more than once: it turned at one humidity', () => {
    const first = { kind: 'gel-spent', on: box.startedOn + 100 } as const
    const again = { kind: 'gel-spent', on: box.startedOn + 101 } as const
    expect(learn([first, again]).airChangesPerDay).toEqual(learn([first]).airChangesPerDay)
  })

  it('a lid found loose makes it damper and less sure, and says little of the leak', () => {
    const seated = learn([strip(60)])
    const loose = learn([strip(60), { kind: 'lid-loose', on: box.startedOn + 100 }])
    const later = learn([strip(60), strip(100)])
    expect(loose.rhPercent.p90).toBeGreaterThan(later.rhPercent.p90 + 2)
    expect(loose.airChangesPerDay.nominal / seated.airChangesPerDay.nominal).toBeCloseTo(1, 1)
  })

  it('a strip read on the day the lid was found loose holds for the box as it is since', () => {
    const on = box.startedOn + 100
    const found = learn([{ kind: 'lid-loose', on }, strip(100, 32)])
    expect(found.rhPercent.p50).toBeGreaterThan(22)
    // What came in by the lid is not held against the box.
    expect(found.airChangesPerDay.nominal).toBeLessThan(learn([strip(100, 32)]).airChangesPerDay.nominal)
  })
})

describe('when the readings say little of the leak, the reason is', () => {
  const below = (days: number): Sighting => ({
    kind: 'below-range',
    on: box.startedOn + days,
    floorRhPercent: 20,
    errorRhPercent: 3,
  })

  it('all of them lie below what the logger can report', () => {
    const estimate = learn([5, 10, 15, 20].map(below))
    expect(estimate.saysLittle).toBe(true)
    expect(estimate.littleBecause).toBe('below-range')
  })

  it('still, a year below the range is word of a tight box', () => {
    const year = learn(Array.from({ length: 12 }, (_, month) => below(30 * month + 15)))
    expect(year.airChangesPerDay.high).toBeLessThan(trade.airChangesPerDay.high)
    expect(year.airChangesPerDay.low).toBeLessThan(trade.airChangesPerDay.low)
  })

  it('the time was too short', () => {
    const estimate = learn(readings(7, { airChangesPerDay: 0.3 }), trade, {
      ...box,
      startRhPercent: about(5, 3),
    })
    expect(estimate.littleBecause).toBe('too-short')
  })

  it('a change smaller than the sensor may be wrong', () => {
    const of = { ...box, gelKg: 5, startRhPercent: about(5, 3) }
    const still = readings(20, { airChangesPerDay: 0.01 })
    expect(learn(still, trade, of).littleBecause).toBe('error-exceeds-change')
  })

  it('a box that stands at the level of its room', () => {
    const of = { ...box, gelKg: 0, startRhPercent: about(55, 3) }
    const level = [10, 40, 70].map((days) => strip(days, 57))
    expect(learn(level, trade, of).littleBecause).toBe('at-room-level')
  })

  it('and none where the leak shows', () => {
    expect(learn(readings(200)).saysLittle).toBe(false)
  })
})

describe('when the model may not hold', () => {
  it('nothing is said of a box that keeps to it', () => {
    expect(learn(readings(300)).modelMayNotHold).toBeNull()
  })

  it('a box whose readings leap is not explained', () => {
    const leaps = readings(300).map((one, at) =>
      one.kind === 'logger' ? { ...one, rhPercent: one.rhPercent + (at % 60 < 30 ? 4 : -4) } : one,
    )
    expect(learn(leaps).modelMayNotHold).toBe('unexplained')
  })

  it('a box that would have to leak thirty times what boxes do is out of range', () => {
    expect(learn(readings(60, { airChangesPerDay: 25 })).modelMayNotHold).toBe('leak-out-of-range')
  })
})
