import type { BinItem, BinProblem } from './bin-problem.ts'
import { part } from './bins-load.ts'

/**
 * So few bins that no packing of these items can do with fewer: where a packing needs no more, it is proved the best.
 * Sorts that no chain of sharing joins are counted apart; within each, the strongest of several bounds holds.
 */
export function fewestBins(problem: BinProblem, items: readonly number[]): number {
  const sorts = [...new Set(items.map((item) => problem.items[item]!.sort))]
  const groups = joined(problem, sorts)
  const fewest = groups.reduce((sum, group) => {
    const own = items.filter((item) => group.has(problem.items[item]!.sort))
    return sum + Math.max(fewestTogether(problem, own), fewestApart(problem, own, [...group]))
  }, 0)
  const staying = problem.opened.length
  return Math.max(fewest, staying)
}

/** Sorts that may share, or share with what shares, and so on. */
function joined(problem: BinProblem, sorts: readonly number[]): readonly ReadonlySet<number>[] {
  const groups: Set<number>[] = []
  const seen = new Set<number>()
  for (const start of sorts) {
    if (seen.has(start)) continue
    const group = new Set([start])
    for (const sort of group)
      for (const other of sorts)
        if (problem.mayShare[sort * problem.sorts.length + other] === 1) group.add(other)
    for (const sort of group) seen.add(sort)
    groups.push(group)
  }
  return groups
}

/** Sorts of which no two share need bins of their own: the heaviest set of such that is easily found. */
function fewestApart(problem: BinProblem, items: readonly number[], sorts: readonly number[]): number {
  const own = new Map(sorts.map((sort) => [sort, items.filter((item) => problem.items[item]!.sort === sort)]))
  const needs = new Map(
    sorts.map((sort) => {
      const alone = problem.mayShare[sort * problem.sorts.length + sort] === 0
      return [sort, alone ? own.get(sort)!.length : fewestTogether(problem, own.get(sort)!)]
    }),
  )
  const apart = (a: number, b: number) => problem.mayShare[a * problem.sorts.length + b] === 0
  return Math.max(
    0,
    ...sorts.map((start) => {
      const chosen = [start]
      for (const other of sorts.toSorted((a, b) => needs.get(b)! - needs.get(a)! || a - b))
        if (other !== start && chosen.every((one) => apart(one, other))) chosen.push(other)
      return chosen.reduce((sum, sort) => sum + needs.get(sort)!, 0)
    }),
  )
}

/** As if all might share: by how much there is of each size and of mixtures of both, and by what is too big to lie together. */
function fewestTogether(problem: BinProblem, items: readonly number[]): number {
  if (items.length === 0) return 0
  const all = items.map((item) => problem.items[item]!)
  const kinds = [...new Set(all.flatMap((item) => item.kinds))].map((kind) => problem.kinds[kind]!)
  const first = Math.max(...kinds.map((kind) => kind.first), ...stuffed(problem, 'first'))
  const second = Math.max(...kinds.map((kind) => kind.second), ...stuffed(problem, 'second'))
  const mixed = mixtures.map((share) =>
    fewestOfParts(
      all.map((item) => share * part(item.first, first) + (1 - share) * part(item.second, second)),
    ),
  )
  const counted = (['first', 'second'] as const).map((size) => byCapacity(problem, all, size))
  return Math.max(1, ...mixed, ...counted, tooBigTogether(all, first, second))
}

const mixtures = [1, 0.75, 0.6, 0.5, 0.4, 0.25, 0] as const

type Size = 'first' | 'second'

/** What lies in the opened bins for good: it may be more than by our figures they hold. */
function stuffed({ opened, items }: BinProblem, size: Size): readonly number[] {
  return opened.map((bin) => bin.items.reduce((sum, item) => sum + items[item]![size], 0))
}

/** The biggest bins first, until their capacities together hold all there is. */
function byCapacity(problem: BinProblem, items: readonly BinItem[], size: Size): number {
  const { kinds, opened } = problem
  const allowed = new Set(items.flatMap((item) => item.kinds))
  const loads = stuffed(problem, size)
  const bins = [
    ...[...allowed].map((kind) => ({ holds: kinds[kind]![size], count: kinds[kind]!.count })),
    ...opened.map(({ kind }, at) => ({ holds: Math.max(kinds[kind]![size], loads[at]!), count: 1 })),
  ].toSorted((a, b) => b.holds - a.holds)
  let rest = items.reduce((sum, item) => sum + item[size], 0)
  let used = 0
  for (const { holds, count } of bins) {
    if (rest <= 0) break
    if (holds <= 0) continue
    const needed = Number.isFinite(holds) ? Math.min(count, Math.ceil(rest / holds)) : 1
    used += needed
    rest -= needed * holds
  }
  return used
}

const slack = 1e-9
const fewToABin = [1, 2, 3, 4, 5, 6, 7, 8] as const

/**
 * Bins of size 1 for items of these parts: for a threshold the items above 1 − threshold lie alone, those above a half
 * share only with smaller ones, and what is smaller than the threshold is left out: Martello and Toth's second bound, over
 * every threshold that matters. Of items above a third of a bin it takes two, of those above a quarter three, and so on.
 */
function fewestOfParts(parts: readonly number[]): number {
  const falling = parts.toSorted((a, b) => b - a)
  const sums = [0]
  for (const one of falling) sums.push(sums.at(-1)! + one)
  const above = (line: number) => firstBelow(falling, line)
  const large = above(0.5 + slack)
  const counted = fewToABin.map((few) => Math.ceil(above(1 / (few + 1) + slack) / few))
  let best = Math.max(...counted, Math.ceil(sums.at(-1)! - slack))
  let before = Infinity
  for (const threshold of falling.slice(large)) {
    if (threshold === before || threshold > 0.5) continue
    before = threshold
    const alone = above(1 - threshold + slack)
    const small = above(threshold - slack)
    const room = large - alone - (sums[large]! - sums[alone]!)
    const more = Math.ceil(sums[small]! - sums[large]! - room - slack)
    best = Math.max(best, large + Math.max(0, more))
  }
  return best
}

/** How many of the falling numbers lie above the line. */
function firstBelow(falling: readonly number[], line: number): number {
  let from = 0
  let to = falling.length
  while (from < to) {
    const middle = (from + to) >> 1
    if (falling[middle]! > line) from = middle + 1
    else to = middle
  }
  return from
}

/** Items of which no two go into one bin by either size: a set of such, found greedily. */
function tooBigTogether(items: readonly BinItem[], first: number, second: number): number {
  const chosen: BinItem[] = []
  const falling = items.toSorted(
    (a, b) => part(b.first, first) + part(b.second, second) - part(a.first, first) - part(a.second, second),
  )
  for (const item of falling)
    if (chosen.every((one) => one.first + item.first > first || one.second + item.second > second))
      chosen.push(item)
  return chosen.length
}
