import type { Range } from '../base/range.ts'
import { timeConstantDays } from '../climate/enclosure.ts'
import { seasonalDaysToLimit, yearDays } from '../climate/seasonal.ts'
import { drawsOf, type Uncertain } from '../climate/uncertain.ts'
import type { ClosedBox, Surroundings } from './box.ts'

/** A box with its leak, its gel and its room, all of them ranges, before or after a change. */
export interface Situation {
  readonly box: ClosedBox
  readonly surroundings: Surroundings
  readonly airChangesPerDay: Range
}

/** What of a situation is not known for certain, in one case. */
export type Case = readonly [leak: number, reservoir: number, mean: number, start: number]

/** Below so many days between renewals the season hardly moves from one to the next: starts over the year are tried. */
const oftenDays = 30
const startsTried = 24
/** Else renewals are followed one after another, over whole years so that no season counts for more than another. */
const renewalsFollowed = 6
const mostYears = 6

/** How often a year the gel is renewed, if it is each time the box comes to its limit. */
function renewalsPerYear(
  { box, surroundings }: Situation,
  limit: number,
  [airChangesPerDay, reservoirGPerKgPercent, meanRhPercent, start]: Case,
): number {
  const tau = timeConstantDays({ ...box, airChangesPerDay, reservoirGPerKgPercent })
  const { swingRhPercent, highestOn: highestOnDay } = surroundings
  const season = { meanRhPercent, swingRhPercent, highestOnDay }
  const lasts = (day: number) => seasonalDaysToLimit(tau, season, start, day, limit)
  const first = lasts(box.startedOn)
  if (first === null) return 0
  if (swingRhPercent === 0) return yearDays / first
  if (first < oftenDays) {
    const starts = Array.from(
      { length: startsTried },
      (_, at) => box.startedOn + (at * yearDays) / startsTried,
    )
    return starts.reduce((sum, day) => sum + yearDays / (lasts(day) ?? Infinity), 0) / startsTried
  }
  const years = Math.min(mostYears, Math.max(1, Math.ceil((renewalsFollowed * first) / yearDays)))
  const end = years * yearDays
  let [days, renewals, span] = [0, 0, first]
  while (days + span < end) {
    days += span
    renewals += 1
    span = lasts(box.startedOn + days) ?? Infinity
  }
  // Of the last filling as much as falls into these years.
  return (renewals + (end - days) / span) / years
}

const quantitiesOf = ({ box, surroundings, airChangesPerDay }: Situation): readonly Uncertain[] => [
  { range: airChangesPerDay, spreads: 'size' },
  { range: box.reservoirGPerKgPercent, spreads: 'size' },
  { range: surroundings.meanRhPercent, spreads: 'percent' },
  { range: box.startRhPercent, spreads: 'percent' },
]

/** Outcomes in every case, and by the nominal figures. */
export interface Drawn {
  readonly each: Float64Array
  readonly nominal: number
}

/** Cases of a box, the same in every situation of it. */
export function casesOf(situation: Situation, every: number): readonly Case[] {
  const [leaks, reservoirs, means, starts] = drawsOf(quantitiesOf(situation), every)
  return Array.from(leaks!, (leak, at): Case => [leak, reservoirs![at]!, means![at]!, starts![at]!])
}

const nominalOf = (situation: Situation) =>
  quantitiesOf(situation).map(({ range }) => range.nominal) as unknown as Case

export const drawnRenewals = (situation: Situation, limit: number, cases: readonly Case[]): Drawn => ({
  each: Float64Array.from(cases, (one) => renewalsPerYear(situation, limit, one)),
  nominal: renewalsPerYear(situation, limit, nominalOf(situation)),
})
