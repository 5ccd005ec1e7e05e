import { chanceOver, chanceUnder, type SensorError } from './sensor-error.ts'
import type { Series } from './series.ts'
import { stretchesOf, withHumidity, type Stretch } from './stretches.ts'

/** A time in which every reading lay beyond a limit. A gap ends it: nobody knows what went on there. */
export interface Excursion {
  readonly kind: 'above' | 'below'
  readonly limitRhPercent: number
  readonly fromMs: number
  /** The first reading back within the limit, or how long the last one beyond it is taken to hold. */
  readonly toMs: number
  readonly worstRhPercent: number
  readonly worstAtMs: number
  /** What lay beyond the limit times how long, each reading standing till the next [% h]. */
  readonly doseRhPercentHours: number
  readonly readings: number
  /** Chance that the worst reading was really beyond the limit, with the error of the sensor. */
  readonly chanceReal: number
  /** It ends because the readings end or break off there, not because they came back. */
  readonly brokenOff: boolean
}

export interface ExcursionLimit {
  /** One of the two. */
  readonly aboveRhPercent?: number
  readonly belowRhPercent?: number
  readonly error: SensorError
  /** Readings at or below the floor of the logger are not known to lie above anything [%]. */
  readonly floorRhPercent?: number
  /** A longer step is a gap [ms]; where it is left out, one longer than twice the steps around it. */
  readonly longestStepMs?: number
}

const hour = 3_600_000
const hundredths = (value: number) => Math.round(value * 100) / 100

/** Every excursion beyond a limit, in order of time. A reading at the limit is within it. */
export function excursionsOf(series: Series, limit: ExcursionLimit): readonly Excursion[] {
  const read = withHumidity(series)
  return excursionsIn(read, stretchesOf(read, limit.longestStepMs), limit)
}

/** The same for a series that has a humidity in every reading and is cut at its gaps already. */
export function excursionsIn(
  series: Series,
  stretches: readonly Stretch[],
  limit: Omit<ExcursionLimit, 'longestStepMs'>,
): readonly Excursion[] {
  const { aboveRhPercent, belowRhPercent, error, floorRhPercent = -Infinity } = limit
  const found: Excursion[] = []
  for (const [kind, level] of [
    ['above', aboveRhPercent],
    ['below', belowRhPercent],
  ] as const) {
    if (level === undefined) continue
    const chance = kind === 'above' ? chanceOver : chanceUnder
    for (const stretch of stretches) {
      for (const run of runsBeyond(
        series,
        stretch,
        level,
        kind,
        kind === 'above' ? floorRhPercent : -Infinity,
      )) {
        const worst = hundredths(series.rhPercent[run.worst]!)
        found.push({
          kind,
          limitRhPercent: level,
          fromMs: series.atMs[run.from]!,
          toMs: run.to < stretch.to ? series.atMs[run.to]! : series.atMs[run.to - 1]! + stretch.stepMs,
          worstRhPercent: worst,
          worstAtMs: series.atMs[run.worst]!,
          doseRhPercentHours: run.dose / hour,
          readings: run.to - run.from,
          chanceReal: chance(worst, level, error),
          brokenOff: run.to === stretch.to,
        })
      }
    }
  }
  return found.toSorted((a, b) => a.fromMs - b.fromMs)
}

interface Run {
  readonly from: number
  readonly to: number
  readonly worst: number
  /** [% ms] */
  readonly dose: number
}

/** Consecutive readings beyond the level. Readings are single floats, and so must the level be to be compared with them. */
function runsBeyond(
  series: Series,
  stretch: Stretch,
  level: number,
  kind: Excursion['kind'],
  floor: number,
): readonly Run[] {
  const { rhPercent } = series
  const { to } = stretch
  const line = Math.fround(Math.max(level, floor))
  const runs: Run[] = []
  for (let i = stretch.from; i < to;) {
    if (kind === 'above') while (i < to && rhPercent[i]! <= line) i += 1
    else while (i < to && rhPercent[i]! >= line) i += 1
    const from = i
    if (kind === 'above') while (i < to && rhPercent[i]! > line) i += 1
    else while (i < to && rhPercent[i]! < line) i += 1
    if (i > from) runs.push({ from, to: i, ...worstAndDose(series, stretch, from, i, level) })
  }
  return runs
}

function worstAndDose(
  { atMs, rhPercent }: Series,
  stretch: Stretch,
  from: number,
  to: number,
  level: number,
) {
  let [worst, dose] = [from, 0]
  for (let i = from; i < to; i += 1) {
    if (Math.abs(rhPercent[i]! - level) > Math.abs(rhPercent[worst]! - level)) worst = i
    const stands = i + 1 < stretch.to ? atMs[i + 1]! - atMs[i]! : stretch.stepMs
    dose += Math.abs(hundredths(rhPercent[i]!) - level) * stands
  }
  return { worst, dose }
}
