import { stockLasts, type Stock } from './stock.ts'

/** Renewals into weeks, in whole numbers: the problem that levelling is. */
export interface LevelProblem {
  readonly jobs: readonly LevelJob[]
  /** Renewals that the hours of each week allow; Infinity where nobody has set a limit. */
  readonly room: readonly number[]
  /** Gel that is used in each week already [g]. */
  readonly usedG: readonly number[]
  readonly stock: Stock
}

export interface LevelJob {
  /** The last week in which it comes in time; -1: it was due before the first. */
  readonly deadline: number
  readonly gelG: number
}

/** The week of each job; null: in none. */
export type Weeks = readonly (number | null)[]

/** A week late weighs more than any job being early, a job late more than weeks. */
const perWeekLate = 1000
const late = 1_000_000

export function costOf({ jobs, room }: LevelProblem, job: number, week: number | null): number {
  const { deadline } = jobs[job]!
  if (week === null) return late + perWeekLate * (room.length - deadline + 1)
  if (week <= deadline) return deadline - week
  // What was due before the beginning is late whenever it is done.
  return (deadline < 0 ? 0 : late) + perWeekLate * (week - deadline)
}

/** A plan while it is being made: what each week still allows, and whether the gel lasts. */
export interface LevelState {
  readonly problem: LevelProblem
  readonly weeks: (number | null)[]
  readonly room: number[]
  readonly usedG: Float64Array
}

export function emptyState(problem: LevelProblem): LevelState {
  return {
    problem,
    weeks: problem.jobs.map(() => null),
    room: [...problem.room],
    usedG: Float64Array.from(problem.usedG),
  }
}

export function setWeek({ problem, weeks, room, usedG }: LevelState, job: number, week: number | null): void {
  const before = weeks[job]!
  const { gelG } = problem.jobs[job]!
  if (before !== null) {
    room[before]! += 1
    usedG[before]! -= gelG
  }
  if (week !== null) {
    room[week]! -= 1
    usedG[week]! += gelG
  }
  weeks[job] = week
}

/** Whether hours and gel still do. */
export function keeps({ problem, room, usedG }: LevelState, weeks: readonly (number | null)[]): boolean {
  return weeks.every((week) => week === null || room[week]! >= 0) && stockLasts(usedG, problem.stock)
}

/** Puts a job in a week where that goes. */
export function trySet(state: LevelState, job: number, week: number): boolean {
  const before = state.weeks[job]!
  setWeek(state, job, week)
  if (keeps(state, [week])) return true
  setWeek(state, job, before)
  return false
}
