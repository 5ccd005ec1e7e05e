import type { ClosedBox, Day, Surroundings } from './box.ts'
import type { LeakPrior } from './leak-prior.ts'
import { pacesOf, priorOfRate, type Paces } from './learn-rate.ts'
import { pass } from './learn-run.ts'
import type { Gathered, Seen } from './learn-sightings.ts'
import { logSum } from './learn-spread.ts'
import {
  advance,
  copyLaw,
  courseOf,
  startLaw,
  unknowns,
  type Character,
  type Course,
  type Law,
} from './learn-state.ts'

const paceCount = 41
/** What is so much less likely than the best pace [power of e] adds nothing. */
const depth = 8

/** How the box went at one pace: how likely all was up to each sighting, and where it stood after some of them. */
export interface Track {
  readonly logRate: number
  readonly laws: ReadonlyMap<number, Law>
  readonly logs: readonly number[]
}

/** All its paces, with what they were reckoned from. */
export interface Tracks {
  readonly course: Course
  readonly seen: readonly Seen[]
  readonly tracks: readonly Track[]
}

export function tracksOf(
  box: ClosedBox,
  surroundings: Surroundings,
  { seen, errors }: Pick<Gathered, 'seen' | 'errors'>,
  { prior, character }: { readonly prior: LeakPrior; readonly character: Character },
  stops: readonly number[],
): Tracks {
  const course = courseOf(box, surroundings, prior.allowance)
  const paces = pacesOf(box, prior.airChangesPerDay, character)
  const start = startLaw(box, surroundings, prior.allowance, errors, character)
  const tracks = logRates(paces).map((logRate) =>
    tracked(start, course, logRate, priorOfRate(paces, logRate), box.startedOn, seen, new Set(stops)),
  )
  return { course, seen, tracks }
}

const logRates = ({ slowest, fastest }: Paces) =>
  Array.from(
    { length: paceCount },
    (_, at) => Math.log(slowest) + (Math.log(fastest / slowest) * at) / (paceCount - 1),
  )

function tracked(
  start: Law,
  course: Course,
  logRate: number,
  logPrior: number,
  from: Day,
  seen: readonly Seen[],
  stops: ReadonlySet<number>,
): Track {
  const law = copyLaw(start)
  let [day, log] = [from, logPrior]
  const laws = new Map<number, Law>()
  const logs = [log]
  for (const one of seen) {
    log += pass(law, course, Math.exp(logRate), day, one).log
    day = one.on
    logs.push(log)
    if (stops.has(logs.length - 1)) laws.set(logs.length - 1, copyLaw(law))
  }
  return { logRate, laws, logs }
}

/**
 * Whether the box stands damper than it would have come to as ever. A box that leaks more also follows the weather more, so
 * that its law can make sense of one that got drier; but drier by a loose lid it cannot get.
 */
export function gotDamper(
  { tracks, course, seen }: Tracks,
  { after, factor }: { readonly after: number; readonly factor: number },
): boolean {
  const { logRate, laws } = tracks.reduce((most, one) => (one.logs[after]! > most.logs[after]! ? one : most))
  const day = seen[after - 1]!.on
  const asEver = copyLaw(laws.get(after)!)
  advance(asEver, course, Math.exp(logRate), day, seen.at(-1)!.on - day)
  const now = copyLaw(laws.get(after)!)
  run(now, course, Math.exp(logRate) * factor, day, seen.slice(after))
  return now.mean[unknowns.inside]! > asEver.mean[unknowns.inside]!
}

/** Takes the law through sightings; gives the logarithm of how likely they were. */
function run(law: Law, course: Course, ratePerDay: number, from: Day, seen: readonly Seen[]): number {
  let [log, day] = [0, from]
  for (const one of seen) {
    log += pass(law, course, ratePerDay, day, one).log
    day = one.on
  }
  return log
}

/** How likely all sightings are if the box leaks so many times more after the first few of them. */
export function leaking({ tracks, course, seen }: Tracks, after: number, factor: number): number {
  const best = Math.max(...tracks.map(({ logs }) => logs[after]!))
  const rest = seen.slice(after)
  return logSum(
    tracks
      .filter(({ logs }) => logs[after]! > best - depth)
      .map(({ logRate, laws, logs }) => {
        const rate = Math.exp(logRate) * factor
        return logs[after]! + run(copyLaw(laws.get(after)!), course, rate, seen[after - 1]!.on, rest)
      }),
  )
}
