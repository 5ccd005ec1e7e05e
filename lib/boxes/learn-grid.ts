import { priorOfRate, type Paces } from './learn-rate.ts'
import type { Runner } from './learn-run.ts'
import type { RateState } from './learn-state.ts'

const coarse = 25
const fine = 25
/** Less likely than the best by this power of e, a pace is left out. */
const depth = 10

/** The paces of a box that keeps to one character, weighed. */
export interface Weighed {
  readonly paces: Paces
  readonly states: readonly RateState[]
  /** Logarithm of how likely the sightings are, all paces together. */
  readonly logEvidence: number
  /** How far the readings lie off at the best pace, squared, in parts of their variance. */
  readonly strayed: number
}

/** Every pace the box may have, weighed by its prior and by the sightings: first far and wide, then where it matters. */
export function weighPaces(paces: Paces, { at }: Pick<Runner, 'at'>): Weighed {
  const run = (logRate: number) => {
    const told = at(Math.exp(logRate))
    return { ...told, logRate, logWeight: told.logLikelihood + priorOfRate(paces, logRate) }
  }
  let [from, to] = [Math.log(paces.slowest), Math.log(paces.fastest)]
  let runs = evenly(from, to, coarse).map(run)
  // Much seen leaves only a sliver of the paces: it is looked at ever closer until it fills the grid.
  for (let look = 0; look < 4; look += 1) {
    const best = Math.max(...runs.map(({ logWeight }) => logWeight))
    const likely = runs.flatMap(({ logWeight }, index) => (logWeight > best - depth ? [index] : []))
    const low = Math.max(0, likely[0]! - 1)
    const high = Math.min(runs.length - 1, likely.at(-1)! + 1)
    if (look > 0 && high - low > runs.length / 2) break
    ;[from, to] = [runs[low]!.logRate, runs[high]!.logRate]
    runs = evenly(from, to, fine).map(run)
  }
  const best = runs.reduce((most, one) => (one.logWeight > most.logWeight ? one : most))
  const kept = runs.filter(({ logWeight }) => logWeight > best.logWeight - depth)
  const total = kept.reduce((sum, { logWeight }) => sum + Math.exp(logWeight - best.logWeight), 0)
  return {
    paces,
    states: kept.map(({ logRate, law, logWeight, logLikelihood }) => ({
      ratePerDay: Math.exp(logRate),
      weight: Math.exp(logWeight - best.logWeight) / total,
      logLikelihood,
      law,
    })),
    logEvidence: best.logWeight + Math.log((total * (to - from)) / (fine - 1)),
    strayed: best.strayed,
  }
}

const evenly = (from: number, to: number, count: number) =>
  Array.from({ length: count }, (_, at) => from + ((to - from) * at) / (count - 1))
