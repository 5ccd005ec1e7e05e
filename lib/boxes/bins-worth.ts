import type { BinProblem, Packing } from './bin-problem.ts'
import { emptyLoading, loadingOf, upkeepOf } from './bins-load.ts'

/**
 * What a packing is judged by, the first number that differs deciding: items left out by how pressing they are, then
 * bins, then upkeep. Lower is better.
 */
export type Worth = readonly number[]

const ranksApart = 8

export function worthOf(problem: BinProblem, packing: Packing): Worth {
  const left = Array.from({ length: ranksApart }, () => 0)
  for (const item of packing.left) left[Math.min(problem.items[item]!.rank, ranksApart - 1)]! += 1
  const { loads } = loadingOf(problem, packing)
  const upkeep = loads.reduce((sum, load) => sum + upkeepOf(problem, load), 0)
  return [...left, binsUsed(problem, packing), upkeep]
}

/** Bins in use, those counted in which something stays whatever happens. */
export function binsUsed(problem: BinProblem, { bins }: Packing): number {
  const staying = emptyLoading(problem).loads.length
  return staying + bins.filter(({ opened }) => opened === null).length
}

export function better(a: Worth, b: Worth): boolean {
  for (let at = 0; at < a.length; at += 1) if (a[at] !== b[at]) return a[at]! < b[at]!
  return false
}
