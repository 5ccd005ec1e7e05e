import { priorOfRate, type Paces } from './learn-rate.ts'
import type { Runner } from './learn-run.ts'
import type { RateState } from './learn-state.ts'

const coarse = 41
const fine = 36
/** Less likely than the best by this power of e, a pace is left out. */
const depth = 12

export interface Grid {
  readonly states: readonly RateState[]
  /** Logarithm of how likely the sightings are, all paces together. */
  readonly logEvidence: number
  /** Logarithm of how likely they are at each pace of the states, the prior left out. */
  readonly logLikelihoods: readonly number[]
}

/** Every pace the box may have, weighed by its prior and by the sightings: first far and wide, then where it matters. */
export function weighPaces(paces: Paces, { at }: Runner): Grid {
  const run = (logRate: number) => {
    const { logLikelihood, law } = at(Math.exp(logRate))
    return { logRate, law, logLikelihood, logWeight: logLikelihood + priorOfRate(paces, logRate) }
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
  const best = Math.max(...runs.map(({ logWeight }) => logWeight))
  const kept = runs.filter(({ logWeight }) => logWeight > best - depth)
  const total = kept.reduce((sum, { logWeight }) => sum + Math.exp(logWeight - best), 0)
  return {
    states: kept.map(({ logRate, law, logWeight }) => ({
      ratePerDay: Math.exp(logRate),
      weight: Math.exp(logWeight - best) / total,
      law,
    })),
    logEvidence: best + Math.log((total * (to - from)) / (fine - 1)),
    logLikelihoods: kept.map(({ logLikelihood }) => logLikelihood),
  }
}

const evenly = (from: number, to: number, count: number) =>
  Array.from({ length: count }, (_, at) => from + ((to - from) * at) / (count - 1))
