import fs from 'node:fs'
import path from 'node:path'
import { isoDate } from '../../lib/base/calendar.ts'
import { assemble } from '../../lib/evidence/assemblage.ts'
import { choose } from '../../lib/evidence/assemblage-choose.ts'
import type { AssemblageFind } from '../../lib/evidence/assemblage-find.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { assemblageFind } from '../../lib/services/assemblage-finds.ts'
import { recordSource } from '../../lib/services/record-source.ts'
import { openSolver } from '../../lib/services/solver.ts'
import { loadKnowledge } from '../../lib/start.ts'
import { assemblageModel } from '../evidence/assemblage-model.ts'
import { drawnAssemblage } from '../evidence/assemblage-samples.ts'

export interface RequestFigures {
  readonly finds: number
  /** Drawn finds, three methods: the choice alone. */
  readonly chooseMilliseconds: number
  readonly gapPercent: number
  /** The same for an exact solver, given as long as it takes up to a minute; null where it did not end. */
  readonly solverMilliseconds: number | null
  readonly solverAheadPercent: number | null
  /** The demo's finds over and over: from what is recorded of them to the lists, two methods. */
  readonly gainsMilliseconds: number
  readonly lists: number
  /** What hangs on the answers, find by find: kept once it is known. */
  readonly stakesMilliseconds: number
}

const median = (numbers: readonly number[]) =>
  numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)]!

function timed<Result>(work: () => Result): { readonly result: Result; readonly milliseconds: number } {
  const began = performance.now()
  const result = work()
  return { result, milliseconds: performance.now() - began }
}

async function demoFinds(count: number): Promise<readonly AssemblageFind[]> {
  const root = path.resolve(import.meta.dirname, '../..')
  const knowledge = loadKnowledge(root)
  const bytes = fs.readFileSync(path.join(root, 'content/demo/tollgate-wharf.csv'))
  const source = await recordSource(knowledge, bytes)
  const records: ConditionRecord[] = []
  for await (const batch of source.batches()) records.push(...batch.records)
  const asOf = isoDate('2026-11-25')!
  return Array.from({ length: count }, (_, at) =>
    assemblageFind(`${at}`, records[at % records.length]!, knowledge, asOf),
  ).filter((find) => find !== null)
}

export async function requestFigures(finds = 5_000): Promise<RequestFigures> {
  const problem = drawnAssemblage(7, finds, 3, { share: 0.1 })
  const runs = Array.from({ length: 5 }, () => timed(() => choose(problem)))
  const { result: ours } = runs[0]!
  const solver = openSolver()
  const began = performance.now()
  const solved = await solver.solve({ model: assemblageModel(problem), secondsAtMost: 60 })
  const solverMilliseconds = performance.now() - began
  await solver.close()
  const knowledge = loadKnowledge(path.resolve(import.meta.dirname, '../..'))
  const open = await demoFinds(finds)
  const asked = {
    allowances: [
      { method: 'xrf', hours: 60, slots: null },
      { method: 'x-radiography', hours: 40, slots: null },
    ],
    sampling: false,
    further: 1,
  }
  const first = timed(() => assemble(open, asked, knowledge))
  const again = timed(() => assemble(open, asked, knowledge))
  return {
    finds,
    chooseMilliseconds: median(runs.map(({ milliseconds }) => milliseconds)),
    gapPercent: (100 * (ours.bound - ours.worth)) / ours.bound,
    solverMilliseconds: solved.status === 'optimal' ? solverMilliseconds : null,
    solverAheadPercent:
      solved.status === 'optimal' ? (100 * (solved.objective - ours.worth)) / solved.objective : null,
    gainsMilliseconds: again.milliseconds,
    lists: again.result.methods.reduce((sum, { asks }) => sum + asks.length, 0),
    stakesMilliseconds: first.milliseconds - again.milliseconds,
  }
}
