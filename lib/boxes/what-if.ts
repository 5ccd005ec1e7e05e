import type { Quantiles, Range } from '../base/range.ts'
import { timeConstantDays } from '../climate/enclosure.ts'
import { seasonalDaysToLimit, yearDays } from '../climate/seasonal.ts'
import { drawsOf, quantilesAmong, type Uncertain } from '../climate/uncertain.ts'
import type { ClosedBox, Surroundings } from './box.ts'

/** Something that could be done so that a box needs its gel renewed less often. */
export type Change =
  /** The room at another yearly mean; its swing stays. */
  | { readonly kind: 'drier-room'; readonly meanRhPercent: number }
  | { readonly kind: 'tighter-box'; readonly airChangesPerDay: Range }
  | { readonly kind: 'more-gel'; readonly gelKg: number }
  /** Walls of another film: what each lets in, as air changes a day. */
  | {
      readonly kind: 'better-film'
      readonly wallAirChangesPerDay: { readonly before: number; readonly after: number }
    }

type Spread = Quantiles & { readonly nominal: number }

/** What a box asks for in a year. Infinity: it begins over its limit, no renewal helps; 0: it never comes to it. */
export interface Upkeep {
  readonly renewalsPerYear: Spread
  readonly kgPerYear: Spread
}

export interface WhatIf {
  readonly before: Upkeep
  readonly after: Upkeep
  /** Before less after, case by case; below nothing where the change makes it worse. */
  readonly saved: Upkeep
}

/** A box with its leak, its gel and its room, all of them ranges, before or after a change. */
interface Situation {
  readonly box: ClosedBox
  readonly surroundings: Surroundings
  readonly airChangesPerDay: Range
}

/** Renewals that are followed one after another, and starts over the year that are tried where renewals are many. */
const renewalsFollowed = 12
const startsTried = 24
/** Below so many days between renewals the season hardly moves from one to the next. */
const oftenDays = 30

const shifted = ({ low, nominal, high }: Range, to: number): Range => ({
  low: Math.max(0, low + to - nominal),
  nominal: to,
  high: Math.min(100, high + to - nominal),
})

/** No film makes a box tighter than a hundredth of what it was. */
const lowered = ({ low, nominal, high }: Range, by: number): Range => ({
  low: Math.max(low / 100, low - by),
  nominal: Math.max(nominal / 100, nominal - by),
  high: Math.max(high / 100, high - by),
})

function changed(situation: Situation, change: Change): Situation {
  const { box, surroundings, airChangesPerDay } = situation
  switch (change.kind) {
    case 'drier-room': {
      const meanRhPercent = shifted(surroundings.meanRhPercent, change.meanRhPercent)
      return { ...situation, surroundings: { ...surroundings, meanRhPercent } }
    }
    case 'tighter-box':
      return { ...situation, airChangesPerDay: change.airChangesPerDay }
    case 'more-gel':
      return { ...situation, box: { ...box, gelKg: change.gelKg } }
    case 'better-film': {
      const { before, after } = change.wallAirChangesPerDay
      return { ...situation, airChangesPerDay: lowered(airChangesPerDay, before - after) }
    }
  }
}

/** How often a year the gel is renewed, if it is each time the box comes to its limit. */
function renewalsPerYear(
  { box, surroundings }: Situation,
  limit: number,
  [airChangesPerDay, reservoirGPerKgPercent, meanRhPercent, start]: readonly [number, number, number, number],
): number {
  const tau = timeConstantDays({ ...box, airChangesPerDay, reservoirGPerKgPercent })
  const { swingRhPercent, highestOn: highestOnDay } = surroundings
  const season = { meanRhPercent, swingRhPercent, highestOnDay }
  const lasts = (day: number) => seasonalDaysToLimit(tau, season, start, day, limit)
  const first = lasts(box.startedOn)
  if (first === null) return 0
  if (first < oftenDays) {
    const starts = Array.from(
      { length: startsTried },
      (_, at) => box.startedOn + (at * yearDays) / startsTried,
    )
    return starts.reduce((sum, day) => sum + yearDays / (lasts(day) ?? Infinity), 0) / startsTried
  }
  let day = box.startedOn + first
  for (let renewal = 1; renewal < renewalsFollowed; renewal += 1) day += lasts(day) ?? Infinity
  return (renewalsFollowed * yearDays) / (day - box.startedOn)
}

