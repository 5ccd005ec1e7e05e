import type { BinProblem } from './bin-problem.ts'
import { packBetter, type Search } from './bins-better.ts'
import { fewestBins } from './bins-bound.ts'
import { packAtOnce } from './bins-first.ts'

export interface PlainPacking {
  readonly bins: number
  readonly lowerBound: number
  /** For each item the bin it lies in, counted from 0. */
  readonly assignment: readonly number[]
}

/** Items of one size into bins of one capacity: the packing core on its smallest problem. All in whole numbers. */
export function packPlain(capacity: number, sizes: readonly number[], search: Search): PlainPacking {
  const problem = plainProblem(capacity, sizes)
  const { bins } = packBetter(problem, packAtOnce(problem), search)
  const assignment = sizes.map(() => 0)
  bins.forEach(({ items }, bin) => {
    for (const item of items) assignment[item] = bin
  })
  const lowerBound =
    sizes.length === 0
      ? 0
      : fewestBins(
          problem,
          sizes.map((_, item) => item),
        )
  return { bins: bins.length, lowerBound, assignment }
}

export function plainProblem(capacity: number, sizes: readonly number[]): BinProblem {
  return {
    items: sizes.map((first) => ({ first, second: 0, sort: 0, kinds: [0], rank: 0 })),
    sorts: [{ low: 0, high: 1 }],
    mayShare: Uint8Array.of(1),
    kinds: [{ first: capacity, second: 0, count: Infinity }],
    opened: [],
    upkeep: () => 0,
  }
}
