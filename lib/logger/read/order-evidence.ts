import { msPerDay, msPerHour } from './civil.ts'
import type { DateOrder } from './log-answers.ts'

/** What the steps from reading to reading look like under one order of the dates. */
export interface Steps {
  readonly forward: number
  readonly backward: number
  /** Steps over midnight that are as long as the commonest step within a day. */
  readonly regular: number
  readonly irregular: number
  /** Shortest and longest of them [ms]. */
  readonly shortest: number
  readonly longest: number
}

/** The commonest step within one day [ms]; null where no day has three readings to tell it from. */
export function usualStep(civilMs: Float64Array, count: number): number | null {
  const counts = new Map<number, number>()
  let within = 0
  for (let at = 1; at < count && within < 20_000; at++) {
    const step = Math.abs(civilMs[at]! - civilMs[at - 1]!)
    if (!(step > 0) || Math.floor(civilMs[at]! / msPerDay) !== Math.floor(civilMs[at - 1]! / msPerDay))
      continue
    within++
    counts.set(step, (counts.get(step) ?? 0) + 1)
  }
  const [step, times] = [...counts].toSorted((a, b) => b[1] - a[1])[0] ?? [0, 0]
  return within >= 3 && times * 2 > within ? step : null
}

/** Only steps that change the day are counted: within a day every order says the same. */
export function stepsOf(civilMs: Float64Array, count: number, usual: number | null): Steps {
  let forward = 0
  let backward = 0
  let regular = 0
  let irregular = 0
  let shortest = Number.POSITIVE_INFINITY
  let longest = 0
  let before = Number.NaN
  for (let at = 0; at < count; at++) {
    const ms = civilMs[at]!
    if (Number.isNaN(ms)) continue
    const step = ms - before
    if (step !== 0 && Math.floor(ms / msPerDay) !== Math.floor(before / msPerDay) && !Number.isNaN(before)) {
      if (step > 0) forward++
      else backward++
      const size = Math.abs(step)
      shortest = Math.min(shortest, size)
      longest = Math.max(longest, size)
      if (usual === null ? size === msPerDay : size <= usual * 1.5) regular++
      else irregular++
    }
    before = ms
  }
  return { forward, backward, regular, irregular, shortest, longest }
}

const aFewHours = 6 * msPerHour
const someWeeks = 20 * msPerDay

/**
 * The orders that time itself does not speak against. One is refuted where time runs to and fro under it and one way under
 * another, or where it jumps at most midnights and under another goes on at its usual step.
 */
export function standing(steps: ReadonlyMap<DateOrder, Steps>, usual: number | null): readonly DateOrder[] {
  // One reading a day or fewer tells little: three days on end at least.
  const enough = usual === null ? 3 : 1
  const turns = (of: Steps) => Math.min(of.forward, of.backward)
  const all = [...steps]
  const fewestTurns = Math.min(...all.map(([, of]) => turns(of)))
  const steady = all.filter(([, of]) => turns(of) <= fewestTurns * 2)
  const smooth = steady.filter(([, of]) => of.regular >= enough && of.regular >= of.irregular)
  const rough = steady.filter(([, of]) => of.regular === 0 && of.irregular > 0)
  if (smooth.length > 0 && smooth.length + rough.length === steady.length)
    return smooth.map(([order]) => order)
  // A few hours over every midnight under one order are weeks under another.
  const close = steady.filter(([, of]) => usual !== null && of.longest > 0 && of.longest <= aFewHours)
  const far = steady.filter(([, of]) => of.shortest >= someWeeks)
  const left = close.length > 0 && close.length + far.length === steady.length ? close : steady
  return left.map(([order]) => order)
}
