import type { Series } from './series.ts'
import { between, stretchesOf } from './stretches.ts'

/** A stretch of time with the lowest and highest that was read in it; nothing read: null, never a value between others. */
export interface Bucket {
  readonly fromMs: number
  readonly toMs: number
  readonly count: number
  readonly minRhPercent: number | null
  readonly maxRhPercent: number | null
  readonly minTemperatureC: number | null
  readonly maxTemperatureC: number | null
}

const empty = {
  count: 0,
  minRhPercent: null,
  maxRhPercent: null,
  minTemperatureC: null,
  maxTemperatureC: null,
} as const

/**
 * The readings between two moments in at most `most` stretches of time, ready to draw: no peak is lost and nothing is averaged.
 * Where there are few readings each has a stretch of its own. A gap is an empty one; what lies before the first reading and
 * after the last is no stretch at all.
 */
export function bucketsOf(series: Series, fromMs: number, toMs: number, most = 1200): readonly Bucket[] {
  const view = between(series, fromMs, toMs)
  const { atMs } = view
  if (atMs.length === 0 || most < 1) return []
  const stretches = stretchesOf(view)
  const gaps = stretches.length - 1
  if (atMs.length + gaps <= most)
    return stretches.flatMap((stretch, n) => {
      const own = Array.from({ length: stretch.to - stretch.from }, (_, k) => {
        const i = stretch.from + k
        return bucketIn(
          view,
          i,
          i + 1,
          atMs[i]!,
          i + 1 < stretch.to ? atMs[i + 1]! : atMs[i]! + stretch.stepMs,
        )
      })
      const next = stretches[n + 1]
      if (!next) return own
      return [...own, { fromMs: own.at(-1)!.toMs, toMs: atMs[next.from]!, ...empty }]
    })
  return evenBuckets(
    view,
    stretches.map(({ from }) => from),
    fromMs,
    toMs,
    most,
  )
}

/** Stretches of one width. One without a reading is left out unless a gap lies over it: the step of the logger is no gap. */
function evenBuckets(
  view: Series,
  starts: readonly number[],
  fromMs: number,
  toMs: number,
  most: number,
): readonly Bucket[] {
  const { atMs } = view
  const width = (toMs - fromMs) / most
  const buckets: Bucket[] = []
  let [i, stretch] = [0, 0]
  for (let n = 0; n < most; n += 1) {
    const [from, to] = [fromMs + n * width, n + 1 === most ? toMs : fromMs + (n + 1) * width]
    let end = i
    while (end < atMs.length && atMs[end]! < to) end += 1
    while (stretch + 1 < starts.length && starts[stretch + 1]! < end) stretch += 1
    if (end > i) buckets.push(bucketIn(view, i, end, from, to))
    else if (starts[stretch + 1] === i && i > 0) buckets.push({ fromMs: from, toMs: to, ...empty })
    i = end
  }
  return buckets
}

function bucketIn(view: Series, from: number, to: number, fromMs: number, toMs: number): Bucket {
  const { rhPercent, temperatureC } = view
  return {
    fromMs,
    toMs,
    count: to - from,
    minRhPercent: least(rhPercent, from, to),
    maxRhPercent: most(rhPercent, from, to),
    minTemperatureC: least(temperatureC, from, to),
    maxTemperatureC: most(temperatureC, from, to),
  }
}

const rounded = (value: number) => (Number.isFinite(value) ? Math.round(value * 100) / 100 : null)

function least(values: Float32Array, from: number, to: number): number | null {
  let found = Infinity
  for (let i = from; i < to; i += 1) if (values[i]! < found) found = values[i]!
  return rounded(found)
}

function most(values: Float32Array, from: number, to: number): number | null {
  let found = -Infinity
  for (let i = from; i < to; i += 1) if (values[i]! > found) found = values[i]!
  return rounded(found)
}
