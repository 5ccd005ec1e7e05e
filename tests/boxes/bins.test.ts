import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BinProblem, Packing } from '../../lib/boxes/bin-problem.ts'
import { packBetter } from '../../lib/boxes/bins-better.ts'
import { fewestBins } from '../../lib/boxes/bins-bound.ts'
import { firstFitDecreasing, packAtOnce } from '../../lib/boxes/bins-first.ts'
import { packPlain } from '../../lib/boxes/bins-pack.ts'
import { better, binsUsed, worthOf } from '../../lib/boxes/bins-worth.ts'
import { breaches } from './bin-breaches.ts'
import { drawnBins, drawnStore } from './bin-samples.ts'

const search = { seed: 1, steps: 3000 }
const everything = ({ items }: BinProblem) => items.map((_, item) => item)
const placed = ({ bins }: Packing) => bins.flatMap(({ items }) => items)

const anyProblem = fc
  .record({
    count: fc.integer({ min: 0, max: 40 }),
    seed: fc.integer(),
    kind: fc.constantFrom('plain', 'classes', 'store', 'scarce', 'stays'),
  })
  .map(({ count, seed, kind }) => {
    if (kind === 'plain' || kind === 'classes') return drawnBins(count, seed, kind === 'classes')
    return drawnStore(count + 1, seed, { scarce: kind === 'scarce', stays: kind === 'stays' })
  })

describe('a packing, whatever the problem', () => {
  it('keeps to sizes, sorts, kinds and counts, and loses nothing', () => {
    fc.assert(
      fc.property(anyProblem, (problem) => {
        for (const packing of [
          packAtOnce(problem),
          firstFitDecreasing(problem),
          packBetter(problem, packAtOnce(problem), search),
        ])
          expect(breaches(problem, packing)).toEqual([])
      }),
    )
  })

  it('is never worse for being looked at longer, nor than first fit by falling size', () => {
    fc.assert(
      fc.property(anyProblem, (problem) => {
        const first = packAtOnce(problem)
        const longer = packBetter(problem, first, search)
        expect(better(worthOf(problem, first), worthOf(problem, longer))).toBe(false)
        expect(better(worthOf(problem, firstFitDecreasing(problem)), worthOf(problem, longer))).toBe(false)
      }),
    )
  })

  it('needs no fewer bins than the bound says', () => {
    fc.assert(
      fc.property(anyProblem, (problem) => {
        const packing = packBetter(problem, packAtOnce(problem), search)
        expect(fewestBins(problem, placed(packing))).toBeLessThanOrEqual(binsUsed(problem, packing))
      }),
    )
  })

  it('is the same for the same seed and steps', () => {
    fc.assert(
      fc.property(anyProblem, (problem) => {
        const again = { ...problem, items: problem.items.map((item) => ({ ...item })) }
        expect(packBetter(again, packAtOnce(again), search)).toEqual(
          packBetter(problem, packAtOnce(problem), search),
        )
      }),
      { numRuns: 40 },
    )
  })

  it('can be stopped at any moment and is whole then', () => {
    fc.assert(
      fc.property(anyProblem, fc.integer({ min: 0, max: 3 }), (problem, rounds) => {
        let asked = 0
        const stopped = packBetter(problem, packAtOnce(problem), {
          seed: 1,
          steps: 50_000,
          goOn: () => asked++ < rounds,
        })
        expect(asked).toBeLessThanOrEqual(rounds + 1)
        expect(breaches(problem, stopped)).toEqual([])
      }),
      { numRuns: 40 },
    )
  })
})

/** Every way of packing, bin by bin, until none with fewer bins is left. */
function fewestByTrying({ items, kinds, mayShare, sorts }: BinProblem): number {
  const { first, second } = kinds[0]!
  let best = items.length
  const bins: { first: number; second: number; items: number[] }[] = []
  const place = (item: number) => {
    if (bins.length >= best) return
    if (item === items.length) {
      best = bins.length
      return
    }
    const one = items[item]!
    for (const bin of bins) {
      if (bin.first + one.first > first || bin.second + one.second > second) continue
      if (bin.items.some((other) => mayShare[one.sort * sorts.length + items[other]!.sort] === 0)) continue
      bin.first += one.first
      bin.second += one.second
      bin.items.push(item)
      place(item + 1)
      bin.items.pop()
      bin.first -= one.first
      bin.second -= one.second
    }
    bins.push({ first: one.first, second: one.second, items: [item] })
    place(item + 1)
    bins.pop()
  }
  place(0)
  return best
}

describe('as good as can be', () => {
  it('for up to ten items, by trying every way', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10 }), fc.integer(), fc.boolean(), (count, seed, classes) => {
        const problem = drawnBins(count, seed, classes)
        const packing = packBetter(problem, packAtOnce(problem), { seed: 1, steps: 5000 })
        expect(packing.bins.length).toBe(fewestByTrying(problem))
      }),
    )
  })

  it('within one of the bound for forty to sixty items', () => {
    for (const classes of [false, true])
      for (const count of [40, 50, 60])
        for (const seed of [1, 2, 3, 4, 5, 6]) {
          const problem = drawnBins(count, seed, classes)
          const packing = packBetter(problem, packAtOnce(problem), { seed: 1, steps: 60_000 })
          const bound = fewestBins(problem, everything(problem))
          expect(packing.bins.length - bound, `${count} items, seed ${seed}`).toBeLessThanOrEqual(1)
        }
  })
})

describe('the bound', () => {
  it.each([
    ['nothing', 10, [], 0, 0],
    ['what fills bins to the brim', 10, [6, 4, 5, 5], 2, 2],
    ['more than half a bin each, though by their sum two would do', 10, [6, 6, 6], 3, 3],
    ['big ones beside which middling ones have no room', 10, [7, 7, 4, 4], 3, 3],
    ['thirds and a little, two a bin', 100, [35, 35, 35, 35, 35], 3, 3],
    [
      'a sum that fills bins to the brim though no choice does: there it is one short',
      100,
      [65, 60, 30, 25, 20],
      3,
      2,
    ],
  ])('knows of %s', (_, capacity, sizes, bins, lowerBound) => {
    expect(packPlain(capacity, sizes, search)).toMatchObject({ bins, lowerBound })
  })

  it('counts sorts that never share apart', () => {
    const problem = {
      ...drawnBins(4, 1, false),
      sorts: [
        { low: 0, high: 9 },
        { low: 0, high: 9 },
      ],
      mayShare: Uint8Array.of(1, 0, 0, 1),
    }
    const items = [0, 1, 0, 1].map((sort) => ({ first: 10, second: 10, sort, kinds: [0], rank: 0 }))
    expect(fewestBins({ ...problem, items }, [0, 1, 2, 3])).toBe(2)
    const alone = { ...problem, items, mayShare: Uint8Array.of(0, 0, 0, 1) }
    expect(fewestBins(alone, [0, 1, 2, 3])).toBe(3)
  })
})

describe('where bins are few', () => {
  it('the most pressing go in first', () => {
    const problem: BinProblem = {
      ...drawnBins(0, 1, false),
      items: [3, 0, 3, 1].map((rank) => ({ first: 80, second: 1, sort: 0, kinds: [0], rank })),
      kinds: [{ first: 150, second: 120, count: 2 }],
    }
    expect(packBetter(problem, packAtOnce(problem), search).left).toEqual([0, 2])
  })
})
