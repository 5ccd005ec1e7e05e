import { below, drawsFrom, type Draw } from './bins-chance.ts'
import { costOf, keeps, setWeek, type LevelProblem, type LevelState, type Weeks } from './level-weeks.ts'

export interface LevelSearch {
  readonly seed: number
  /** Steps to spend at most; the answer depends on them and never on the clock. */
  readonly steps: number
}

/**
 * Renewals moved and exchanged between weeks, always within hours and gel, as long as fewer are late, then less late, then
 * less early. A rise is let pass now and then while the search is warm, so that one can make room for another.
 */
export function levelBetter(state: LevelState, { seed, steps }: LevelSearch): Weeks {
  const { problem } = state
  const draw = drawsFrom(seed)
  let cost = total(problem, state.weeks)
  let best: Weeks = [...state.weeks]
  let bestCost = cost
  const round = Math.ceil(steps / rounds)
  for (let step = 0; step < steps && bestCost > 0; step += 1) {
    const heat = warmest * (1 - (step % round) / round) ** 2
    cost += tryStep(state, draw, heat)
    if (cost >= bestCost) continue
    best = [...state.weeks]
    bestCost = cost
  }
  return best
}

/** The search is warmed anew so many times, each time from where it is. */
const rounds = 6
const warmest = 120

export function total(problem: LevelProblem, weeks: Weeks): number {
  return weeks.reduce<number>((sum, week, job) => sum + costOf(problem, job, week), 0)
}

interface Shift {
  readonly job: number
  readonly from: number | null
  readonly to: number | null
}

function tryStep(state: LevelState, draw: Draw, heat: number): number {
  const shifts = drawnShifts(state, draw)
  const { problem } = state
  const rise = shifts.reduce(
    (sum, { job, from, to }) => sum + costOf(problem, job, to) - costOf(problem, job, from),
    0,
  )
  if (rise > 0 && (heat <= 0 || draw() >= Math.exp(-soft(rise) / heat))) return 0
  for (const { job, to } of shifts) setWeek(state, job, to)
  if (
    keeps(
      state,
      shifts.map(({ to }) => to),
    )
  )
    return rise
  for (const { job, from } of shifts.toReversed()) setWeek(state, job, from)
  return 0
}

/** Big steps are tried as if they were small ones: what is late by being moved may come back another way. */
const soft = (rise: number): number => (rise < 1000 ? rise : 100 * Math.log10(rise / 1000) + 60)

/** One job to another week, and, as often as not, one of that week to where the first came from or elsewhere. */
function drawnShifts(state: LevelState, draw: Draw): readonly Shift[] {
  const { problem, weeks } = state
  const job = below(draw, weeks.length)
  const from = weeks[job]!
  const to = drawnWeek(problem, job, draw)
  if (to === from) return []
  const first = { job, from, to }
  if (draw() < 0.4) return [first]
  if (to === null) return [first]
  const there = weeks.flatMap((week, other) => (week === to && other !== job ? [other] : []))
  if (there.length === 0) return [first]
  const other = there[below(draw, there.length)]!
  const away = draw() < 0.5 ? from : drawnWeek(problem, other, draw)
  return away === to ? [first] : [first, { job: other, from: to, to: away }]
}

/** Mostly near its last week in time, now and then anywhere, and at times in none, so that others have room. */
function drawnWeek({ jobs, room }: LevelProblem, job: number, draw: Draw): number | null {
  const last = room.length - 1
  const { deadline } = jobs[job]!
  const anywhere = draw()
  if (anywhere < 0.05) return null
  if (anywhere < 0.3) return below(draw, room.length)
  return Math.min(last, Math.max(0, Math.min(last, deadline) - below(draw, 5)))
}
