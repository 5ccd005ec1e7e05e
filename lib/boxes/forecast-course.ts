import type { ClosedBox, Day, Surroundings } from './box.ts'
import type { Mixture } from './forecast-mixture.ts'
import type { LeakEstimate } from './learn.ts'
import { advance, copyLaw, courseOf, unknowns } from './learn-state.ts'
import { statesOf } from './learn-ways.ts'

/** What a look ahead rests on. */
export type Foreseen = Pick<LeakEstimate, 'ways' | 'asOf' | 'allowance' | 'before'>

/** So long a step [d] the course of a box is drawn in: seasons and gel are slower by far. */
const stepDays = 7

/** The humidity inside on each of the days, which go upwards and begin no earlier than the estimate. */
export function courseAhead(
  box: ClosedBox,
  surroundings: Surroundings,
  { ways, asOf, allowance }: Foreseen,
  days: readonly Day[],
): readonly Mixture[] {
  const course = courseOf(box, surroundings, allowance)
  const states = statesOf(ways)
  const weights = Float64Array.from(states, ({ weight }) => weight)
  const mixtures = days.map(() => ({
    weights,
    means: new Float64Array(states.length),
    deviations: new Float64Array(states.length),
  }))
  states.forEach(({ ratePerDay, law: known }, index) => {
    const law = copyLaw(known)
    let day = asOf
    days.forEach((until, at) => {
      while (day < until) {
        const days = Math.min(stepDays, until - day)
        advance(law, course, ratePerDay, day, days)
        day += days
      }
      mixtures[at]!.means[index] = law.mean[unknowns.inside]!
      mixtures[at]!.deviations[index] = Math.sqrt(Math.max(0, law.covariance[0]!))
    })
  })
  return mixtures
}

/** Days on which the course is worked out, a week apart and both ends among them; between them it is drawn straight. */
export function knotsOf(from: Day, days: number): readonly Day[] {
  const knots = Array.from({ length: Math.ceil(days / stepDays) }, (_, at) => from + at * stepDays)
  return [...knots, from + days]
}
