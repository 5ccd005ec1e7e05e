import type { Day, Sighting } from './box.ts'
import type { Allowance } from './leak-prior.ts'
import { unknowns } from './learn-state.ts'
import type { Offset } from './learn-observe.ts'
import { momentsOf, spreadOf } from './learn-spread.ts'

/** Sightings as the model learns from them, in order of days. */
export type Seen =
  | {
      readonly kind: 'read'
      readonly on: Day
      readonly offset: Offset
      readonly rhPercent: number
      readonly variance: number
    }
  | {
      readonly kind: 'within'
      readonly on: Day
      readonly offset: Offset
      readonly low: number
      readonly high: number
      readonly variance: number
    }
  | { readonly kind: 'loose'; readonly on: Day }

export interface Gathered {
  readonly seen: readonly Seen[]
  readonly serials: readonly string[]
  /** ± of each logger and of the strip [%], the widest that was named. */
  readonly errors: { readonly loggers: readonly number[]; readonly strip: number }
}

/** So many readings tell of a slow box what thousands would. */
const mostReadings = 60
/** A logger strays from its offset about a week at a time; closer readings tell the less. */
const wanderDays = 7

const ofLogger = (sighting: Sighting) => sighting.kind === 'logger' || sighting.kind === 'below-range'
const serialOf = (sighting: Sighting) => ('serial' in sighting ? (sighting.serial ?? '') : '')

/** `recentDays` back from the last sighting readings are kept a day apart, so that it can be told on which something began. */
export function gather(sightings: readonly Sighting[], allowance: Allowance, recentDays = 0): Gathered {
  const ordered = sightings.toSorted((a, b) => a.on - b.on)
  const byLogger = Map.groupBy(ordered.filter(ofLogger), serialOf)
  const serials = [...byLogger.keys()].toSorted()
  const loggers = serials.map((serial) => widest(byLogger.get(serial)!))
  const seen = [
    ...serials.flatMap((serial, at) => {
      const read = byLogger.get(serial)!
      const isRecent = ({ on }: Sighting) => on > ordered.at(-1)!.on - recentDays
      const older = read.filter((one) => !isRecent(one))
      return [
        ...thinned(older, mostReadings, unknowns.loggers + at, allowance),
        ...thinned(read.filter(isRecent), recentDays, unknowns.loggers + at, allowance),
      ]
    }),
    ...ordered.flatMap((sighting) => strip(sighting, allowance)),
    ...spent(ordered, allowance),
    ...ordered.flatMap(({ kind, on }): Seen[] => (kind === 'lid-loose' ? [{ kind: 'loose', on }] : [])),
  ]
  return {
    // A lid found loose let in what is read the same day.
    seen: seen.toSorted((a, b) => a.on - b.on || Number(b.kind === 'loose') - Number(a.kind === 'loose')),
    serials,
    errors: { loggers, strip: widest(ordered.filter(({ kind }) => kind === 'strip')) },
  }
}

const widest = (sightings: readonly Sighting[]) =>
  sightings.reduce((most, one) => ('errorRhPercent' in one ? Math.max(most, one.errorRhPercent) : most), 0)

/** Means over stretches of time of one logger. A stretch that dips below its range counts as below it. */
function thinned(
  sightings: readonly Sighting[],
  most: number,
  offset: number,
  { wanderRhPercent }: Allowance,
): readonly Seen[] {
  if (sightings.length === 0) return []
  const first = sightings[0]!.on
  const span = sightings.at(-1)!.on - first
  const width = Math.max(1, (span + 1) / most)
  const stretches = [...Map.groupBy(sightings, ({ on }) => Math.floor((on - first) / width)).values()]
  const apart = stretches.length > 1 ? span / (stretches.length - 1) : wanderDays
  const variance = wanderRhPercent ** 2 * Math.max(1, wanderDays / apart)
  return stretches.map((stretch): Seen => {
    const on = mean(stretch.map((one) => one.on))
    const below = stretch.flatMap((one) => (one.kind === 'below-range' ? [one.floorRhPercent] : []))
    if (below.length * 2 >= stretch.length)
      return { kind: 'within', on, offset, low: -Infinity, high: Math.max(...below), variance }
    const readings = stretch.flatMap((one) => (one.kind === 'logger' ? [one.rhPercent] : []))
    return { kind: 'read', on, offset, rhPercent: mean(readings), variance }
  })
}

const mean = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0) / numbers.length

/** The lowest field of a strip begins at nothing and the highest has no end. */
function strip(sighting: Sighting, { stripReadingRhPercent }: Allowance): readonly Seen[] {
  if (sighting.kind !== 'strip') return []
  const { on, lowRhPercent, highRhPercent } = sighting
  const low = lowRhPercent <= 0 ? -Infinity : lowRhPercent
  const high = highRhPercent >= 100 ? Infinity : highRhPercent
  return [{ kind: 'within', on, offset: unknowns.strip, low, high, variance: stripReadingRhPercent ** 2 }]
}

/** Only the first spent colour tells anything: the gel turns once, at a humidity of its own that stays unknown. */
function spent(sightings: readonly Sighting[], { spentRhPercent }: Allowance): readonly Seen[] {
  const first = sightings.find(({ kind }) => kind === 'gel-spent')
  if (!first) return []
  const turns = momentsOf(spreadOf(spentRhPercent))
  return [
    {
      kind: 'within',
      on: first.on,
      offset: null,
      low: turns.mean,
      high: Infinity,
      variance: turns.deviation ** 2,
    },
  ]
}
