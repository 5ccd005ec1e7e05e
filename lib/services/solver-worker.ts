import { parentPort } from 'node:worker_threads'
import loadHighs from 'highs'
import type { Asked, Solved } from './solver.ts'

const highs = await loadHighs()

/** A model that is solved, or one of which the time brought a solution, has its values; any other has none. */
function solved({ model, secondsAtMost }: Asked): Solved {
  const {
    Status: status,
    ObjectiveValue: objective,
    Columns: columns,
  } = highs.solve(model, {
    output_flag: false,
    log_to_console: false,
    time_limit: secondsAtMost,
    mip_rel_gap: 0,
  })
  if (status === 'Infeasible') return { status: 'infeasible' }
  const values = new Map(
    Object.entries(columns).flatMap(([name, column]) =>
      'Primal' in column ? [[name, column.Primal] as const] : [],
    ),
  )
  if (status === 'Optimal') return { status: 'optimal', objective, values }
  return status === 'Time limit reached' && Number.isFinite(objective)
    ? { status: 'best-so-far', objective, values }
    : { status: 'not-solved' }
}

parentPort!.on('message', (asked: Asked) => parentPort!.postMessage(solved(asked)))
