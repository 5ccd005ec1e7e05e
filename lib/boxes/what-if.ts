import type { Quantiles, Range } from '../base/range.ts'
import { quantilesAmong } from '../climate/uncertain.ts'
import type { ClosedBox, Surroundings } from './box.ts'
import { casesOf, drawnRenewals, type Case, type Drawn, type Situation } from './renewals-a-year.ts'

/** Something that could be done so that a box needs its gel renewed less often. */
export type Change =
  /** The room at another yearly mean; its swing stays. */
  | { readonly kind: 'drier-room'; readonly meanRhPercent: number }
  | { readonly kind: 'tighter-box'; readonly airChangesPerDay: Range }
  /** The same box with its gaps closed: so much of what leaks in now still does [1]. */
  | { readonly kind: 'leaks-less'; readonly times: number }
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

export interface Bought {
  readonly before: Upkeep
  readonly after: Upkeep
  /** Before less after, case by case; below nothing where the change makes it worse. */
  readonly saved: Upkeep
}

export interface WhatIf extends Bought {
  /**
   * Share of the cases in which the gel comes no drier than the limit [1]: no renewal helps there, so the spreads leave them
   * out. 1 where it is so by the nominal figures already.
   */
  readonly beyondHelp: number
}

/** Of the cases each for one box; for a store full of boxes every seventh, which shares no factor with the way they were drawn. */
export const everyCase = { box: 1, store: 7 } as const

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
    case 'leaks-less': {
      const { low, nominal, high } = airChangesPerDay
      const { times: by } = change
      return { ...situation, airChangesPerDay: { low: low * by, nominal: nominal * by, high: high * by } }
    }
    case 'more-gel':
      return { ...situation, box: { ...box, gelKg: change.gelKg } }
    case 'better-film': {
      const { before, after } = change.wallAirChangesPerDay
      return { ...situation, airChangesPerDay: lowered(airChangesPerDay, before - after) }
    }
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
  every: number = everyCase.box,
): WhatIf | null {
  const limit = box.limitRhPercent
  if (limit === null) return null
  const now: Situation = { box, surroundings, airChangesPerDay }
  const then = changes.reduce(changed, now)
  // A change leaves the start of the gel alone: what is beyond help before it is so after it.
  const [nowCases, thenCases] = [casesOf(now, every), casesOf(then, every)]
  const helped = nowCases.map(([, , , start]) => start < limit)
  const inVain = box.startRhPercent.nominal >= limit
  const among = (cases: readonly Case[]) => (inVain ? cases : cases.filter((_, at) => helped[at]))
  const before = drawnRenewals(now, limit, among(nowCases))
  const after = changes.length === 0 ? before : drawnRenewals(then, limit, among(thenCases))
  const [kgBefore, kgAfter] = [weighed(before, box.gelKg), weighed(after, then.box.gelKg)]
  return {
    beyondHelp: inVain ? 1 : 1 - helped.filter(Boolean).length / helped.length,
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
export function together(each: readonly Bought[]): Bought {
  return {
    before: sumOf(each.map(({ before }) => before)),
    after: sumOf(each.map(({ after }) => after)),
    saved: sumOf(each.map(({ saved }) => saved)),
  }
}
