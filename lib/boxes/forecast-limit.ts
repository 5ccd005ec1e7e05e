import type { ClosedBox, Day, Surroundings } from './box.ts'
import { courseAhead, knotsOf, type Foreseen } from './forecast-course.ts'
import { shareBelow, type Mixture } from './forecast-mixture.ts'

/** When a box comes to a limit: a day, or null where that lies beyond what was looked ahead. */
export interface TimeToLimit {
  readonly limitRhPercent: number
  readonly from: Day
  readonly until: Day
  /** One in ten are over by then, half, nine in ten. */
  readonly p10: Day | null
  readonly p50: Day | null
  readonly p90: Day | null
  /** Chance that it stands above the limit on the first day, and that it comes to it at all until the last. */
  readonly overAlready: number
  readonly overAtAll: number
}

/** Three years: further ahead nobody plans, and lids and gel change meanwhile. */
export const lookAheadDays = 1096

export interface LimitAsked {
  readonly limitRhPercent: number
  readonly from: Day
  readonly days?: number
}

/** The day on which the box comes to the limit, looked for over three years unless said otherwise. */
export function timeToLimit(
  box: ClosedBox,
  surroundings: Surroundings,
  foreseen: Foreseen,
  { limitRhPercent, ...ask }: LimitAsked,
): TimeToLimit {
  return lookingAhead(box, surroundings, foreseen, ask)(limitRhPercent)
}

/** The same for several limits of one box: its course is drawn once. */
export function lookingAhead(
  box: ClosedBox,
  surroundings: Surroundings,
  foreseen: Foreseen,
  { from, days = lookAheadDays }: Omit<LimitAsked, 'limitRhPercent'>,
): (limitRhPercent: number) => TimeToLimit {
  const knots = knotsOf(Math.max(from, foreseen.asOf), days)
  const course = courseAhead(box, surroundings, foreseen, knots)
  return (limitRhPercent) => {
    const over = everOver(course, limitRhPercent)
    const reaches = (share: number) => dayAt(knots, over, share)
    return {
      limitRhPercent,
      from: knots[0]!,
      until: knots.at(-1)!,
      p10: reaches(0.1),
      p50: reaches(0.5),
      p90: reaches(0.9),
      overAlready: over[0]!,
      overAtAll: over.at(-1)!,
    }
  }
}

/**
 * Chance that the box has been over the limit by each day. What is unknown of a box is the same all along, so a box that is
 * over at the dampest of the season is one of those that are over at all: the chance never falls again.
 */
function everOver(course: readonly Mixture[], limitRhPercent: number): readonly number[] {
  let most = 0
  return course.map((mixture) => {
    most = Math.max(most, 1 - shareBelow(mixture, limitRhPercent))
    return most
  })
}

function dayAt(knots: readonly Day[], over: readonly number[], share: number): Day | null {
  const at = over.findIndex((chance) => chance >= share)
  if (at < 0) return null
  if (at === 0) return knots[0]!
  const [from, to] = [over[at - 1]!, over[at]!]
  return knots[at - 1]! + ((share - from) / (to - from)) * (knots[at]! - knots[at - 1]!)
}
