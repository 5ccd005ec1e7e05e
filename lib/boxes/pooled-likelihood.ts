import type { Range } from './box.ts'
import { unknowns } from './learn-state.ts'
import { logDensity, momentsOf, spreadOf, type Spread } from './learn-spread.ts'
import type { Way } from './learn-ways.ts'

/** What a model's boxes may be like: the logarithm of their middle leak, and how they spread about it. */
export interface Likeness {
  readonly middle: number
  readonly spread: number
}

/**
 * What boxes have in common besides their model, and would be taken for knowledge if each were asked alone: the gel's
 * reservoir, of which these entries of the list count, and the room's mean, so many standard deviations off.
 */
export const shared = {
  reservoirs: [1, 4, 7],
  rooms: [
    { off: -Math.sqrt(3), weight: 1 / 6 },
    { off: 0, weight: 2 / 3 },
    { off: Math.sqrt(3), weight: 1 / 6 },
  ],
} as const

const normalAt = (off: number, deviation: number) => -((off / deviation) ** 2) / 2 - Math.log(deviation)

/**
 * Logarithm of how likely a box's sightings are: for each room, each reservoir and each likeness, in that order, one after
 * the other.
 */
export function likelihoodOf(
  ways: readonly Way[],
  meanRhPercent: Range,
  likenesses: readonly Likeness[],
): Float64Array {
  const room = momentsOf(spreadOf(meanRhPercent))
  const out = new Float64Array(shared.rooms.length * shared.reservoirs.length * likenesses.length)
  let at = 0
  for (const { off } of shared.rooms) {
    const told = ways.flatMap((way) => toldBy(way, room, off))
    const best = told.reduce((most, { log }) => Math.max(most, log), -Infinity)
    for (const entry of shared.reservoirs) {
      for (const likeness of likenesses) {
        const law: Spread = { nominal: likeness.middle, below: likeness.spread, above: likeness.spread }
        let sum = 0
        for (const { log, logRate, perRate } of told)
          sum += Math.exp(log - best + logDensity(law, logRate + Math.log(perRate[entry]!)))
        out[at] = best + Math.log(sum + 1e-300)
        at += 1
      }
    }
  }
  return out
}

/** How likely the sightings are at each pace of one way, had the room this mean. */
function toldBy(
  { paces, states, share }: Way,
  room: { readonly mean: number; readonly deviation: number },
  off: number,
) {
  const step = states.length > 1 ? Math.log(states[1]!.ratePerDay / states[0]!.ratePerDay) : 1
  return states.map(({ ratePerDay, logLikelihood, law }) => {
    const mean = law.mean[unknowns.mean]!
    const deviation = Math.sqrt(law.covariance[unknowns.mean * law.size + unknowns.mean]!)
    const value = room.mean + off * room.deviation
    const ofRoom =
      room.deviation > 0 && deviation > 0
        ? normalAt(value - mean, deviation) - normalAt(off * room.deviation, room.deviation)
        : 0
    return {
      log: logLikelihood + ofRoom + Math.log(share * step),
      logRate: Math.log(ratePerDay),
      perRate: paces.perRate,
    }
  })
}
