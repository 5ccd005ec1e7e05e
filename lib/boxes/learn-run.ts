import type { ClosedBox, Day, Surroundings } from './box.ts'
import type { Allowance } from './leak-prior.ts'
import { nothingTold, observe, observeWithin, type Told } from './learn-observe.ts'
import type { Gathered, Seen } from './learn-sightings.ts'
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

/** How likely the sightings are if the box has one pace, and what is then known of everything else after the last. */
export interface Run {
  readonly logLikelihood: number
  readonly law: Law
  /** How far readings lay off what was expected of them, squared, in parts of their variance, all together. */
  readonly strayed: number
}

export interface Runner {
  readonly asOf: Day
  readonly at: (ratePerDay: number) => Run
}

/** Runs the box through its sightings at any pace asked for. */
export function runner(
  box: ClosedBox,
  surroundings: Surroundings,
  { seen, errors }: Pick<Gathered, 'seen' | 'errors'>,
  allowance: Allowance,
  character: Character,
): Runner {
  const course = courseOf(box, surroundings, allowance)
  const start = startLaw(box, surroundings, allowance, errors, character)
  const at = (ratePerDay: number) => {
    const law = copyLaw(start)
    let day = box.startedOn
    let [logLikelihood, strayed] = [0, 0]
    for (const one of seen) {
      const told = pass(law, course, ratePerDay, day, one)
      logLikelihood += told.log
      strayed += told.strayed
      day = one.on
    }
    return { logLikelihood, law, strayed }
  }
  return { asOf: seen.at(-1)?.on ?? box.startedOn, at }
}

/** Brings the law to a sighting and learns from it. */
export function pass(law: Law, course: Course, ratePerDay: number, from: Day, one: Seen): Told {
  advance(law, course, ratePerDay, from, one.on - from)
  if (one.kind === 'read') return observe(law, one.offset, one.rhPercent, one.variance)
  if (one.kind === 'within') return observeWithin(law, one.offset, one.low, one.high, one.variance)
  letIn(law, course, ratePerDay, one.on - from)
  return nothingTold
}

/** A lid found loose has let in more than the model knows, for some part of the time since the box was last looked at. */
function letIn({ mean, covariance }: Law, { allowance }: Course, ratePerDay: number, days: number): void {
  const more = allowance.looseLidFactor.nominal - 1
  const gap = Math.max(0, mean[unknowns.mean]! - mean[unknowns.inside]!)
  const gain = gap * (1 - Math.exp((-more * ratePerDay * days) / 2))
  mean[unknowns.inside]! += gain
  covariance[0]! += gain ** 2
}
