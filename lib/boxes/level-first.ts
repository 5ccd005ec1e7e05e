import { emptyState, trySet, type LevelProblem, type LevelState } from './level-weeks.ts'

/**
 * Each renewal in the latest week that is in time and has hours and gel for it, the one that is due first first; where there
 * is none, in the first week after that is left. By hours alone no plan has more of them in time.
 */
export function levelAtOnce(problem: LevelProblem): LevelState {
  const state = emptyState(problem)
  const order = problem.jobs
    .map((_, job) => job)
    .toSorted(
      (a, b) =>
        problem.jobs[a]!.deadline - problem.jobs[b]!.deadline ||
        problem.jobs[b]!.gelG - problem.jobs[a]!.gelG ||
        a - b,
    )
  // Those that come late anyway wait until all that can be in time have their week.
  const late = order.filter((job) => !placeInTime(state, job))
  for (const job of late) placeLate(state, job)
  return state
}

function placeInTime(state: LevelState, job: number): boolean {
  const last = state.room.length - 1
  for (let week = Math.min(state.problem.jobs[job]!.deadline, last); week >= 0; week -= 1)
    if (trySet(state, job, week)) return true
  return false
}

function placeLate(state: LevelState, job: number): void {
  const from = Math.max(0, state.problem.jobs[job]!.deadline + 1)
  for (let week = from; week < state.room.length; week += 1) if (trySet(state, job, week)) return
}
