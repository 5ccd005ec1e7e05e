import { yearDays } from '../climate/seasonal.ts'
import type { ClosedBox, Day, Range, Sighting, Surroundings } from './box.ts'
import type { LeakPrior } from './leak-prior.ts'
import { beginnings, type Beginning } from './departure-days.ts'
import { gotDamper, leaking, tracksOf } from './departure-tracks.ts'
import { gather } from './learn-sightings.ts'
import { logSpreadOf, logSum, rangeOfWeighted, spreadAtShare } from './learn-spread.ts'

/** A box whose readings leave what it did before: its lid is probably not seated. */
export interface Departure {
  /** Chance that it leaks more than before [0…1]. */
  readonly probability: number
  /** Likely since this day; and between which days it began in eight cases of ten. */
  readonly since: Day
  readonly sinceRange: Range
  /** How many times leakier it is since then. */
  readonly factor: Range
}

/** So sure it must be before a box is named. */
const sureOf = 0.95
const recentDays = 45
const factorShares = [0.125, 0.375, 0.625, 0.875]
/** Most boxes are quiet, which a glance at every third day and the two middle factors tells. */
const glanceEvery = 3
const glanceAt = (factors: readonly number[]) => factors.slice(1, 3)
/** Odds [power of e] of one day and factor below which all of them together come to nothing. */
const worthALook = -4

/**
 * Whether a box departs from its forecast; null while it keeps to it. Weighs that it leaks as ever against that it leaks
 * several times more since one of the days between its sightings.
 */
export function departureOf(
  box: ClosedBox,
  surroundings: Surroundings,
  sightings: readonly Sighting[],
  prior: LeakPrior,
): Departure | null {
  const { allowance } = prior
  const { seen, errors } = gather(
    sightings.filter(({ on }) => on >= box.startedOn),
    allowance,
    recentDays,
  )
  if (seen.length < 2) return null
  // The way that strays bends and follows the seasons: what it can explain is no departure.
  const days = beginnings(seen, box.startedOn)
  const stops = days.map(({ after }) => after)
  const tracks = tracksOf(box, surroundings, { seen, errors }, { prior, character: allowance }, stops)
  const quiet = logSum(tracks.tracks.map(({ logs }) => logs.at(-1)!))
  const factors = factorShares.map((share) =>
    Math.exp(spreadAtShare(logSpreadOf(allowance.looseLidFactor), share)),
  )
  const weigh = ({ after, on, days }: Beginning, factor: number) => {
    const prior = Math.log((allowance.looseLidsPerYear * days) / yearDays / factors.length)
    return { after, on, factor, log: leaking(tracks, after, factor) - quiet + prior }
  }
  const glance = days
    .filter((_, at) => at % glanceEvery === 0)
    .flatMap((day) => glanceAt(factors).map((factor) => weigh(day, factor)))
  if (!glance.some(({ log }) => log > worthALook)) return null
  const began = days.flatMap((day) => factors.map((factor) => weigh(day, factor)))
  const odds = Math.exp(logSum(began.map(({ log }) => log)))
  const probability = odds === Infinity ? 1 : odds / (1 + odds)
  if (!(probability >= sureOf)) return null
  const best = Math.max(...began.map(({ log }) => log))
  const likeliest = began.find(({ log }) => log === best)!
  if (!gotDamper(tracks, likeliest)) return null
  const weighted = (of: (one: { on: Day; factor: number }) => number) =>
    rangeOfWeighted(began.map((one) => [of(one), Math.exp(one.log - best)]))
  const sinceRange = weighted(({ on }) => on)
  return { probability, since: sinceRange.nominal, sinceRange, factor: weighted(({ factor }) => factor) }
}
