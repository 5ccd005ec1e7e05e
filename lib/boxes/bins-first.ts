import type { BinItem, BinProblem, Packing } from './bin-problem.ts'
import { emptyLoading, ends, packingOf, part, put, takes, type Load, type Loading } from './bins-load.ts'
import { packByBin } from './bins-by-bin.ts'
import { openBiggest, smallerKinds } from './bins-kinds.ts'
import { better, worthOf } from './bins-worth.ts'

/** How big an item is beside the biggest bin that takes it: parts of both sizes together. */
export function bulkOf({ kinds }: BinProblem): (item: BinItem) => number {
  const largest = {
    first: largestOf(kinds.map(({ first }) => first)),
    second: largestOf(kinds.map(({ second }) => second)),
  }
  return ({ first, second }) => part(first, largest.first) + part(second, largest.second)
}

const largestOf = (sizes: readonly number[]): number => Math.max(0, ...sizes.filter(Number.isFinite))

type Order = (problem: BinProblem) => (a: number, b: number) => number

/** By bands, the strictest first, so that what bears more fills up the gaps; the biggest first within each. */
const byBand: Order = (problem) => {
  const { items, sorts } = problem
  const bulk = bulkOf(problem)
  return (a, b) =>
    sorts[items[a]!.sort]!.high - sorts[items[b]!.sort]!.high ||
    sorts[items[b]!.sort]!.low - sorts[items[a]!.sort]!.low ||
    bulk(items[b]!) - bulk(items[a]!) ||
    a - b
}

const bySize: Order = (problem) => {
  const bulk = bulkOf(problem)
  return (a, b) => bulk(problem.items[b]!) - bulk(problem.items[a]!) || a - b
}

/** By the size of which there is most beside what one bin holds. */
const byScarcerSize: Order = (problem) => {
  const { items } = problem
  const scarce = ({ first, second }: BinItem) => {
    const { first: most, second: heaviest } = problem.kinds[0] ?? { first: 0, second: 0 }
    return Math.max(part(first, most), part(second, heaviest))
  }
  return (a, b) => scarce(items[b]!) - scarce(items[a]!) || a - b
}

const byRank =
  (then: Order): Order =>
  (problem) => {
    const next = then(problem)
    return (a, b) => problem.items[a]!.rank - problem.items[b]!.rank || next(a, b)
  }

/** Best fit, the items taken in several orders: good at once, also for thousands. The best of them is kept. */
export function packAtOnce(problem: BinProblem): Packing {
  const limited = problem.kinds.some(({ count }) => Number.isFinite(count))
  const orders = [byBand, bySize, byScarcerSize, ...(limited ? [byRank(byBand), byRank(bySize)] : [])]
  const byBin = orders
    .filter((_, at) => at === 0 || at === 3)
    .map((order) => packByBin(problem, queueOf(problem, order)))
  const packings = [
    ...orders.map((order) => bestFit(problem, order)),
    ...byBin.filter((packing) => packing !== null),
    firstFitDecreasing(problem),
  ]
  return packings.reduce((best, one) => (better(worthOf(problem, one), worthOf(problem, best)) ? one : best))
}

/** The usual yardstick: the items by falling size, each into the first bin that takes it. */
export function firstFitDecreasing(problem: BinProblem): Packing {
  return fit(problem, bySize, (_loading, loads) => loads[0])
}

function bestFit(problem: BinProblem, order: Order): Packing {
  return fit(problem, order, (loading, loads, item) => tightest(loading, loads, item))
}

type Choose = (loading: Loading, loads: readonly Load[], item: number) => Load | undefined

function fit(problem: BinProblem, order: Order, choose: Choose): Packing {
  const loading = emptyLoading(problem)
  const queue = queueOf(problem, order).filter((item) => loading.of[item] === null)
  const least = leastAhead(problem, queue)
  let open = [...loading.loads]
  queue.forEach((item, at) => {
    const fitting = open.filter((load) => takes(loading, item, load))
    const load = choose(loading, fitting, item) ?? openBiggest(loading, item)
    if (load === null) return
    if (load.items.length === 0 && load.opened === null) open.push(load)
    put(loading, item, load)
    // A bin that has no room for the smallest thing still to come need not be looked at again.
    if (at % 16 === 15) open = open.filter((one) => hasRoom(problem, one, least[at + 1]))
  })
  return smallerKinds(problem, packingOf(loading))
}

const queueOf = (problem: BinProblem, order: Order): readonly number[] =>
  problem.items
    .map((_, item) => item)
    .filter((item) => problem.items[item]!.kinds.length > 0)
    .toSorted(order(problem))

interface Least {
  readonly first: number
  readonly second: number
}

function leastAhead({ items }: BinProblem, queue: readonly number[]): readonly Least[] {
  const least: Least[] = []
  let so: Least = { first: Infinity, second: Infinity }
  for (let at = queue.length - 1; at >= 0; at -= 1) {
    const { first, second } = items[queue[at]!]!
    so = { first: Math.min(so.first, first), second: Math.min(so.second, second) }
    least[at] = so
  }
  return least
}

function hasRoom({ kinds }: BinProblem, { kind, first, second }: Load, least: Least | undefined): boolean {
  if (least === undefined) return true
  const size = kinds[kind]!
  return first + least.first <= size.first && second + least.second <= size.second
}

/** Where least room is left over, bins first whose upkeep it would not raise. */
function tightest(loading: Loading, loads: readonly Load[], item: number): Load | undefined {
  const { problem } = loading
  const { sort } = problem.items[item]!
  let best: Load | undefined
  let bestRoom = Infinity
  for (const load of loads) {
    const size = problem.kinds[load.kind]!
    const room = 2 - part(load.first, size.first) - part(load.second, size.second)
    const rises = load.counts[sort] === 0 && narrows(problem, load, sort) ? 4 : 0
    if (room + rises < bestRoom) {
      best = load
      bestRoom = room + rises
    }
  }
  return best
}

function narrows(problem: BinProblem, load: Load, sort: number): boolean {
  const before = ends(problem, load.counts)
  if (before === null) return false
  const { low, high } = problem.sorts[sort]!
  return low > before.low || high < before.high
}
