import { afterAll, describe, expect, test } from 'vitest'
import { choose, chooseAgain } from '../../lib/evidence/assemblage-choose.ts'
import { tableOf, usedBy, type AssemblageProblem } from '../../lib/evidence/assemblage-problem.ts'
import { openSolver } from '../../lib/services/solver.ts'
import { assemblageModel } from './assemblage-model.ts'
import { drawnAssemblage } from './assemblage-samples.ts'

const solver = openSolver()
afterAll(() => solver.close())

async function exactly(problem: AssemblageProblem): Promise<number> {
  const solved = await solver.solve({ model: assemblageModel(problem), secondsAtMost: 30 })
  if (solved.status !== 'optimal') throw new Error(`The solver did not get there: ${solved.status}.`)
  return solved.objective
}

/** Up to twenty-five finds, one to five methods, room for a tenth to all that is wanted; every third with equal gains. */
const drawn = (seed: number) =>
  drawnAssemblage(seed, 6 + (seed % 20), 1 + (seed % 5), { alike: seed % 3 === 0 })

const within = (problem: AssemblageProblem, choice: Int32Array) =>
  usedBy(tableOf(problem), choice).every((used, method) => used <= problem.slots[method]!)

describe('two hundred drawn cases against an exact solver', () => {
  test('the gap is none in the middle and two in a hundred at the worst; no choice is worth more than the bound', async () => {
    const gaps: number[] = []
    for (let seed = 1; seed <= 200; seed++) {
      const problem = drawn(seed)
      const ours = choose(problem)
      const best = await exactly(problem)
      expect(within(problem, ours.choice)).toBe(true)
      expect(ours.bound).toBeGreaterThan(best - 1e-6)
      if (ours.proved) expect(ours.worth).toBeGreaterThan(best - 1e-6)
      gaps.push(best > 0 ? (best - ours.worth) / best : 0)
    }
    gaps.sort((a, b) => a - b)
    expect(Math.abs(gaps[100]!)).toBeLessThan(1e-6)
    expect(gaps.at(-1)!).toBeLessThan(0.02)
    // Found together they are found again: nothing so far was left unproved.
    expect(gaps.filter((gap) => gap > 1e-6)).toEqual([])
  }, 120_000)

  test('the model is the problem: one find, one place, the better option', async () => {
    const find = [
      { uses: [0, 0], worth: 0 },
      { uses: [1, 0], worth: 1 },
      { uses: [1, 1], worth: 1.5 },
    ]
    expect(await exactly({ slots: [1, 0], finds: [find] })).toBeCloseTo(1, 9)
    expect(await exactly({ slots: [1, 1], finds: [find, find] })).toBeCloseTo(1.5, 9)
  })
})

describe('laws of the choice', () => {
  const seeds = Array.from({ length: 60 }, (_, at) => at + 1)

  test('more room never settles less, from the start and from where one stands', () => {
    for (const seed of seeds) {
      const problem = drawn(seed)
      const ours = choose(problem)
      problem.slots.forEach((slots, method) => {
        const wider = { ...problem, slots: problem.slots.with(method, slots + 1) }
        const again = chooseAgain(ours, problem.slots, wider.slots)
        expect(within(wider, again.choice)).toBe(true)
        expect(again.worth).toBeGreaterThanOrEqual(ours.worth)
        expect(again.bound).toBeGreaterThanOrEqual(again.worth - 1e-9)
        expect(choose(wider).worth).toBeGreaterThan(ours.worth - 1e-9)
      })
    }
  })

  test('the order of finds and of methods changes nothing of what is settled', () => {
    for (const seed of seeds) {
      const problem = drawn(seed)
      const turned = {
        slots: problem.slots.toReversed(),
        finds: problem.finds
          .toReversed()
          .map((options) => options.map(({ uses, worth }) => ({ uses: uses.toReversed(), worth }))),
      }
      expect(choose(turned).worth).toBeCloseTo(choose(problem).worth, 9)
    }
  })

  test('no room, no finds, or nothing to tell: nothing is sent', () => {
    expect(choose({ slots: [], finds: [] })).toMatchObject({ worth: 0, proved: true })
    const problem = drawn(4)
    expect(choose({ ...problem, slots: problem.slots.map(() => 0) }).worth).toBe(0)
    const nothing = [{ uses: [0], worth: 0 }]
    expect(Array.from(choose({ slots: [3], finds: [nothing, nothing] }).choice)).toEqual([0, 0])
  })

  test('thousands of finds come within a hair of the bound', () => {
    for (const alike of [false, true]) {
      const problem = drawnAssemblage(7, 5_000, 3, { alike, share: 0.1 })
      const ours = choose(problem)
      expect(within(problem, ours.choice)).toBe(true)
      expect((ours.bound - ours.worth) / ours.bound).toBeLessThan(0.002)
    }
  })
})
