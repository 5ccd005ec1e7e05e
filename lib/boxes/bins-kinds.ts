import type { BinProblem, Packing } from './bin-problem.ts'
import { loadingOf, openLoad, packingOf, upkeepOf, type Load, type Loading } from './bins-load.ts'

/** Every bin that was opened becomes one of the kind with least upkeep, and the smallest of those, that holds what is in it. */
export function smallerKinds(problem: BinProblem, packing: Packing): Packing {
  const loading = loadingOf(problem, packing)
  const opened = loading.loads.filter((load) => load.opened === null)
  // The emptiest choose first: they have most to choose from and the small bins are theirs.
  for (const load of opened.toSorted((a, b) => a.first - b.first)) rehouse(loading, load)
  return packingOf(loading)
}

export function rehouse({ problem, free }: Loading, load: Load): void {
  const cost = (kind: number) => upkeepOf(problem, { kind, counts: load.counts })
  const size = (kind: number) => problem.kinds[kind]!.first
  let best = load.kind
  for (let kind = 0; kind < problem.kinds.length; kind += 1) {
    if (kind === load.kind || free[kind]! <= 0 || !holds(problem, load, kind)) continue
    const less = cost(kind) - cost(best)
    if (less < 0 || (less === 0 && size(kind) < size(best))) best = kind
  }
  if (best === load.kind) return
  free[load.kind]! += 1
  free[best]! -= 1
  load.kind = best
}

export function holds({ kinds, items }: BinProblem, load: Load, kind: number): boolean {
  const { first, second } = kinds[kind]!
  return (
    first >= load.first &&
    second >= load.second &&
    load.items.every((item) => items[item]!.kinds.includes(kind))
  )
}

/** The biggest bin that can still be opened for it; for what lies alone the smallest. */
export function openBiggest(loading: Loading, item: number): Load | null {
  const { problem, free } = loading
  const { kinds, sort, first, second } = problem.items[item]!
  const fitting = kinds.filter(
    (kind) => free[kind]! > 0 && problem.kinds[kind]!.first >= first && problem.kinds[kind]!.second >= second,
  )
  if (fitting.length === 0) return null
  const alone = problem.mayShare[sort * problem.sorts.length + sort] === 0
  const size = (kind: number) => problem.kinds[kind]!.first
  const chosen = fitting.reduce((best, kind) =>
    (alone ? size(kind) < size(best) : size(kind) > size(best)) ? kind : best,
  )
  return openLoad(loading, chosen)
}
