import type { BinProblem, Packing } from '../boxes/bin-problem.ts'
import { fewestBins } from '../boxes/bins-bound.ts'
import { binModel } from '../boxes/bins-model.ts'
import { binsUsed } from '../boxes/bins-worth.ts'
import { openSolver } from './solver.ts'

/** Beyond so many things an exact solver takes longer than anybody waits. */
const mostItems = 30
const secondsAtMost = 5

export interface Proof {
  readonly packing: Packing
  /** No packing needs fewer bins. */
  readonly proved: boolean
}

/**
 * Where bound and packing leave a gap and the store is small, an exact solver looks for one bin less: it finds it, or proves
 * that there is none, or the time is over and the gap stays open.
 */
export async function proveFewest(problem: BinProblem, packing: Packing): Promise<Proof> {
  const items = packing.bins.flatMap((bin) => bin.items)
  const used = binsUsed(problem, packing)
  if (used <= fewestBins(problem, items)) return { packing, proved: true }
  if (items.length > mostItems) return { packing, proved: false }
  const solver = openSolver()
  try {
    const model = binModel(problem, items, used - 1, 'bins')
    const solved = await solver.solve({ model: model.text, secondsAtMost })
    if (solved.status === 'infeasible') return { packing, proved: true }
    if (solved.status !== 'optimal') return { packing, proved: false }
    return { packing: model.read(solved.values), proved: true }
  } finally {
    await solver.close()
  }
}
