import { describe, expect, it } from 'vitest'
import { flatFloorOf } from '../../lib/logger/flat-floor.ts'
import { every, hour } from './at-hand.ts'

const options = { highestFloorRhPercent: 15 }
/** A box that slowly grows damper, with a swing of the day; what the logger prints of it. */
const course = (hours: number, floor: number) =>
  Array.from({ length: hours }, (_, n) => {
    const truth = 5 + n / 60 + 0.6 * Math.sin((2 * Math.PI * n) / 24)
    return Math.max(floor, Math.round(10 * truth) / 10)
  })

describe('a flat floor', () => {
  it('is told from the readings that lie on it', () => {
    const series = every(hour, course(600, 10))
    const floor = flatFloorOf(series, options)
    expect(floor).toMatchObject({ atRhPercent: 10, from: 'flat' })
    expect(floor!.readings).toBe([...series.rhPercent].filter((rh) => rh === 10).length)
    expect(floor!.share).toBeCloseTo(floor!.readings / 600, 12)
  })

  it('is not seen in a box that merely stays dry', () => {
    expect(flatFloorOf(every(hour, course(600, 0)), options)).toBeNull()
  })

  it('nor in one that a coarse logger reads as steps', () => {
    const steps = Array.from({ length: 800 }, (_, n) => 8 + Math.floor(n / 90))
    expect(flatFloorOf(every(hour, steps), options)).toBeNull()
  })

  it('nor where the flat lies above any floor known', () => {
    expect(
      flatFloorOf(
        every(
          hour,
          course(600, 10).map((rh) => rh + 20),
        ),
        options,
      ),
    ).toBeNull()
  })

  it('is taken of a line that never moves: the truth may be anywhere below', () => {
    expect(flatFloorOf(every(hour, Array<number>(100).fill(12)), options)).toMatchObject({
      atRhPercent: 12,
      share: 1,
    })
    expect(flatFloorOf(every(hour, Array<number>(5).fill(12)), options)).toBeNull()
  })

  it('is not hidden by a spark below it', () => {
    const sparks = course(2000, 10).map((rh, n) => (n === 20 ? 0 : rh))
    expect(flatFloorOf(every(hour, sparks), options)).toMatchObject({ atRhPercent: 10 })
  })

  it('is what the register says, wherever a reading lies on or below it', () => {
    const known = { ...options, registeredRhPercent: 20 }
    expect(flatFloorOf(every(hour, [18, 20, 25, 30]), known)).toEqual({
      atRhPercent: 20,
      readings: 2,
      share: 0.5,
      from: 'register',
    })
    expect(flatFloorOf(every(hour, [21, 25]), known)).toBeNull()
    // A register that knows better than the look of the readings.
    expect(flatFloorOf(every(hour, course(600, 10)), { ...options, registeredRhPercent: 2 })).toBeNull()
  })

  it('is none in nothing', () => {
    expect(flatFloorOf(every(hour, []), options)).toBeNull()
    expect(flatFloorOf(every(hour, [Number.NaN, Number.NaN]), options)).toBeNull()
  })
})
