import type { ClosedBox, Day, Surroundings } from './box.ts'
import type { Mixture } from './forecast-mixture.ts'
import type { Allowance, LeakPrior } from './leak-prior.ts'
import { weighPaces, type Weighed } from './learn-grid.ts'
import { airChangesAt, pacesOf } from './learn-rate.ts'
import { runner } from './learn-run.ts'
import type { Gathered } from './learn-sightings.ts'
import { lawful, type Character, type RateState } from './learn-state.ts'

/** One of the two ways a box may be, how likely it is that way, and all that is then known. */
export interface Way extends Weighed {
  readonly character: Character
  /** Before anything was seen, and after. */
  readonly share: number
  readonly chance: number
}

export interface Ways {
  readonly ways: readonly Way[]
  readonly asOf: Day
  /** How far the readings lie off at the best pace of the better way, squared, in parts of their variance. */
  readonly strayed: number
}

const characters = ({ strayShare, bendPerTenPercent, seasonalPace }: Allowance) => [
  { character: lawful, share: 1 - strayShare },
  { character: { bendPerTenPercent, seasonalPace }, share: strayShare },
]

/**
 * A box either keeps to the law of one reservoir and one temperature, or strays from it as gels and stores are known to. What
 * was seen decides how likely either is; bands are drawn from both.
 */
export function waysOf(
  box: ClosedBox,
  surroundings: Surroundings,
  gathered: Pick<Gathered, 'seen' | 'errors'>,
  { airChangesPerDay, allowance }: LeakPrior,
): Ways {
  const weighed = characters(allowance).map(({ character, share }) => {
    const run = runner(box, surroundings, gathered, allowance, character)
    return { ...weighPaces(pacesOf(box, airChangesPerDay, character), run), character, share, asOf: run.asOf }
  })
  const best = weighed.reduce((most, one) => (one.logEvidence > most.logEvidence ? one : most))
  const parts = weighed.map(({ logEvidence, share }) => share * Math.exp(logEvidence - best.logEvidence))
  const total = parts.reduce((sum, part) => sum + part, 0)
  return {
    ways: weighed.map((way, at) => ({ ...way, chance: parts[at]! / total })),
    asOf: best.asOf,
    strayed: best.strayed,
  }
}

/** What is less likely than this changes no band. */
const leastWeight = 1e-5

/** The states of both ways, weighed against each other. */
export function statesOf(ways: readonly Way[]): readonly RateState[] {
  return ways
    .flatMap(({ states, chance }) => states.map((state) => ({ ...state, weight: state.weight * chance })))
    .filter(({ weight }) => weight > leastWeight)
}

/** Air exchanges a day, each with its weight. */
export function airChangesOf(ways: readonly Way[]): readonly (readonly [value: number, weight: number])[] {
  return ways.flatMap(({ paces, states, chance }) =>
    states.flatMap(({ ratePerDay, weight }) =>
      airChangesAt(paces, ratePerDay).map(([value, share]): readonly [number, number] => [
        value,
        share * weight * chance,
      ]),
    ),
  )
}

/** What is known of one of the unknowns. */
export function mixtureOf(ways: readonly Way[], unknown: number): Mixture {
  const states = statesOf(ways)
  return {
    weights: Float64Array.from(states, ({ weight }) => weight),
    means: Float64Array.from(states, ({ law }) => law.mean[unknown]!),
    deviations: Float64Array.from(states, ({ law }) =>
      Math.sqrt(Math.max(0, law.covariance[unknown * law.size + unknown]!)),
    ),
  }
}
