import type { BinProblem, Packing } from './bin-problem.ts'
import type { Course } from './bins-better.ts'
import { below } from './bins-chance.ts'
import { loadingOf, packingOf, put, take, takes, upkeepOf, type Load, type Loading } from './bins-load.ts'

/** Moves and exchanges between bins as long as upkeep falls: what is strict comes together, what bears more lies apart. */
export function lessUpkeep(problem: BinProblem, packing: Packing, course: Course): Packing {
  const loading = loadingOf(problem, packing)
  const dear = loading.loads.filter((load) => upkeepOf(problem, load) > 0)
  if (dear.length === 0 || loading.loads.length < 2) return packing
  let idle = 0
  const patience = 40 * problem.items.length
  while (idle < patience && course.step()) {
    const from = dear[below(course.draw, dear.length)]!
    const to = loading.loads[below(course.draw, loading.loads.length)]!
    idle = from !== to && tryMove(loading, from, to, course) ? 0 : idle + 1
  }
  return packingOf(loading)
}

/** One drawn item across, or all of its sort that make the bin as strict as it is; kept where upkeep falls. */
function tryMove(loading: Loading, from: Load, to: Load, { draw }: Course): boolean {
  const loose = from.items.slice(from.fixed)
  if (loose.length === 0) return false
  const { problem } = loading
  const before = upkeepOf(problem, from) + upkeepOf(problem, to)
  const one = loose[below(draw, loose.length)]!
  const { sort } = problem.items[one]!
  const going = draw() < 0.5 ? loose.filter((item) => problem.items[item]!.sort === sort) : [one]
  const back =
    to.items.length > to.fixed && draw() < 0.5
      ? [to.items[to.fixed + below(draw, to.items.length - to.fixed)]!]
      : []
  for (const item of [...going, ...back]) take(loading, item)
  const went = fill(loading, going, to) && fill(loading, back, from)
  if (went && from.items.length > 0 && upkeepOf(problem, from) + upkeepOf(problem, to) < before) return true
  for (const item of [...going, ...back]) if (loading.of[item] !== null) take(loading, item)
  for (const item of going) put(loading, item, from)
  for (const item of back) put(loading, item, to)
  return false
}

function fill(loading: Loading, items: readonly number[], load: Load): boolean {
  return items.every((item) => {
    if (!takes(loading, item, load)) return false
    put(loading, item, load)
    return true
  })
}
