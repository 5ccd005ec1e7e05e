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

/**
 * A store in small: bands and metals as sorts, two or three kinds of bin of which there are some, upkeep that rises with how
 * dry a bin is kept, now and then something that lies alone or a bin in which something stays.
 */
export function drawnStore(
  count: number,
  seed: number,
  some: { readonly scarce?: boolean; readonly stays?: boolean } = {},
): BinProblem {
  const draw = drawsFrom(seed)
  const within = (from: number, to: number) => from + Math.floor(draw() * (to - from + 1))
  const bands = [
    { low: 5, high: 12 },
    { low: 5, high: 35 },
    { low: 5, high: 60 },
    { low: 35, high: 45 },
  ]
  const sorts = bands.flatMap((band) => [0, 1, 2].map((metal) => ({ ...band, metal })))
  const mayShare = Uint8Array.from({ length: sorts.length ** 2 }, (_, at) => {
    const [a, b] = [sorts[Math.floor(at / sorts.length)]!, sorts[at % sorts.length]!]
    const alone = a.metal === 2 || b.metal === 2
    const meets = Math.min(a.high, b.high) - Math.max(a.low, b.low) >= 5
    return meets && !alone && a.metal === b.metal ? 1 : 0
  })
  const kinds = [
    { first: 60, second: 50, count: some.scarce === true ? 2 : Infinity },
    { first: 100, second: 80, count: some.scarce === true ? 1 : Infinity },
    { first: 150, second: 90, count: some.scarce === true ? 1 : 3 },
  ]
  const items = Array.from({ length: count }, (): BinItem => {
    const first = within(5, 50)
    const sort = within(0, 3) * 3 + (draw() < 0.1 ? 2 : within(0, 1))
    const all = draw() < 0.2 ? [1, 2] : [0, 1, 2]
    return { first, second: within(2, 40), sort, kinds: all, rank: within(0, 5) }
  })
  const stay = some.stays === true ? [0] : []
  const opened = stay.map((item) => ({ kind: 2, items: [item] }))
  const upkeep = (kind: number, low: number, high: number) =>
    (low > 30 ? 2 : Math.max(0, 45 - high)) * kinds[kind]!.first
  return { items, sorts, mayShare, kinds, opened, upkeep }
}