const quantitiesOf = ({ box, surroundings, airChangesPerDay }: Situation): readonly Uncertain[] => [
  { range: airChangesPerDay, spreads: 'size' },
  { range: box.reservoirGPerKgPercent, spreads: 'size' },
  { range: surroundings.meanRhPercent, spreads: 'percent' },
  { range: box.startRhPercent, spreads: 'percent' },
]

interface Drawn {
  readonly each: Float64Array
  readonly nominal: number
}

function drawnRenewals(situation: Situation, limit: number): Drawn {
  const quantities = quantitiesOf(situation)
  const [leak, reservoir, mean, start] = drawsOf(quantities) as readonly [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ]
  const [n, m, r, s] = quantities.map(({ range }) => range.nominal) as [number, number, number, number]
  return {
    each: leak.map((airChanges, at) =>
      renewalsPerYear(situation, limit, [airChanges, reservoir[at]!, mean[at]!, start[at]!]),
    ),
    nominal: renewalsPerYear(situation, limit, [n, m, r, s]),
  }
}

const spreadOf = ({ each, nominal }: Drawn): Spread => ({ ...quantilesAmong(each), nominal })

/** A box that holds no gel needs no kilogram, however often it is over. */
const times = (kg: number, renewals: number) => (kg === 0 ? 0 : kg * renewals)

/** Nothing is saved where neither way helps. */
const less = (one: number, other: number) => (one === other ? 0 : one - other)

const weighed = ({ each, nominal }: Drawn, kg: number): Drawn => ({
  each: each.map((renewals) => times(kg, renewals)),
  nominal: times(kg, nominal),
})

const between = (before: Drawn, after: Drawn): Drawn => ({
  each: before.each.map((one, at) => less(one, after.each[at]!)),
  nominal: less(before.nominal, after.nominal),
})

/**
 * What changes to a box would buy in a year; null where nothing limits the box. `airChangesPerDay` is what is known of its
 * leak now, learnt or written.
 */
export function whatIf(
  box: ClosedBox,
  surroundings: Surroundings,
  airChangesPerDay: Range,
  changes: readonly Change[],
): WhatIf | null {
  const limit = box.limitRhPercent
  if (limit === null) return null
  const now: Situation = { box, surroundings, airChangesPerDay }
  const then = changes.reduce(changed, now)
  const [before, after] = [drawnRenewals(now, limit), drawnRenewals(then, limit)]
  const [kgBefore, kgAfter] = [weighed(before, box.gelKg), weighed(after, then.box.gelKg)]
  return {
    before: { renewalsPerYear: spreadOf(before), kgPerYear: spreadOf(kgBefore) },
    after: { renewalsPerYear: spreadOf(after), kgPerYear: spreadOf(kgAfter) },
    saved: {
      renewalsPerYear: spreadOf(between(before, after)),
      kgPerYear: spreadOf(between(kgBefore, kgAfter)),
    },
  }
}

const sum = (spreads: readonly Spread[]): Spread => ({
  p10: spreads.reduce((total, { p10 }) => total + p10, 0),
  p50: spreads.reduce((total, { p50 }) => total + p50, 0),
  p90: spreads.reduce((total, { p90 }) => total + p90, 0),
  nominal: spreads.reduce((total, { nominal }) => total + nominal, 0),
})

const sumOf = (upkeeps: readonly Upkeep[]): Upkeep => ({
  renewalsPerYear: sum(upkeeps.map(({ renewalsPerYear: each }) => each)),
  kgPerYear: sum(upkeeps.map(({ kgPerYear }) => kgPerYear)),
})

/** Several boxes together, as if all strayed the same way: the widest the whole can be, since they share a room. */
export function together(each: readonly WhatIf[]): WhatIf {
  return {
    before: sumOf(each.map(({ before }) => before)),
    after: sumOf(each.map(({ after }) => after)),
    saved: sumOf(each.map(({ saved }) => saved)),
  }
}
