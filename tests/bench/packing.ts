import type { BinProblem } from '../../lib/boxes/bin-problem.ts'
import { packBetter } from '../../lib/boxes/bins-better.ts'
import { fewestBins } from '../../lib/boxes/bins-bound.ts'
import { below, drawsFrom } from '../../lib/boxes/bins-chance.ts'
import { firstFitDecreasing, packAtOnce } from '../../lib/boxes/bins-first.ts'
import { binModel } from '../../lib/boxes/bins-model.ts'
import { packTask } from '../../lib/boxes/pack.ts'
import type { PackFind } from '../../lib/boxes/pack-find.ts'
import { openSolver, type Solver } from '../../lib/services/solver.ts'
import { drawnBins } from '../boxes/bin-samples.ts'
import { aBox, aFind, copper, figures, gelFor, lead, tub, wet } from '../boxes/pack-samples.ts'

export interface SmallFigures {
  readonly items: number
  readonly classes: boolean
  /** Over the seeds: ours, the solver's where it got there, first fit by falling size, and the bound. */
  readonly ours: readonly number[]
  readonly exact: readonly (number | null)[]
  readonly firstFit: readonly number[]
  readonly bound: readonly number[]
  readonly oursMilliseconds: number
  /** The solver starts with our packing's number of bins as the most there may be; it has so long for each. */
  readonly solverMilliseconds: number
}

export interface StoreFigures {
  readonly finds: number
  readonly boxes: number
  readonly bound: number
  readonly firstFit: number
  readonly milliseconds: number
  readonly longerBoxes: number
  readonly longerMilliseconds: number
}

const seeds = [1, 2, 3] as const
const steps = 40_000
const secondsAtMost = 20

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1]!

export async function smallFigures(): Promise<readonly SmallFigures[]> {
  const solver = openSolver()
  try {
    const all: SmallFigures[] = []
    for (const classes of [false, true])
      for (const items of [10, 20, 30, 40, 60]) all.push(await smallFigure(solver, items, classes))
    return all
  } finally {
    await solver.close()
  }
}

async function smallFigure(solver: Solver, items: number, classes: boolean): Promise<SmallFigures> {
  const rounds = []
  for (const seed of seeds) {
    const problem = drawnBins(items, seed, classes)
    const all = problem.items.map((_, item) => item)
    const began = performance.now()
    const ours = packBetter(problem, packAtOnce(problem), { seed: 1, steps }).bins.length
    const bound = fewestBins(problem, all)
    const packed = performance.now()
    const exact = await exactly(solver, problem, all, firstFitDecreasing(problem).bins.length)
    rounds.push({
      ours,
      bound,
      exact,
      firstFit: firstFitDecreasing(problem).bins.length,
      oursMs: packed - began,
      solverMs: performance.now() - packed,
    })
  }
  return {
    items,
    classes,
    ours: rounds.map(({ ours }) => ours),
    exact: rounds.map(({ exact }) => exact),
    firstFit: rounds.map(({ firstFit }) => firstFit),
    bound: rounds.map(({ bound }) => bound),
    oursMilliseconds: median(rounds.map(({ oursMs }) => oursMs)),
    solverMilliseconds: median(rounds.map(({ solverMs }) => solverMs)),
  }
}

async function exactly(
  solver: Solver,
  problem: BinProblem,
  items: readonly number[],
  most: number,
): Promise<number | null> {
  const { text } = binModel(problem, items, most, 'bins')
  const solved = await solver.solve({ model: text, secondsAtMost })
  return solved.status === 'optimal' ? Math.round(solved.objective) : null
}

/** Finds as a large excavation has them: half iron, a quarter copper alloy, lead, wet finds, a few that lie alone. */
function drawnFinds(count: number, seed: number): readonly PackFind[] {
  const draw = drawsFrom(seed)
  const ceilings = [12, 12, 20, 35, 45] as const
  return Array.from({ length: count }, (_, at) => {
    const share = draw()
    const kind = share < 0.5 ? {} : share < 0.75 ? copper : share < 0.85 ? lead : wet
    const band = { min: 0, max: ceilings[below(draw, ceilings.length)]! }
    return aFind(`TW-${at}`, {
      ...kind,
      rhPercent: kind === wet ? null : kind === lead ? { min: 0, max: 60 } : band,
      alone: draw() < 0.005,
      rank: below(draw, 6),
      measured: {
        quantity: 1,
        massG: 5 + below(draw, 300),
        lengthMm: 10 + below(draw, 150),
        widthMm: 5 + below(draw, 60),
        thicknessMm: 3 + below(draw, 25),
      },
    })
  })
}

export function storeFigures(finds = 5000): StoreFigures {
  const boxes = [
    aBox(null, { count: Infinity, model: '5 l', volumeL: 5, insideMm: [250, 180, 110] }),
    aBox(null, { count: Infinity, model: '12 l', volumeL: 12, insideMm: [330, 220, 165] }),
    aBox(null, { count: Infinity, model: '20 l', volumeL: 20, insideMm: [400, 260, 190] }),
    aBox(null, { ...tub, count: Infinity, volumeL: 20, insideMm: [400, 260, 190] }),
  ]
  const given = drawnFinds(finds, 1)
  const once = () => {
    const began = performance.now()
    const { bins } = packTask({ finds: given, boxes, begin: 'afresh', figures, gelFor }).problem
    const packing = packAtOnce(bins)
    return { bins, packing, milliseconds: performance.now() - began }
  }
  const runs = Array.from({ length: 5 }, once)
  const { bins, packing } = runs[0]!
  const began = performance.now()
  const longer = packBetter(bins, packing, { seed: 1, steps: 100_000 })
  return {
    finds,
    boxes: packing.bins.length,
    bound: fewestBins(
      bins,
      bins.items.map((_, item) => item),
    ),
    firstFit: firstFitDecreasing(bins).bins.length,
    milliseconds: median(runs.map(({ milliseconds }) => milliseconds)),
    longerBoxes: longer.bins.length,
    longerMilliseconds: performance.now() - began,
  }
}
