import type { BinItem, BinProblem } from '../../lib/boxes/bin-problem.ts'
import { drawsFrom } from '../../lib/boxes/bins-chance.ts'

/**
 * Items of volume 20–79 for bins of 150 and weight 5–64 for bins of 120; with `classes` of four classes two pairs that do not
 * share a bin.
 */
export function drawnBins(count: number, seed: number, classes: boolean): BinProblem {
  const draw = drawsFrom(seed)
  const within = (from: number, to: number) => from + Math.floor(draw() * (to - from + 1))
  const items = Array.from({ length: count }, (): BinItem => {
    const first = within(20, 79)
    const second = within(5, 64)
    return { first, second, sort: classes ? within(0, 3) : 0, kinds: [0], rank: 0 }
  })
  const sorts = Array.from({ length: classes ? 4 : 1 }, () => ({ low: 0, high: 1 }))
  const foes = [
    [0, 1],
    [2, 3],
  ]
  const mayShare = Uint8Array.from({ length: sorts.length ** 2 }, (_, at) => {
    const pair = [Math.floor(at / sorts.length), at % sorts.length].toSorted()
    return foes.some(([a, b]) => pair[0] === a && pair[1] === b) ? 0 : 1
  })
  return {
    items,
    sorts,
    mayShare,
    kinds: [{ first: 150, second: 120, count: Infinity }],
    opened: [],
    upkeep: () => 0,
  }
}
