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
  {
    aboveRhPercent,
    belowRhPercent,
    error,
    floorRhPercent = -Infinity,
  }: Omit<ExcursionLimit, 'longestStepMs'>,
): readonly Excursion[] {
  const found: Excursion[] = []
  for (const [kind, level] of [
    ['above', aboveRhPercent],
    ['below', belowRhPercent],
  ] as const) {
    if (level === undefined) continue
    const chance = kind === 'above' ? chanceOver : chanceUnder
    eachRun(series, stretches, kind, level, floorRhPercent, (from, to, stretch) => {
      const { worst, dose } = worstAndDose(series, stretch, from, to, level)
      const worstRhPercent = hundredths(series.rhPercent[worst]!)
      found.push({
        kind,
        limitRhPercent: level,
        fromMs: series.atMs[from]!,
        toMs: endOf(series, stretch, to),
        worstRhPercent,
        worstAtMs: series.atMs[worst]!,
        doseRhPercentHours: dose / hour,
        readings: to - from,
        chanceReal: chance(worstRhPercent, level, error),
        brokenOff: to === stretch.to,
      })
    })
  }
  return found.toSorted((a, b) => a.fromMs - b.fromMs)
}

/** How many there are and the longest of them, where each by itself is not asked for: a noisy log has tens of thousands. */
export function excursionsCounted(
  series: Series,
  stretches: readonly Stretch[],
  kind: Excursion['kind'],
  level: number,
  floor = -Infinity,
): { readonly count: number; readonly longest: { readonly fromMs: number; readonly toMs: number } | null } {
  let count = 0
  let [fromMs, toMs] = [0, -1]
  eachRun(series, stretches, kind, level, floor, (from, to, stretch) => {
    count += 1
    const [begins, ends] = [series.atMs[from]!, endOf(series, stretch, to)]
    if (toMs < fromMs || ends - begins > toMs - fromMs) [fromMs, toMs] = [begins, ends]
  })
  return { count, longest: count === 0 ? null : { fromMs, toMs } }
}

/**
 * Consecutive readings beyond the level, from one place up to, not with, another. Readings are single floats, and so must the
 * level be to be compared with them. Nothing at or below the floor of the logger is known to lie above anything.
 */
function eachRun(
  { rhPercent }: Series,
  stretches: readonly Stretch[],
  kind: Excursion['kind'],
  level: number,
  floor: number,
  take: (from: number, to: number, stretch: Stretch) => void,
): void {
  const line = Math.fround(kind === 'above' ? Math.max(level, floor) : level)
  const [begins, ends] = kind === 'above' ? [firstAbove, firstNotAbove] : [firstBelow, firstNotBelow]
  for (const stretch of stretches) {
    for (let to = stretch.from; to < stretch.to;) {
      const from = begins(rhPercent, to, stretch.to, line)
      to = ends(rhPercent, from, stretch.to, line)
      if (to > from) take(from, to, stretch)
    }
  }
}

type Scan = (rhPercent: Float32Array, from: number, to: number, line: number) => number

const firstAbove: Scan = (rhPercent, from, to, line) => {
  let i = from
  while (i < to && rhPercent[i]! <= line) i += 1
  return i
}
const firstNotAbove: Scan = (rhPercent, from, to, line) => {
  let i = from
  while (i < to && rhPercent[i]! > line) i += 1
  return i
}
const firstBelow: Scan = (rhPercent, from, to, line) => {
  let i = from
  while (i < to && rhPercent[i]! >= line) i += 1
  return i
}
const firstNotBelow: Scan = (rhPercent, from, to, line) => {
  let i = from
  while (i < to && rhPercent[i]! < line) i += 1
  return i
}

function endOf({ atMs }: Series, stretch: Stretch, to: number): number {
  return to < stretch.to ? atMs[to]! : atMs[to - 1]! + stretch.stepMs
}

/** The place of the worst reading, and what lay beyond the level times how long [% ms]. */
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
