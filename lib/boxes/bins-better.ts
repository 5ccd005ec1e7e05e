import type { BinProblem, Packing } from './bin-problem.ts'
import { below, drawsFrom, type Draw } from './bins-chance.ts'
import { fewestBins } from './bins-bound.ts'
import { smallerKinds } from './bins-kinds.ts'
import { closeLoad, fullness, loadingOf, packingOf, take, type Load } from './bins-load.ts'
import { poolOf, stepOf } from './bins-pool.ts'
import { lessUpkeep } from './bins-upkeep.ts'
import { better, binsUsed, worthOf } from './bins-worth.ts'

export interface Search {
  readonly seed: number
  /** Steps to spend at most; the answer depends on them and never on the clock. */
  readonly steps: number
  /** Asked now and then; false ends the search with the best there is by then. */
  readonly goOn?: (stepsDone: number) => boolean
}

/** A packing at least as good as the one given: first what was left out comes in, then bins are emptied, then upkeep falls. */
export function packBetter(problem: BinProblem, packing: Packing, search: Search): Packing {
  const course = courseOf(search)
  let best = keepBetter(problem, packing, bringInLeft(problem, packing, course))
  const forUpkeep = worthOf(problem, best).at(-1)! > 0 ? Math.floor(course.left() / 2) : 0
  best = keepBetter(problem, best, fewerBins(problem, best, course, forUpkeep))
  return keepBetter(problem, best, smallerKinds(problem, lessUpkeep(problem, best, course)))
}

/** How far a search has come. */
export interface Course {
  readonly draw: Draw
  /** One step more; false where none is left. */
  readonly step: () => boolean
  readonly left: () => number
}

function courseOf({ seed, steps, goOn }: Search): Course {
  let done = 0
  let stopped = false
  return {
    draw: drawsFrom(seed),
    step: () => {
      if (stopped || done >= steps) return false
      done += 1
      if (goOn !== undefined && done % askEvery === 0) stopped = !goOn(done)
      return !stopped
    },
    left: () => (stopped ? 0 : steps - done),
  }
}

const askEvery = 256

const keepBetter = (problem: BinProblem, best: Packing, other: Packing): Packing =>
  better(worthOf(problem, other), worthOf(problem, best)) ? other : best

function bringInLeft(problem: BinProblem, packing: Packing, course: Course): Packing {
  const homeless = packing.left.filter((item) => problem.items[item]!.kinds.length > 0)
  if (homeless.length === 0) return packing
  const loading = loadingOf(problem, packing)
  const pool = poolOf(loading, loading.loads, homeless, course.draw)
  // One more left out of a lower rank outweighs any number of higher ones, as the packing is judged.
  problem.items.forEach(({ rank }, item) => (pool.weight[item]! += 4 ** (8 - Math.min(rank, 8))))
  let best = packing
  for (let budget = Math.ceil(course.left() / 3); budget > 0 && course.step(); budget -= 1) {
    const before = pool.items.length
    stepOf(pool)
    if (pool.items.length < before || budget === 1) best = keepBetter(problem, best, packingOf(loading))
    if (pool.items.length === 0) break
  }
  return best
}

/** Empties one bin after the other, as long as what was in it finds room in the rest; `spare` steps are left over. */
function fewerBins(problem: BinProblem, packing: Packing, course: Course, spare: number): Packing {
  let best = packing
  const placed = packing.bins.flatMap(({ items }) => items)
  const fewest = fewestBins(problem, placed)
  let failures = 0
  while (binsUsed(problem, best) > fewest && course.left() > spare) {
    const loading = loadingOf(problem, best)
    const victim = victimOf(loading.loads, problem, failures, course.draw)
    if (victim === null) break
    const items = [...victim.items]
    const others = beside(problem, loading.loads, victim)
    for (const item of items) take(loading, item)
    closeLoad(loading, victim)
    const pool = poolOf(loading, others, items, course.draw)
    let budget = patience * (1 + failures) * (1 + Math.ceil(items.length / 4))
    while (pool.items.length > 0 && budget > 0 && course.left() > spare && course.step()) {
      budget -= 1
      stepOf(pool)
    }
    if (pool.items.length === 0) {
      best = packingOf(loading)
      failures = 0
    } else failures += 1
  }
  return best
}

/** Steps for the first try to empty a bin; every try that fails leaves more to the next. */
const patience = 400

/** The emptiest bins first, then any; none of which nothing can go anywhere. */
function victimOf(loads: readonly Load[], problem: BinProblem, failures: number, draw: Draw): Load | null {
  const rising = loads
    .filter((load) => load.opened === null)
    .toSorted((a, b) => fullness(problem, a) - fullness(problem, b))
  const from = failures < 4 && failures < rising.length ? failures : below(draw, rising.length)
  for (let at = 0; at < rising.length; at += 1) {
    const load = rising[(from + at) % rising.length]!
    const sorts = sortsIn(problem, load)
    if (loads.some((other) => other !== load && sorts.some((sort) => other.blocked[sort] === 0))) return load
  }
  return null
}

const sortsIn = ({ items }: BinProblem, load: Load): readonly number[] => [
  ...new Set(load.items.map((item) => items[item]!.sort)),
]

/** Bins in which anything of this one may lie as they are; of few bins all, for what lies there can make room. */
function beside(problem: BinProblem, loads: readonly Load[], load: Load): readonly Load[] {
  if (loads.length <= few) return loads.filter((other) => other !== load)
  const sorts = sortsIn(problem, load)
  return loads.filter((other) => other !== load && sorts.some((sort) => other.blocked[sort] === 0))
}

const few = 40
