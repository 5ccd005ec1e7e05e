import type { ClosedBox, Day, Quantiles, Range, Sighting, Surroundings } from './box.ts'
import { quantilesOf, type Mixture } from './forecast-mixture.ts'
import type { LeakPrior } from './leak-prior.ts'
import { weighPaces } from './learn-grid.ts'
import { whyLittle, type SaysLittle } from './learn-little.ts'
import { airChangesAt, pacesOf } from './learn-rate.ts'
import { runner } from './learn-run.ts'
import { gather } from './learn-sightings.ts'
import { momentsOf, rangeOfWeighted } from './learn-spread.ts'
import { unknowns, type RateState } from './learn-state.ts'

/** Signs that the box does not follow the leak model, so that bands are to be read with care. */
export type Misfit =
  /** The readings stray from the best line of the model by more than sensor and weather explain. */
  | 'strays'
  /** It needs a leak that lies far outside what was thought possible. */
  | 'leak-out-of-range'
  /** It needs a gel whose reservoir changes with humidity more than was allowed for. */
  | 'gel-bends'

export interface LeakEstimate {
  readonly airChangesPerDay: Range
  /** What was thought before its own sightings were looked at. */
  readonly before: Range
  readonly from: LeakPrior['from']
  /** How much narrower the leak is known than before: 0 nothing learnt, towards 1 all [1]. */
  readonly learnt: number
  readonly saysLittle: boolean
  readonly littleBecause: SaysLittle | null
  readonly modelMayNotHold: Misfit | null
  readonly sightings: { readonly logger: number; readonly rounds: number; readonly beforeStart: number }
  /** The day of the last sighting, or of the start. */
  readonly asOf: Day
  /** What the box held that day, the sensor's error allowed for [%]. */
  readonly rhPercent: Quantiles
  /** What each logger is thought to read too high [%]. */
  readonly offsets: readonly { readonly serial: string; readonly rhPercent: Range }[]
  readonly allowance: LeakPrior['allowance']
  /** One for each pace the box may have: the stuff of forecasts. */
  readonly states: readonly RateState[]
  /** How likely the sightings are at each pace, whatever was thought before: what boxes of one model share. */
  readonly likelihood: { readonly logRates: readonly number[]; readonly logs: readonly number[] }
}

/**
 * The leak of a box from what was seen in it since its gel was renewed. Sightings may come in any order; those before the
 * start are left out and counted.
 */
export function learnLeak(
  box: ClosedBox,
  surroundings: Surroundings,
  sightings: readonly Sighting[],
  prior: LeakPrior,
): LeakEstimate {
  const { allowance } = prior
  const since = sightings.filter(({ on }) => on >= box.startedOn)
  const gathered = gather(since, allowance)
  const paces = pacesOf(box, prior.airChangesPerDay)
  const run = runner(box, surroundings, gathered, allowance)
  const grid = weighPaces(paces, run)
  const { states } = grid
  const airChanges = states.flatMap(({ ratePerDay, weight }) =>
    airChangesAt(paces, ratePerDay).map(([value, share]): readonly [number, number] => [
      value,
      share * weight,
    ]),
  )
  const learnt = Math.max(0, 1 - logDeviation(airChanges) / momentsOf(paces.airChanges).deviation)
  const inside = quantilesOf(mixtureOf(states, unknowns.inside))
  const littleBecause = learnt >= tellingShare ? null : whyLittle({ box, surroundings, since, inside })
  return {
    airChangesPerDay: rangeOfWeighted(airChanges),
    before: prior.airChangesPerDay,
    from: prior.from,
    learnt,
    saysLittle: littleBecause !== null,
    littleBecause,
    modelMayNotHold: null,
    sightings: {
      logger: since.filter(({ kind }) => kind === 'logger' || kind === 'below-range').length,
      rounds: since.filter(({ kind }) => kind !== 'logger' && kind !== 'below-range').length,
      beforeStart: sightings.length - since.length,
    },
    asOf: run.asOf,
    rhPercent: inside,
    offsets: gathered.serials.map((serial, at) => {
      const { p10, p50, p90 } = quantilesOf(mixtureOf(states, unknowns.loggers + at))
      return { serial, rhPercent: { low: p10, nominal: p50, high: p90 } }
    }),
    allowance,
    states,
    likelihood: { logRates: states.map(({ ratePerDay }) => Math.log(ratePerDay)), logs: grid.logLikelihoods },
  }
}

/** Less than this narrower [one], the readings have told little. */
const tellingShare = 0.2

function logDeviation(values: readonly (readonly [number, number])[]): number {
  let [mean, square] = [0, 0]
  for (const [value, weight] of values) {
    const log = Math.log(value)
    mean += weight * log
    square += weight * log ** 2
  }
  return Math.sqrt(Math.max(0, square - mean ** 2))
}

/** What the states know of one of their unknowns. */
function mixtureOf(states: readonly RateState[], unknown: number): Mixture {
  return {
    weights: Float64Array.from(states, ({ weight }) => weight),
    means: Float64Array.from(states, ({ law }) => law.mean[unknown]!),
    deviations: Float64Array.from(states, ({ law }) =>
      Math.sqrt(Math.max(0, law.covariance[unknown * law.size + unknown]!)),
    ),
  }
}
