import { describe, expect, it } from 'vitest'
import type { Sighting } from '../../lib/boxes/box.ts'
import { departureOf } from '../../lib/boxes/departure.ts'
import { box, readings, room, strip, trade, truthAfter } from './learn-samples.ts'

const depart = (sightings: readonly Sighting[]) => departureOf(box, room, sightings, trade)

/** The readings of a box whose lid is off its seat since a day: what came in by then stays, and ten times more comes in. */
function loose(since: number, days: number, times = 10): readonly Sighting[] {
  return readings(days).map((one) => {
    const after = one.on - box.startedOn - since
    if (one.kind !== 'logger' || after <= 0) return one
    const slope = truthAfter(since + 1) - truthAfter(since)
    return { ...one, rhPercent: truthAfter(since) + slope * times * after }
  })
}

describe('a box that leaves its forecast', () => {
  it('is named with the day since when, how sure that is, and how many times more it leaks', () => {
    const found = depart(loose(150, 170))!
    expect(found.probability).toBeGreaterThan(0.9)
    expect(Math.abs(found.since - box.startedOn - 150)).toBeLessThan(4)
    expect(found.sinceRange.low).toBeLessThanOrEqual(box.startedOn + 151)
    expect(found.sinceRange.high).toBeGreaterThanOrEqual(box.startedOn + 149)
    expect(found.factor.low).toBeLessThan(10)
    expect(found.factor.high).toBeGreaterThan(6)
  })

  it('is not named on the first day of it, and within a fortnight', () => {
    expect(depart(loose(150, 151))).toBeNull()
    expect(depart(loose(150, 164))).not.toBeNull()
  })

  it('is found by rounds too, between two of them', () => {
    const walks = [30, 120, 210].map((days) => strip(days))
    expect(depart(walks)).toBeNull()
    const found = depart([...walks.slice(0, 2), strip(210, 47)])!
    expect(found.since).toBeGreaterThan(box.startedOn + 120)
    expect(found.since).toBeLessThan(box.startedOn + 210)
  })

  it('is none that was never seen otherwise: it may just be a leaky box', () => {
    expect(depart([strip(100, 42)])).toBeNull()
    expect(depart(readings(200, { airChangesPerDay: 3 }))).toBeNull()
    expect(depart([])).toBeNull()
  })

  it('is none where another logger took over that reads higher', () => {
    const first = readings(150, { serial: 'A', off: -1.5 })
    expect(depart([...first, ...readings(200, { serial: 'B', off: 2, from: 151 })])).toBeNull()
  })

  it('is none where one reading leaps and the next does not', () => {
    const leap = readings(150).map((one, at) =>
      one.kind === 'logger' && at === 140 ? { ...one, rhPercent: one.rhPercent + 4 } : one,
    )
    expect(depart(leap)).toBeNull()
  })

  it('is none in a box that gets drier', () => {
    const drier = readings(150).map((one, at) =>
      one.kind === 'logger' && at > 120 ? { ...one, rhPercent: one.rhPercent - (at - 120) * 0.2 } : one,
    )
    expect(depart(drier)).toBeNull()
  })

  it('a lid already found loose explains what came in', () => {
    const walks = [30, 120].map((days) => strip(days))
    const known = [...walks, { kind: 'lid-loose', on: box.startedOn + 210 } as const, strip(210, 47)]
    const unknown = [...walks, strip(210, 47)]
    expect(depart(unknown)).not.toBeNull()
    expect(depart(known)).toBeNull()
  })
})
