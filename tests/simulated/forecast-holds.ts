import { forecast } from '../../lib/boxes/forecast.ts'
import { learnLeak, type LeakEstimate } from '../../lib/boxes/learn.ts'
import type { LeakPrior } from '../../lib/boxes/leak-prior.ts'
import type { Sighting } from '../../lib/boxes/box.ts'
import type { DrawnBox } from './drawn-box.ts'

/** So many days after the last sighting it is looked whether the truth lay within the band. */
export const looksAhead = [30, 90, 180, 365] as const

export interface Held {
  readonly estimate: LeakEstimate
  readonly airChangesPerDay: number
  /** For each look ahead: below the band, within, above. */
  readonly looks: readonly (-1 | 0 | 1)[]
}

/** Learns a box from its sightings and looks whether what came afterwards lay within the band of eight in ten. */
export function held(drawn: DrawnBox, sightings: readonly Sighting[], prior: LeakPrior): Held {
  const { box, surroundings, airChangesPerDay, truth } = drawn
  const estimate = learnLeak(box, surroundings, sightings, prior)
  const fan = forecast(box, surroundings, estimate, { from: estimate.asOf, days: looksAhead.at(-1)! })
  const looks = looksAhead.map((days) => {
    // The truth is known at the turn of days; the fan begins with the last sighting, which may lie within one.
    const day = estimate.asOf + days - box.startedOn
    const within = day - Math.floor(day)
    const rh = truth[Math.floor(day)]! * (1 - within) + truth[Math.ceil(day)]! * within
    return rh < fan.p10[days]! ? -1 : rh > fan.p90[days]! ? 1 : 0
  })
  return { estimate, airChangesPerDay, looks }
}

export const mean = (numbers: readonly number[]) =>
  numbers.reduce((sum, one) => sum + one, 0) / numbers.length

/** Share of all looks at which the band held. */
export const shareHeld = (all: readonly Held[]) =>
  mean(all.flatMap(({ looks }) => looks.map((look) => Number(look === 0))))

/** The same for each look ahead. */
export const sharesAhead = (all: readonly Held[]) =>
  looksAhead.map((_, at) => mean(all.map(({ looks }) => Number(looks[at] === 0))))

/** How far estimates lie off the truth on the whole [one]: 0.05 is five percent too high. */
export const bias = (all: readonly Held[]) =>
  Math.exp(
    mean(
      all.map(({ estimate, airChangesPerDay }) =>
        Math.log(estimate.airChangesPerDay.nominal / airChangesPerDay),
      ),
    ),
  ) - 1

/** Share of the boxes whose true leak lay within the band told. */
export const leakHeld = (all: readonly Held[]) =>
  mean(
    all.map(({ estimate: { airChangesPerDay: told }, airChangesPerDay: truth }) =>
      Number(told.low <= truth && truth <= told.high),
    ),
  )
