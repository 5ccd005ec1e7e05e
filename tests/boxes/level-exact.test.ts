import { afterAll, describe, expect, it } from 'vitest'
import { below, drawsFrom } from '../../lib/boxes/bins-chance.ts'
import { levelBetter, total } from '../../lib/boxes/level-better.ts'
import { levelAtOnce } from '../../lib/boxes/level-first.ts'
import { levelModel } from '../../lib/boxes/level-model.ts'
import type { LevelProblem } from '../../lib/boxes/level-weeks.ts'
import { openSolver } from '../../lib/services/solver.ts'

const solver = openSolver()
afterAll(() => solver.close())

/** Few renewals and fewer means: hours, gel and oven all pinch. */
function drawn(seed: number): LevelProblem {
  const draw = drawsFrom(seed)
  const weeks = 4 + below(draw, 5)
  const jobs = Array.from({ length: 4 + below(draw, 9) }, () => ({
    deadline: below(draw, weeks + 1) - 1,
    gelG: 100 * (1 + below(draw, 10)),
  }))
  const room = Array.from({ length: weeks }, () => below(draw, 4))
  const stock = { dryG: 100 * below(draw, 25), spentG: 100 * below(draw, 15), ovenG: 100 * below(draw, 12) }
  return { jobs, room, usedG: room.map(() => 0), stock }
}

describe('small stores', () => {
  it.each(Array.from({ length: 60 }, (_, at) => at + 1))(
    'no plan is less late, or less early: seed %s',
    async (seed) => {
      const problem = drawn(seed)
      const ours = levelBetter(levelAtOnce(problem), { seed: 1, steps: 60_000 })
      const model = levelModel(problem)
      const solved = await solver.solve({ model: model.text, secondsAtMost: 50 })
      if (solved.status !== 'optimal') throw new Error(`The solver did not get there: ${solved.status}.`)
      expect(total(problem, ours)).toBe(total(problem, model.read(solved.values)))
    },
  )
})
