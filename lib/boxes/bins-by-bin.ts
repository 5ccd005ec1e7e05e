import type { BinProblem, Packing } from './bin-problem.ts'
import { openBiggest, smallerKinds } from './bins-kinds.ts'
import { emptyLoading, packingOf, part, put, takes, type Load, type Loading } from './bins-load.ts'

/** Beyond so many items looking at each of them for each place takes too long for an answer at once. */
const mostItems = 8000

/**
 * Bin after bin filled with what suits its room best: where weight is nearly used up something light and bulky, where room is,
 * something heavy. The first in `queue` opens a bin. Null where there are too many items for that.
 */
export function packByBin(problem: BinProblem, queue: readonly number[]): Packing | null {
  if (queue.length > mostItems) return null
  const loading = emptyLoading(problem)
  const waiting = new Set(queue.filter((item) => loading.of[item] === null))
  for (const load of loading.loads) fill(loading, load, waiting)
  for (const item of queue) {
    if (!waiting.has(item)) continue
    const load = openBiggest(loading, item)
    if (load === null) continue
    put(loading, item, load)
    waiting.delete(item)
    fill(loading, load, waiting)
  }
  return smallerKinds(problem, packingOf(loading))
}

function fill(loading: Loading, load: Load, waiting: Set<number>): void {
  for (let best = bestFor(loading, load, waiting); best !== null; best = bestFor(loading, load, waiting)) {
    put(loading, best, load)
    waiting.delete(best)
  }
}

/** The one whose sizes lie most along the room that is left. */
function bestFor(loading: Loading, load: Load, waiting: ReadonlySet<number>): number | null {
  const { problem } = loading
  const kind = problem.kinds[load.kind]!
  const roomFirst = part(kind.first - load.first, kind.first)
  const roomSecond = part(kind.second - load.second, kind.second)
  let best: number | null = null
  let most = -1
  for (const item of waiting) {
    const { first, second } = problem.items[item]!
    const along = roomFirst * part(first, kind.first) + roomSecond * part(second, kind.second)
    if (along > most && takes(loading, item, load)) {
      best = item
      most = along
    }
  }
  return best
}
