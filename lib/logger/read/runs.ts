/** A number for each place of a long row that seldom changes: only where it changes is kept. */
export interface Runs {
  readonly starts: number[]
  readonly values: number[]
}

export const noRuns = (): Runs => ({ starts: [], values: [] })

/** From `start` on the number is `value`; places are told in ascending order. */
export function runFrom(runs: Runs, start: number, value: number): void {
  const last = runs.starts.length - 1
  if (last >= 0 && Object.is(runs.values[last], value)) return
  if (last >= 0 && runs.starts[last] === start) {
    runs.values[last] = value
    return
  }
  runs.starts.push(start)
  runs.values.push(value)
}

export function runAt(runs: Runs, place: number): number {
  let low = 0
  let high = runs.starts.length
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (runs.starts[middle]! <= place) low = middle
    else high = middle
  }
  return runs.values[low] ?? Number.NaN
}

/** Calls back for each stretch of one number, up to `end`. */
export function eachRun(
  runs: Runs,
  end: number,
  use: (from: number, to: number, value: number) => void,
): void {
  for (const [at, from] of runs.starts.entries()) {
    const to = Math.min(runs.starts[at + 1] ?? end, end)
    if (to > from) use(from, to, runs.values[at]!)
  }
}
