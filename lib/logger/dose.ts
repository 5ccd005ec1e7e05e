import type { Series } from './series.ts'
import type { Stretch } from './stretches.ts'

/**
 * What lay beyond a limit times how long [% h], with a straight line from each reading to the next, cut where it crosses the
 * limit. Nothing is drawn across a gap or after the last reading.
 */
export function trapezoidDose(
  { atMs, rhPercent }: Series,
  stretches: readonly Stretch[],
  limitRhPercent: number,
  side: 'above' | 'below',
): number {
  const sign = side === 'above' ? 1 : -1
  const beyond = (i: number) => sign * (Math.round(rhPercent[i]! * 100) / 100 - limitRhPercent)
  let dose = 0
  for (const { from, to } of stretches) {
    for (let i = from + 1; i < to; i += 1) {
      const [a, b] = [beyond(i - 1), beyond(i)]
      if (a <= 0 && b <= 0) continue
      const step = atMs[i]! - atMs[i - 1]!
      if (a >= 0 && b >= 0) dose += ((a + b) / 2) * step
      // Only the part of the step on the far side of the crossing counts: a triangle.
      else dose += (Math.max(a, b) ** 2 / (2 * Math.abs(a - b))) * step
    }
  }
  return dose / 3_600_000
}
