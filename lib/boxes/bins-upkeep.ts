import type { BinProblem, Packing } from './bin-problem.ts'
import type { Course } from './bins-better.ts'
import { below } from './bins-chance.ts'
import { holds } from './bins-kinds.ts'
import { loadingOf, packingOf, put, take, upkeepOf, type Load, type Loading } from './bins-load.ts'

/**
 * Moves and exchanges between two bins at a time, both then of whatever kind is cheapest for them, as long as upkeep falls:
 * what is strict comes together, what bears more lies apart. At first a rise is let pass now and then, so that the search
 * finds its way out of hollows; where there are few steps for many items it only goes down.
 */
export function lessUpkeep(problem: BinProblem, packing: Packing, course: Course): Packing {
  const loading = loadingOf(problem, packing)
  const { loads } = loading
  const dearest = Math.max(0, ...loads.map((load) => upkeepOf(problem, load)))
  if (dearest === 0 || loads.length < 2) return packing
  const steps = Math.min(course.left(), mostStepsAnItem * problem.items.length)
  const warm = steps >= fewStepsAnItem * problem.items.length ? dearest / 4 : 0
  for (let done = 0; done < steps && course.step(); done += 1) {
    const from = loads[below(course.draw, loads.length)]!
    const to = loads[below(course.draw, loads.length)]!
    const heat = warm * Math.max(0, 1 - (done * 4) / (steps * 3)) ** 2
    if (from !== to) tryExchange(loading, from, to, heat, course)
  }
  return packingOf(loading)
}

const mostStepsAnItem = 2000
const fewStepsAnItem = 100

function tryExchange(loading: Loading, from: Load, to: Load, heat: number, { draw }: Course): void {
  const { problem } = loading
  const going = drawnFrom(problem, from, draw)
  const back = draw() < 0.5 ? drawnFrom(problem, to, draw) : []
  // A bin that were emptied would be a bin less, which is another search's business.
  if (going.length === 0 || from.items.length + back.length === going.length) return
  const before = upkeepOf(problem, from) + upkeepOf(problem, to)
  for (const item of [...going, ...back]) take(loading, item)
  const kinds = lay(loading, going, to) && lay(loading, back, from) ? cheapestKinds(loading, from, to) : null
  if (kinds !== null) {
    const rise = kinds.upkeep - before
    if (rise <= 0 || (heat > 0 && draw() < Math.exp(-rise / heat))) {
      settle(loading, from, kinds.from)
      settle(loading, to, kinds.to)
      return
    }
  }
  for (const item of [...going, ...back]) if (loading.of[item] !== null) take(loading, item)
  for (const item of going) put(loading, item, from)
  for (const item of back) put(loading, item, to)
}

/** One item, or all of its sort. */
function drawnFrom({ items }: BinProblem, load: Load, draw: () => number): readonly number[] {
  if (load.items.length === load.fixed) return []
  const one = load.items[load.fixed + below(draw, load.items.length - load.fixed)]!
  if (draw() < 0.7) return [one]
  return load.items.slice(load.fixed).filter((item) => items[item]!.sort === items[one]!.sort)
}

/** Puts them in as far as what lies there allows it; whether they fit is asked afterwards. */
function lay(loading: Loading, items: readonly number[], load: Load): boolean {
  return items.every((item) => {
    if (load.blocked[loading.problem.items[item]!.sort] !== 0) return false
    put(loading, item, load)
    return true
  })
}

interface Kinds {
  readonly from: number
  readonly to: number
  readonly upkeep: number
}

/** Of the kinds that are free once both bins let go of theirs. */
function cheapestKinds({ problem, free }: Loading, from: Load, to: Load): Kinds | null {
  const choices = (load: Load): readonly number[] =>
    load.opened === null ? problem.kinds.map((_, kind) => kind) : [load.kind]
  const there = (kind: number) => free[kind]! + own(from, kind) + own(to, kind)
  let best: Kinds | null = null
  for (const kind of choices(from)) {
    if (there(kind) < 1 || !holds(problem, from, kind)) continue
    const upkeep = upkeepOf(problem, { kind, counts: from.counts })
    for (const other of choices(to)) {
      if (there(other) < (kind === other ? 2 : 1) || !holds(problem, to, other)) continue
      const both = upkeep + upkeepOf(problem, { kind: other, counts: to.counts })
      if (best === null || both < best.upkeep) best = { from: kind, to: other, upkeep: both }
    }
  }
  return best
}

/** Opened bins are of their kind for good, and stand for one of it only where they are asked. */
const own = (load: Load, kind: number): number => Number(load.kind === kind)

function settle({ free }: Loading, load: Load, kind: number): void {
  if (load.kind === kind) return
  free[load.kind]! += 1
  free[kind]! -= 1
  load.kind = kind
}
