import { addDays, daysBetween, type IsoDate } from '../base/calendar.ts'
import { levelBetter, type LevelSearch } from './level-better.ts'
import { levelAtOnce } from './level-first.ts'
import type { LevelProblem } from './level-weeks.ts'
import type { Means, RenewalDue } from './level-work.ts'
import { grams, stockOf } from './stock.ts'

/** One renewal, the first that is due of its box or one after it, and the week it got. */
export interface Turn {
  readonly due: RenewalDue
  readonly turn: number
  readonly safeOn: IsoDate
  /** The last week in which it comes in time; -1: before the first. */
  readonly deadline: number
  readonly week: number | null
}

export const weekOn = ({ startOn }: Means, week: number): IsoDate => addDays(startOn, 7 * week)

/** Renewals a week has hours for; Infinity where nobody has said how many there are. */
export function roomOf(means: Means, week: number): number {
  const hours = hoursIn(means, week)
  const minutes = means.minutesPerBox
  return Number.isFinite(hours) && minutes > 0 ? Math.floor((hours * 60) / minutes + 1e-9) : Infinity
}

/** A week belongs to the month it begins in. */
export function hoursIn(means: Means, week: number): number {
  const month = Number(weekOn(means, week).slice(5, 7))
  return means.hoursPerWeek[month - 1] ?? Infinity
}

/**
 * The first renewal of each box is levelled with those of all others; then the second of each, for which the gel lasts from
 * the day the first was planned, beside what is settled by then; and so on to the end of the weeks.
 */
export function levelTurns(dues: readonly RenewalDue[], means: Means, search: LevelSearch): readonly Turn[] {
  const all: Turn[] = []
  let waiting: readonly Omit<Turn, 'week'>[] = inside(
    means,
    dues.map((due) => ({ due, turn: 1, safeOn: due.safeOn, deadline: weekOf(means, due.safeOn) })),
  )
  while (waiting.length > 0) {
    const problem = problemOf(waiting, all, means)
    const weeks = levelBetter(levelAtOnce(problem), search)
    const settled = waiting.map((one, at): Turn => ({ ...one, week: weeks[at]! }))
    all.push(...settled)
    waiting = inside(
      means,
      settled.flatMap((one) => nextTurn(means, one)),
    )
  }
  return all
}

function weekOf({ startOn }: Means, day: IsoDate): number {
  return Math.max(-1, Math.floor(daysBetween(startOn, day) / 7))
}

const inside = <One extends Pick<Turn, 'deadline'>>(
  { weeks }: Means,
  turns: readonly One[],
): readonly One[] => turns.filter(({ deadline }) => deadline < weeks)

/** The day a renewal is done by: the end of its week, or the safe day where that comes first. */
export function doneBy(
  means: Means,
  { week, safeOn, deadline }: Pick<Turn, 'week' | 'safeOn' | 'deadline'>,
): IsoDate {
  const end = addDays(weekOn(means, week ?? 0), 6)
  return week === deadline && safeOn < end ? safeOn : end
}

function nextTurn(means: Means, done: Turn): readonly Omit<Turn, 'week'>[] {
  const { due, turn, week } = done
  if (week === null || due.lastsDays === null) return []
  const safeOn = addDays(doneBy(means, done), Math.floor(due.lastsDays))
  // However short it lasts, the next comes in another week.
  const deadline = Math.max(week + 1, weekOf(means, safeOn))
  return [{ due, turn: turn + 1, safeOn, deadline }]
}

function problemOf(
  waiting: readonly Omit<Turn, 'week'>[],
  settled: readonly Turn[],
  means: Means,
): LevelProblem {
  const room = Array.from({ length: means.weeks }, (_, week) => roomOf(means, week))
  const usedG = room.map(() => 0)
  for (const { week, due } of settled) {
    if (week === null) continue
    room[week]! -= 1
    usedG[week]! += grams(due.gelKg)
  }
  return {
    jobs: waiting.map(({ due, deadline }) => ({ deadline, gelG: grams(due.gelKg) })),
    room,
    usedG,
    stock: stockOf(means),
  }
}
