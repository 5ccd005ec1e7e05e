import { msPerDay } from './civil.ts'
import type { DateOrder } from './log-answers.ts'

/** What the steps from reading to reading look like under one order of the dates. */
export interface Steps {
  readonly forward: number
  readonly backward: number
  /** Steps over midnight that are as long as the commonest step within a day. */
  readonly regular: number
  readonly irregular: number
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
  let before = Number.NaN
  for (let at = 0; at < count; at++) {
    const ms = civilMs[at]!
    if (Number.isNaN(ms)) continue
    const step = ms - before
    if (step !== 0 && Math.floor(ms / msPerDay) !== Math.floor(before / msPerDay) && !Number.isNaN(before)) {
      if (step > 0) forward++
      else backward++
      const size = Math.abs(step)
      if (usual === null ? size === msPerDay : size <= usual * 1.5) regular++
      else irregular++
    }
    before = ms
  }
  return { forward, backward, regular, irregular }
}

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
  return (smooth.length > 0 && smooth.length + rough.length === steady.length ? smooth : steady).map(
    ([order]) => order,
  )
}
