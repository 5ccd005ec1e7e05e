import { afterAll, describe, expect, it } from 'vitest'
import type { BinProblem, Packing } from '../../lib/boxes/bin-problem.ts'
import { packBetter } from '../../lib/boxes/bins-better.ts'
import { fewestBins } from '../../lib/boxes/bins-bound.ts'
import { packAtOnce } from '../../lib/boxes/bins-first.ts'
import { binModel } from '../../lib/boxes/bins-model.ts'
import { binsUsed, worthOf } from '../../lib/boxes/bins-worth.ts'
import { openSolver } from '../../lib/services/solver.ts'
import { breaches } from './bin-breaches.ts'
import { drawnBins, drawnStore } from './bin-samples.ts'

const solver = openSolver()
afterAll(() => solver.close())

const everything = ({ items }: BinProblem) => items.map((_, item) => item)
const search = { seed: 1, steps: 60_000 }
const packed = (problem: BinProblem) => packBetter(problem, packAtOnce(problem), search)

/** By the solver: the packing it finds, or null where it proves that there is none. */
async function exactly(
  problem: BinProblem,
  mostBins: number,
  aim: 'bins' | 'upkeep',
): Promise<Packing | null> {
  const model = binModel(problem, everything(problem), mostBins, aim)
  const solved = await solver.solve({ model: model.text, secondsAtMost: 50 })
  if (solved.status === 'infeasible') return null
  if (solved.status !== 'optimal') throw new Error(`The solver did not get there: ${solved.status}.`)
  return model.read(solved.values)
}

/** Where the bound is one short, a solver proves that one bin less does not do. It takes too long over the last four. */
const proved = new Set([
  'plain 10 2',
  'plain 20 6',
  'classes 10 3',
  'classes 15 1',
  'classes 15 2',
  'classes 15 6',
  'classes 20 1',
  'classes 20 5',
  'classes 30 1',
])
const notReached = new Set(['plain 20 5', 'classes 25 4', 'classes 30 3', 'classes 30 4'])

describe('up to thirty items', () => {
  const cases = [false, true].flatMap((classes) =>
    [10, 15, 20, 25, 30].flatMap((count) =>
      [1, 2, 3, 4, 5, 6].map((seed) => ({
        name: `${classes ? 'classes' : 'plain'} ${count} ${seed}`,
        count,
        seed,
        classes,
      })),
    ),
  )

  it.each(cases)('no packing has fewer bins than ours: $name', async ({ name, count, seed, classes }) => {
    const problem = drawnBins(count, seed, classes)
    const ours = packed(problem).bins.length
    const bound = fewestBins(problem, everything(problem))
    if (notReached.has(name)) expect(ours - bound).toBe(1)
    else if (proved.has(name)) expect(await exactly(problem, ours - 1, 'bins')).toBeNull()
    else expect(ours).toBe(bound)
  })
})

describe('the model', () => {
  it.each([1, 2, 3, 4, 5, 6])(
    'finds the same fewest bins and the same least upkeep of a store in small: seed %s',
    async (seed) => {
      const problem = drawnStore(10, seed, { stays: seed % 2 === 0 })
      const ours = packed(problem)
      const bins = binsUsed(problem, ours)
      expect(ours.left).toEqual([])
      const fewest = await exactly(problem, bins, 'bins')
      expect(binsUsed(problem, fewest!)).toBe(bins)
      expect(breaches(problem, fewest!)).toEqual([])
      const cheapest = await exactly(problem, bins, 'upkeep')
      expect(breaches(problem, cheapest!)).toEqual([])
      expect(worthOf(problem, cheapest!).at(-1)).toBe(worthOf(problem, ours).at(-1))
    },
  )
})
