import type { BinProblem, PackedBin, Packing } from './bin-problem.ts'

/** A bin while it is being filled. */
export interface Load {
  kind: number
  readonly opened: number | null
  readonly items: number[]
  /** How many of `items`, from the first on, stay whatever happens. */
  readonly fixed: number
  first: number
  second: number
  /** Items of each sort in it. */
  readonly counts: Uint16Array
  /** For each sort, how many of the sorts in it that one may not lie with. */
  readonly blocked: Uint16Array
}

/** All bins of a packing under way. Filled and emptied in place: a search tries millions of moves. */
export interface Loading {
  readonly problem: BinProblem
  readonly loads: Load[]
  /** For each item the load it lies in; null: in none. */
  readonly of: (Load | null)[]
  /** Bins of each kind that can still be opened. */
  readonly free: number[]
}

/** Where sorts part and what a sort cannot lie with, once a problem. */
const apart = new WeakMap<BinProblem, readonly Uint16Array[]>()

function apartFrom(problem: BinProblem): readonly Uint16Array[] {
  const known = apart.get(problem)
  if (known) return known
  const count = problem.sorts.length
  const fresh = problem.sorts.map((_, sort) =>
    Uint16Array.from({ length: count }, (_, other) => 1 - problem.mayShare[sort * count + other]!),
  )
  apart.set(problem, fresh)
  return fresh
}

export function emptyLoading(problem: BinProblem): Loading {
  const loading: Loading = {
    problem,
    loads: [],
    of: problem.items.map(() => null),
    free: problem.kinds.map(({ count }) => count),
  }
  problem.opened.forEach(({ kind, items }, opened) => {
    const load = newLoad(problem, kind, opened, items.length)
    loading.loads.push(load)
    for (const item of items) put(loading, item, load)
  })
  return loading
}

function newLoad({ sorts }: BinProblem, kind: number, opened: number | null, fixed: number): Load {
  return {
    kind,
    opened,
    items: [],
    fixed,
    first: 0,
    second: 0,
    counts: new Uint16Array(sorts.length),
    blocked: new Uint16Array(sorts.length),
  }
}

export function openLoad(loading: Loading, kind: number): Load {
  const load = newLoad(loading.problem, kind, null, 0)
  loading.free[kind]! -= 1
  loading.loads.push(load)
  return load
}

/** Takes an empty bin away again. */
export function closeLoad(loading: Loading, load: Load): void {
  loading.free[load.kind]! += 1
  loading.loads.splice(loading.loads.indexOf(load), 1)
}

export function put(loading: Loading, item: number, load: Load): void {
  const { problem, of } = loading
  const { first, second, sort } = problem.items[item]!
  of[item] = load
  load.items.push(item)
  load.first += first
  load.second += second
  load.counts[sort]! += 1
  if (load.counts[sort] === 1) block(problem, load, sort, 1)
}

export function take(loading: Loading, item: number): void {
  const { problem, of } = loading
  const load = of[item]!
  const { first, second, sort } = problem.items[item]!
  of[item] = null
  load.items.splice(load.items.lastIndexOf(item), 1)
  load.first -= first
  load.second -= second
  load.counts[sort]! -= 1
  if (load.counts[sort] === 0) block(problem, load, sort, -1)
}

function block(problem: BinProblem, load: Load, sort: number, by: number): void {
  const apartOfSort = apartFrom(problem)[sort]!
  for (let other = 0; other < apartOfSort.length; other += 1)
    if (apartOfSort[other] === 1) load.blocked[other]! += by
}

/** Whether an item goes in beside all that lies there. */
export function takes({ problem }: Loading, item: number, load: Load): boolean {
  const { first, second, sort, kinds } = problem.items[item]!
  const kind = problem.kinds[load.kind]!
  return (
    load.first + first <= kind.first &&
    load.second + second <= kind.second &&
    load.blocked[sort] === 0 &&
    kinds.includes(load.kind)
  )
}

/** The narrowest ends of the sorts in it, `also` counted with them; null where it holds nothing. */
export function ends(
  { sorts }: BinProblem,
  counts: Uint16Array,
  also: number | null = null,
): { readonly low: number; readonly high: number } | null {
  let low = -Infinity
  let high = Infinity
  sorts.forEach((sort, at) => {
    if ((counts[at] ?? 0) === 0 && at !== also) return
    if (sort.low > low) low = sort.low
    if (sort.high < high) high = sort.high
  })
  return high === Infinity && low === -Infinity ? null : { low, high }
}

export function upkeepOf(problem: BinProblem, { kind, counts }: Pick<Load, 'kind' | 'counts'>): number {
  const narrowest = ends(problem, counts)
  return narrowest === null ? 0 : problem.upkeep(kind, narrowest.low, narrowest.high)
}

/** How full a bin is, as a part of both its sizes together: 0 to 2. */
export function fullness({ kinds }: BinProblem, { kind, first, second }: Load): number {
  const size = kinds[kind]!
  return part(first, size.first) + part(second, size.second)
}

export const part = (size: number, whole: number): number =>
  whole > 0 && Number.isFinite(whole) ? size / whole : 0

export function packingOf({ loads, of, problem }: Loading): Packing {
  return {
    bins: loads
      .filter(({ items }) => items.length > 0)
      .map(({ kind, opened, items }): PackedBin => ({
        kind,
        opened,
        items: items.toSorted((a, b) => a - b),
      })),
    left: problem.items.flatMap((_, item) => (of[item] === null ? [item] : [])),
  }
}

/** A packing taken up again, to be changed. */
export function loadingOf(problem: BinProblem, packing: Packing): Loading {
  const loading = emptyLoading(problem)
  for (const { kind, opened, items } of packing.bins) {
    const load =
      opened === null ? openLoad(loading, kind) : loading.loads.find((one) => one.opened === opened)!
    for (const item of items) if (loading.of[item] === null) put(loading, item, load)
  }
  return loading
}
