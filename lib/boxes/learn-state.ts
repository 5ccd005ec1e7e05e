import { seasonalRhAfterDays, yearDays } from '../climate/seasonal.ts'
import type { ClosedBox, Day, Range, Surroundings } from './box.ts'
import type { Allowance } from './leak-prior.ts'
import { momentsOf, spreadOf } from './learn-spread.ts'

/**
 * The unknowns of a box as one normal law, in this order: its humidity, the room's mean, the room's swing by cosine and by
 * sine, how the gel bends, the strip's offset, and an offset for each logger. At one pace of the box all of them enter its
 * course in a straight line, so a normal law stays one.
 */
export const unknowns = { inside: 0, mean: 1, cosine: 2, sine: 3, bend: 4, strip: 5, loggers: 6 } as const

/** A normal law of the unknowns; what works on it writes it over. */
export interface Law {
  readonly size: number
  readonly mean: Float64Array
  /** Row by row. */
  readonly covariance: Float64Array
}

/** What is known at one pace of the box: how likely that pace is, and the unknowns that go with it. */
export interface RateState {
  /** Share of its distance from the room that the box makes good in a day [1/d]. */
  readonly ratePerDay: number
  readonly weight: number
  /** Logarithm of how likely the sightings are at this pace, whatever was thought of it before. */
  readonly logLikelihood: number
  readonly law: Law
}

/** What holds for a box at every pace: the room's season, and how much may be allowed for what the model leaves out. */
export interface Course {
  readonly highestOn: Day
  readonly startRhPercent: number
  readonly allowance: Allowance
}

export const courseOf = (box: ClosedBox, { highestOn }: Surroundings, allowance: Allowance): Course => ({
  highestOn,
  startRhPercent: momentsOf(spreadOf(box.startRhPercent)).mean,
  allowance,
})

/** How a box may stray from the law of one reservoir and one temperature. */
export interface Character {
  readonly bendPerTenPercent: Range
  readonly seasonalPace: number
}

export const lawful: Character = { bendPerTenPercent: { low: 0, nominal: 0, high: 0 }, seasonalPace: 0 }

/** Standard deviation [%] of something whose error is a ± of two of them. */
export const ofError = (errorRhPercent: number) => errorRhPercent / 2

/** The law on the day the box began, before anything was seen. */
export function startLaw(
  box: ClosedBox,
  surroundings: Surroundings,
  allowance: Allowance,
  errors: { readonly strip: number; readonly loggers: readonly number[] },
  character: Character,
): Law {
  const size = unknowns.loggers + errors.loggers.length
  const law = { size, mean: new Float64Array(size), covariance: new Float64Array(size * size) }
  const put = (at: number, mean: number, deviation: number) => {
    law.mean[at] = mean
    law.covariance[at * size + at] = deviation ** 2
  }
  const known = (range: Range) => momentsOf(spreadOf(range))
  const start = known(box.startRhPercent)
  const room = known(surroundings.meanRhPercent)
  const swing = ofError(surroundings.swingErrorRhPercent ?? allowance.swingErrorRhPercent[surroundings.from])
  put(unknowns.inside, start.mean, start.deviation)
  put(unknowns.mean, room.mean, room.deviation)
  // A pace that follows the seasons brings in what a greater swing would.
  const faster = character.seasonalPace * Math.max(0, room.mean - start.mean)
  put(unknowns.cosine, surroundings.swingRhPercent, Math.hypot(swing, faster))
  put(unknowns.sine, 0, Math.hypot(swing, faster))
  const bend = known(character.bendPerTenPercent)
  put(unknowns.bend, bend.mean, bend.deviation)
  put(unknowns.strip, 0, ofError(errors.strip))
  errors.loggers.forEach((error, at) => put(unknowns.loggers + at, 0, ofError(error)))
  return law
}

export const copyLaw = ({ size, mean, covariance }: Law): Law => ({
  size,
  mean: mean.slice(),
  covariance: covariance.slice(),
})

/** The same law with one more unknown at its end: the offset of a logger put in now. */
export function widened({ size, mean, covariance }: Law, deviation: number): Law {
  const wider = {
    size: size + 1,
    mean: new Float64Array(size + 1),
    covariance: new Float64Array((size + 1) ** 2),
  }
  wider.mean.set(mean)
  for (let row = 0; row < size; row += 1)
    wider.covariance.set(covariance.subarray(row * size, (row + 1) * size), row * (size + 1))
  wider.covariance[(size + 1) ** 2 - 1] = deviation ** 2
  return wider
}

/** The same law with one unknown known anew, and owing nothing to the others. */
export function setUnknown(law: Law, unknown: number, mean: number, deviation: number): Law {
  const anew = copyLaw(law)
  for (let other = 0; other < law.size; other += 1) {
    anew.covariance[unknown * law.size + other] = 0
    anew.covariance[other * law.size + unknown] = 0
  }
  anew.mean[unknown] = mean
  anew.covariance[unknown * law.size + unknown] = deviation ** 2
  return anew
}

/** So far [%] from where it began the gel of a box is followed; further on nothing is known of how it bends. */
const bentUpTo = 25

/** The law some days later, at one pace of the box. */
export function advance(law: Law, course: Course, ratePerDay: number, from: Day, days: number): void {
  if (days <= 0) return
  const { size, mean, covariance } = law
  const { allowance, highestOn } = course
  const timeConstant = 1 / ratePerDay
  const gained = -Math.expm1(-days * ratePerDay)
  const kept = 1 - gained
  const season = (highest: Day) =>
    seasonalRhAfterDays(
      timeConstant,
      { meanRhPercent: 0, swingRhPercent: 1, highestOnDay: highest },
      0,
      from,
      days,
    )
  const cosine = season(highestOn)
  const sine = season(highestOn + yearDays / 4)
  const towards =
    mean[unknowns.mean]! * gained + mean[unknowns.cosine]! * cosine + mean[unknowns.sine]! * sine
  const inside = mean[unknowns.inside]!
  // What a pace faster by one part changes: nothing at once, and nothing in the end.
  const faster = ((towards - inside * gained) / gained) * days * ratePerDay * kept
  const come = Math.min(bentUpTo, Math.max(0, inside - course.startRhPercent))
  const bend = (faster * come) / 10
  const row = [kept, gained, cosine, sine, bend]
  mean[0] = kept * inside + towards + bend * mean[unknowns.bend]!
  const first = new Float64Array(size)
  for (let j = 0; j < size; j += 1) {
    let sum = 0
    for (let i = 0; i < row.length; i += 1) sum += row[i]! * covariance[i * size + j]!
    first[j] = sum
  }
  let own = 0
  for (let i = 0; i < row.length; i += 1) own += row[i]! * first[i]!
  for (let j = 1; j < size; j += 1) {
    covariance[j] = first[j]!
    covariance[j * size] = first[j]!
  }
  covariance[0] = own + weatherVariance(allowance, ratePerDay, kept)
  const drift = (allowance.driftRhPercentPerYear ** 2 * days) / yearDays
  for (let at = unknowns.loggers; at < size; at += 1) covariance[at * size + at]! += drift
}

/**
 * What the room's weather adds to a box in one step. Weather that lasts is taken as a noise without memory, of the strength
 * that brings a box left to it to the same unrest in the end.
 */
function weatherVariance(
  { weatherRhPercent, weatherDays }: Allowance,
  ratePerDay: number,
  kept: number,
): number {
  const lasting = ratePerDay * weatherDays
  return ((weatherRhPercent ** 2 * lasting) / (1 + lasting)) * (1 - kept ** 2)
}
