import type { ClosedBox, Day, Range, Sighting, Surroundings } from './box.ts'
import type { LeakPrior } from './leak-prior.ts'
import { pacesOf, priorOfRate } from './learn-rate.ts'
import { pass } from './learn-run.ts'
import { gather, type Seen } from './learn-sightings.ts'
import { logSpreadOf, rangeOfWeighted, spreadAtShare } from './learn-spread.ts'
import { copyLaw, courseOf, startLaw, type Course, type Law } from './learn-state.ts'

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
const sureOf = 0.9
const recentDays = 45
const paceCount = 49
const mostBeginnings = 28
/** What is so much less likely than the best pace [power of e] adds nothing. */
const depth = 8
const factorShares = [0.125, 0.375, 0.625, 0.875]

/** How the box went at one pace up to each sighting, and how likely all until then was. */
interface Track {
  readonly logRate: number
  readonly laws: readonly Law[]
  readonly logs: readonly number[]
}

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
  const course = courseOf(box, surroundings, allowance)
  const paces = pacesOf(box, prior.airChangesPerDay, allowance)
  const start = startLaw(box, surroundings, allowance, errors, allowance)
  const tracks = logRates(paces.slowest, paces.fastest).map((logRate) =>
    tracked(start, course, logRate, priorOfRate(paces, logRate), box.startedOn, seen),
  )
  const quiet = added(tracks.map(({ logs }) => logs.at(-1)!))
  const factors = factorShares.map((share) =>
    Math.exp(spreadAtShare(logSpreadOf(allowance.looseLidFactor), share)),
  )
  const began = beginnings(seen, box.startedOn).flatMap(({ after, on, days }) =>
    factors.map((factor) => ({
      on,
      factor,
      log:
        leaking(tracks, course, seen, after, factor) -
        quiet +
        Math.log((allowance.looseLidsPerYear * days) / 365.25 / factors.length),
    })),
  )
  const odds = Math.exp(added(began.map(({ log }) => log)))
  const probability = odds === Infinity ? 1 : odds / (1 + odds)
  if (!(probability >= sureOf)) return null
  const best = Math.max(...began.map(({ log }) => log))
  const weighted = (of: (one: { on: Day; factor: number }) => number) =>
    rangeOfWeighted(began.map((one) => [of(one), Math.exp(one.log - best)]))
  const sinceRange = weighted(({ on }) => on)
  return { probability, since: sinceRange.nominal, sinceRange, factor: weighted(({ factor }) => factor) }
}

const logRates = (slowest: number, fastest: number) =>
  Array.from(
    { length: paceCount },
    (_, at) => Math.log(slowest) + (Math.log(fastest / slowest) * at) / (paceCount - 1),
  )

/** Logarithm of the sum of numbers given by theirs. */
function added(logs: readonly number[]): number {
  const best = Math.max(...logs)
  return best === -Infinity ? best : best + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - best), 0))
}

function tracked(
  start: Law,
  course: Course,
  logRate: number,
  logPrior: number,
  from: Day,
  seen: readonly Seen[],
): Track {
  const law = copyLaw(start)
  let [day, log] = [from, logPrior]
  const laws: Law[] = [copyLaw(start)]
  const logs = [log]
  for (const one of seen) {
    log += pass(law, course, Math.exp(logRate), day, one).log
    day = one.on
    laws.push(copyLaw(law))
    logs.push(log)
  }
  return { logRate, laws, logs }
}

interface Beginning {
  /** So many sightings lie before it. */
  readonly after: number
  readonly on: Day
  /** The days it stands for. */
  readonly days: number
}

/** Days on which a departure may have begun: between sightings, all of the latest and ever fewer of the older. */
function beginnings(seen: readonly Seen[], from: Day): readonly Beginning[] {
  const gaps = seen.map(({ on }, at) => ({ after: at, from: seen[at - 1]?.on ?? from, to: on }))
  const taken: Beginning[] = []
  let [end, step] = [gaps.length, 1]
  while (end > 0) {
    const begin = Math.max(0, end - Math.floor(step))
    const [first, last] = [gaps[begin]!, gaps[end - 1]!]
    const middle = gaps[Math.floor((begin + end - 1) / 2)]!
    taken.push({ after: middle.after, on: (middle.from + middle.to) / 2, days: last.to - first.from })
    end = begin
    if (taken.length > mostBeginnings / 2) step *= 1.3
  }
  // Before the first sighting there was nothing to depart from.
  return taken.filter(({ after, days }) => after > 0 && days > 0)
}

/** How likely all sightings are if the box leaks so many times more after the first few of them. */
function leaking(
  tracks: readonly Track[],
  course: Course,
  seen: readonly Seen[],
  after: number,
  factor: number,
): number {
  const best = Math.max(...tracks.map(({ logs }) => logs[after]!))
  return added(
    tracks
      .filter(({ logs }) => logs[after]! > best - depth)
      .map(({ logRate, laws, logs }) => {
        const law = copyLaw(laws[after]!)
        const rate = Math.exp(logRate) * factor
        let [log, day] = [logs[after]!, seen[after - 1]!.on]
        for (let at = after; at < seen.length; at += 1) {
          log += pass(law, course, rate, day, seen[at]!).log
          day = seen[at]!.on
        }
        return log
      }),
  )
}
