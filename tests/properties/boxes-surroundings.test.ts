import { describe, expect, it } from 'vitest'
import { assumedRoom } from '../../lib/boxes/leak-figures.ts'
import { surroundingsOf } from '../../lib/boxes/surroundings.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { drawn } from '../simulated/chance-drawn.ts'
import { mean } from '../simulated/forecast-holds.ts'

const assumed = assumedRoom(knowledge)
const yearLength = 365.25
const dayMs = 86_400_000

/** A room drawn from what is assumed of any, read for some days by a logger that is off by the same all the time. */
function lookedAt(seed: number, days: number) {
  const chance = drawn(seed)
  const yearsMean = chance.within(assumed.meanRhPercent)
  const angle = (2 * Math.PI * assumed.highestDayOfYear) / yearLength
  const swing = (of: number) =>
    assumed.swingRhPercent * of + (chance.normal() * assumed.swingErrorRhPercent.assumed) / 2
  const [cosine, sine] = [swing(Math.cos(angle)), swing(Math.sin(angle))]
  const offset = (chance.normal() * assumed.loggerErrorRhPercent) / 2
  const [thisYear, nextYear] = [chance.normal(), chance.normal()].map(
    (off) => yearsMean + (off * assumed.yearsDifferRhPercent) / Math.SQRT2,
  )
  const from = chance.whole(18_000, 18_365)
  const kept = Math.exp(-1 / assumed.weatherDays)
  let weather = assumed.weatherRhPercent * chance.normal()
  const rhPercent = Float32Array.from({ length: days }, (_, at) => {
    weather = kept * weather + Math.sqrt(1 - kept ** 2) * assumed.weatherRhPercent * chance.normal()
    const turn = (2 * Math.PI * (from + at)) / yearLength
    return thisYear! + cosine * Math.cos(turn) + sine * Math.sin(turn) + weather + offset
  })
  const atMs = Float64Array.from({ length: days }, (_, at) => (from + at) * dayMs)
  const series = { atMs, rhPercent, temperatureC: new Float32Array(days) }
  const found = surroundingsOf({ series, rhLowPercent: null, rhHighPercent: null }, assumed)
  const phase = (2 * Math.PI * found.highestOn) / yearLength
  const missed = Math.hypot(
    found.swingRhPercent * Math.cos(phase) - cosine,
    found.swingRhPercent * Math.sin(phase) - sine,
  )
  return {
    held: found.meanRhPercent.low <= nextYear! && nextYear! <= found.meanRhPercent.high,
    width: found.meanRhPercent.high - found.meanRhPercent.low,
    // Both parts of the swing together go beyond two standard deviations of one in one case of seven.
    swingHeld: missed <= found.swingErrorRhPercent!,
  }
}

describe('the yearly course of a room read for a while', () => {
  it.each([20, 90, 200, 400])(
    'tells after %d days a mean that holds for the next year as often as it says',
    (days) => {
      const rooms = Array.from({ length: 400 }, (_, at) => lookedAt(80_000 + at, days))
      const held = mean(rooms.map((one) => Number(one.held)))
      expect(held).toBeGreaterThanOrEqual(0.74)
      expect(held).toBeLessThanOrEqual(0.88)
      expect(mean(rooms.map((one) => Number(one.swingHeld)))).toBeGreaterThanOrEqual(0.78)
    },
  )

  it('knows it better the longer it was read', () => {
    const widths = [20, 90, 200, 400].map((days) =>
      mean(Array.from({ length: 100 }, (_, at) => lookedAt(80_000 + at, days).width)),
    )
    expect(widths.toSorted((a, b) => b - a)).toEqual(widths)
  })
})
