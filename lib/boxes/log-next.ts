import { yearDays } from '../climate/seasonal.ts'
import type { ClosedBox, Day, Surroundings } from './box.ts'
import { timeToLimit, type TimeToLimit } from './forecast-limit.ts'
import type { LeakEstimate } from './learn.ts'
import { afterLogger } from './log-next-trial.ts'

export interface LogCandidate {
  readonly box: ClosedBox
  readonly surroundings: Surroundings
  readonly estimate: LeakEstimate
  readonly findsAtRisk: number
  /** A logger stands in it already. */
  readonly logged: boolean
}

/** Why a logger would tell most in a box, strongest first. */
export type LogReason =
  /** It may stand over its limit and nobody would know. */
  | 'may-be-over'
  /** Its renewal date is known only within months. */
  | 'date-is-wide'
  /** Nothing was ever read in it. */
  | 'never-read'
  /** Others of its model in the room, none of them logged, would be known better too. */
  | 'teaches-others'

export interface LogNext {
  readonly box: string
  readonly reasons: readonly LogReason[]
  /** Chance that it is over its limit today [0…1]. */
  readonly overNow: number
  /** Days between early and late renewal, as known now and as known after three months of a logger. */
  readonly spreadDays: number
  readonly spreadDaysAfter: number
  readonly findsAtRisk: number
  readonly othersTaught: number
}

export interface LogAsked {
  readonly today: Day
  /** So many boxes are named at most. */
  readonly most: number
  /** ± of the logger that would be put in [%]. */
  readonly errorRhPercent: number
}

/** A find over its limit unnoticed weighs like a renewal of its box being uncertain by three years. */
const unnoticedDays = 3 * yearDays
/** What is learnt of one box holds for another of its model, whose lid is another, by a quarter. */
const holdsForOthers = 0.25
/** Two years ahead are enough to see which date is wide. */
const aheadDays = 730
/** Only so many times what is asked for is tried out, the most promising by what is known now. */
const triedOut = 3
const wideDays = 90
const oftenOver = 0.1

/** The boxes in which a logger would tell most, best first; boxes that have one, and boxes without limit, are left out. */
export function logNext(boxes: readonly LogCandidate[], ask: LogAsked): readonly LogNext[] {
  const groups = Map.groupBy(boxes, ({ box }) => `${box.model}\n${box.room}`)
  const ranked = boxes.flatMap((candidate) => {
    const { box, logged } = candidate
    if (logged || box.limitRhPercent === null) return []
    const others = taughtBy(candidate, groups.get(`${box.model}\n${box.room}`)!)
    const now = dates(candidate, candidate.estimate, ask, box.limitRhPercent)
    const ofOthers = others.reduce((sum, { findsAtRisk }) => sum + findsAtRisk, 0) * holdsForOthers
    // A date that may fall due in a year presses half as much as one that may fall due now.
    const presses = yearDays / (yearDays + (now.p10 ?? now.until) - now.from)
    const gain = (narrowed: number) =>
      candidate.findsAtRisk * now.overAlready * unnoticedDays +
      (candidate.findsAtRisk + ofOthers) * presses * narrowed
    return [{ candidate, limit: box.limitRhPercent, others, now, gain, atBest: gain(spreadOf(now)) }]
  })
  return ranked
    .toSorted((a, b) => b.atBest - a.atBest || (a.candidate.box.name < b.candidate.box.name ? -1 : 1))
    .slice(0, triedOut * ask.most)
    .map(({ candidate, limit, others, now, gain }) => {
      const spreadDays = spreadOf(now)
      const spreadDaysAfter = Math.min(
        spreadDays,
        afterLogger(candidate, ask, (estimate) => spreadOf(dates(candidate, estimate, ask, limit))),
      )
      return { gain: gain(spreadDays - spreadDaysAfter), told: told(candidate, others, now, spreadDaysAfter) }
    })
    .filter(({ gain }) => gain > 0)
    .toSorted((a, b) => b.gain - a.gain || (a.told.box < b.told.box ? -1 : 1))
    .slice(0, ask.most)
    .map((one) => one.told)
}

/** Boxes of the same model in the same room that would be known better; none where one of them has a logger already. */
function taughtBy(candidate: LogCandidate, group: readonly LogCandidate[]): readonly LogCandidate[] {
  if (candidate.box.model === null || group.some(({ logged }) => logged)) return []
  return group.filter(({ box }) => box.name !== candidate.box.name)
}

const dates = (
  { box, surroundings }: LogCandidate,
  estimate: LeakEstimate,
  { today }: LogAsked,
  limitRhPercent: number,
) => timeToLimit(box, surroundings, estimate, { limitRhPercent, from: today, days: aheadDays })

const spreadOf = ({ p10, p90, until }: TimeToLimit) => (p90 ?? until) - (p10 ?? until)

function told(
  { box, estimate, findsAtRisk }: LogCandidate,
  others: readonly LogCandidate[],
  now: TimeToLimit,
  spreadDaysAfter: number,
): LogNext {
  const reasons: readonly (readonly [LogReason, boolean])[] = [
    ['may-be-over', now.overAlready >= oftenOver],
    ['date-is-wide', spreadOf(now) >= wideDays],
    ['never-read', estimate.sightings.logger + estimate.sightings.rounds === 0],
    ['teaches-others', others.length > 0],
  ]
  return {
    box: box.name,
    reasons: reasons.filter(([, holds]) => holds).map(([reason]) => reason),
    overNow: now.overAlready,
    spreadDays: spreadOf(now),
    spreadDaysAfter,
    findsAtRisk,
    othersTaught: others.length,
  }
}
