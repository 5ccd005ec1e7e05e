import type { LeakEstimate } from './learn.ts'
import { observe } from './learn-observe.ts'
import {
  advance,
  courseOf,
  ofError,
  unknowns,
  widened,
  type Course,
  type Law,
  type RateState,
} from './learn-state.ts'
import { statesOf, type Way } from './learn-ways.ts'
import type { LogAsked, LogCandidate } from './log-next.ts'

const trialDays = 91
const everyDays = 7
/** So many truths, each as likely as the next, stand for all a box may be. */
const truths = 3

/**
 * What would be known of a box after three months of a logger, taken over what the logger might read: a measure of each
 * outcome, averaged.
 */
export function afterLogger(
  { box, surroundings, estimate }: LogCandidate,
  { today, errorRhPercent }: LogAsked,
  measure: (estimate: LeakEstimate) => number,
): number {
  const course = courseOf(box, surroundings, estimate.allowance)
  const from = Math.max(today, estimate.asOf)
  const placed = (law: Law, ratePerDay: number) => {
    const wider = widened(law, ofError(errorRhPercent))
    advance(wider, course, ratePerDay, estimate.asOf, from - estimate.asOf)
    return wider
  }
  const measures = typical(statesOf(estimate.ways)).map((truth) => {
    const readings = readingsOf(placed(truth.law, truth.ratePerDay), course, truth.ratePerDay, from)
    const ways = estimate.ways.map((way) => ({
      ...way,
      states: way.states.map((state) => {
        const law = placed(state.law, state.ratePerDay)
        const log = reads(law, course, state.ratePerDay, from, readings)
        return { ...state, law, logLikelihood: state.logLikelihood + log, log }
      }),
    }))
    return measure({ ...estimate, ways: weighedAgain(ways), asOf: from + trialDays })
  })
  return measures.reduce((sum, one) => sum + one, 0) / measures.length
}

/** Paces in the middle of equal shares of all cases. */
function typical(states: readonly RateState[]): readonly RateState[] {
  const sorted = states.toSorted((a, b) => a.ratePerDay - b.ratePerDay)
  const total = sorted.reduce((sum, { weight }) => sum + weight, 0)
  return Array.from({ length: truths }, (_, at) => {
    let left = ((at + 0.5) / truths) * total
    return sorted.find(({ weight }) => (left -= weight) <= 0) ?? sorted.at(-1)!
  })
}

/** What the logger reads if this is the truth and nothing comes by chance. */
function readingsOf(law: Law, course: Course, ratePerDay: number, from: number): readonly number[] {
  return Array.from({ length: trialDays / everyDays }, (_, at) => {
    advance(law, course, ratePerDay, from + at * everyDays, everyDays)
    return law.mean[unknowns.inside]!
  })
}

function reads(
  law: Law,
  course: Course,
  ratePerDay: number,
  from: number,
  readings: readonly number[],
): number {
  const variance = course.allowance.wanderRhPercent ** 2
  return readings.reduce((log, reading, at) => {
    advance(law, course, ratePerDay, from + at * everyDays, everyDays)
    return log + observe(law, law.size - 1, reading, variance).log
  }, 0)
}

/** A pace, and how likely it makes what the logger read. */
type Tried = RateState & { readonly log: number }

/** Every pace weighed by what it now has seen, within its way and the ways against each other. */
function weighedAgain(
  ways: readonly (Omit<Way, 'states'> & { readonly states: readonly Tried[] })[],
): readonly Way[] {
  const best = Math.max(...ways.flatMap(({ states }) => states.map(({ log }) => log)))
  const heavier = ways.map((way) => {
    const parts = way.states.map(({ weight, log }) => weight * Math.exp(log - best))
    return { way, parts, total: parts.reduce((sum, part) => sum + part, 0) }
  })
  const whole = heavier.reduce((sum, { way, total }) => sum + way.chance * total, 0)
  return heavier.map(({ way, parts, total }) => ({
    ...way,
    chance: (way.chance * total) / whole,
    states: way.states.map((state, at) => ({ ...state, weight: total > 0 ? parts[at]! / total : 0 })),
  }))
}
