import type { ClosedBox, Day, Quantiles, Range, Sighting, Surroundings } from './box.ts'
import { quantilesOf } from './forecast-mixture.ts'
import type { LeakPrior } from './leak-prior.ts'
import { whyLittle, type SaysLittle } from './learn-little.ts'
import { misfitOf, type Misfit } from './learn-misfit.ts'
import { gather } from './learn-sightings.ts'
import { momentsOf, rangeOfWeighted } from './learn-spread.ts'
import { unknowns } from './learn-state.ts'
import { airChangesOf, mixtureOf, waysOf, type Way } from './learn-ways.ts'

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
  /** ± of what read the box last [%]; null where nothing did. */
  readonly errorRhPercent: number | null
  readonly allowance: LeakPrior['allowance']
  /** What the forecasts are made of: a box that keeps to the law of one reservoir and temperature, and one that strays. */
  readonly ways: readonly Way[]
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
  const { ways, asOf, strayed } = waysOf(box, surroundings, gathered, prior)
  const airChanges = airChangesOf(ways)
  const before = momentsOf(ways[0]!.paces.airChanges)
  const learnt = since.length === 0 ? 0 : Math.max(0, 1 - logDeviation(airChanges) / before.deviation)
  // Nothing seen leaves the prior as it was, to the last digit.
  const range = since.length === 0 ? prior.airChangesPerDay : rangeOfWeighted(airChanges)
  const inside = quantilesOf(mixtureOf(ways, unknowns.inside))
  const littleBecause = learnt >= tellingShare ? null : whyLittle({ box, surroundings, since, inside })
  return {
    airChangesPerDay: range,
    before: prior.airChangesPerDay,
    from: prior.from,
    learnt,
    saysLittle: littleBecause !== null,
    littleBecause,
    modelMayNotHold: misfitOf({ ways, strayed, gathered, airChangesPerDay: range, prior }),
    sightings: {
      logger: since.filter(({ kind }) => kind === 'logger' || kind === 'below-range').length,
      rounds: since.filter(({ kind }) => kind !== 'logger' && kind !== 'below-range').length,
      beforeStart: sightings.length - since.length,
    },
    asOf,
    rhPercent: inside,
    offsets: gathered.serials.map((serial, at) => {
      const { p10, p50, p90 } = quantilesOf(mixtureOf(ways, unknowns.loggers + at))
      return { serial, rhPercent: { low: p10, nominal: p50, high: p90 } }
    }),
    errorRhPercent: lastError(since),
    allowance,
    ways,
  }
}

function lastError(sightings: readonly Sighting[]): number | null {
  const read = sightings.filter((one) => 'errorRhPercent' in one).toSorted((a, b) => b.on - a.on)
  return read[0]?.errorRhPercent ?? null
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
