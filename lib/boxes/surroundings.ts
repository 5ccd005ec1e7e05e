import { yearDays } from '../climate/seasonal.ts'
import type { Series } from '../logger/series.ts'
import type { Range, Surroundings } from './box.ts'
import { roomSpans } from './room-spans.ts'

export interface KnownOfRoom {
  /** A logger that stood in the room itself. */
  readonly series: Series | null
  readonly rhLowPercent: number | null
  readonly rhHighPercent: number | null
}

/** What is assumed of a room of which nothing is known; figures. */
export interface AssumedRoom {
  readonly meanRhPercent: Range
  readonly swingRhPercent: number
  /** How far a swing may be off [%, two standard deviations]. */
  readonly swingErrorRhPercent: { readonly written: number; readonly assumed: number }
  readonly highestDayOfYear: number
  readonly weatherRhPercent: number
  readonly weatherDays: number
  /** Standard deviation of one year's mean from the next [%]. */
  readonly yearsDifferRhPercent: number
  /** ± of a logger in the room [%]: one and the same in all it read. */
  readonly loggerErrorRhPercent: number
}

const perDay = (2 * Math.PI) / yearDays
/** Standard deviations from the middle to either end of a range that holds eight cases in ten. */
const toRangeEnd = 1.2816

/** Mean, and how far the season swings along cosine and sine of the year, with what each may be off [standard deviations]. */
interface Course {
  readonly mean: readonly [value: number, off: number]
  readonly cosine: readonly [value: number, off: number]
  readonly sine: readonly [value: number, off: number]
}

/** The course before any reading: from what is written of the room, else from what is assumed of any. */
function before({ rhLowPercent, rhHighPercent }: KnownOfRoom, assumed: AssumedRoom): Course {
  const phase = perDay * assumed.highestDayOfYear
  const along = (swing: number, error: number) =>
    ({
      cosine: [swing * Math.cos(phase), error / 2],
      sine: [swing * Math.sin(phase), error / 2],
    }) as const
  if (rhLowPercent !== null && rhHighPercent !== null) {
    const half = Math.abs(rhHighPercent - rhLowPercent) / 2
    // Whether a written range holds single days or the weeks' means nobody says: its mean may lie a quarter to either side.
    const off = half / 2 / toRangeEnd
    return {
      mean: [(rhLowPercent + rhHighPercent) / 2, Math.max(off, assumed.yearsDifferRhPercent)],
      ...along(half, assumed.swingErrorRhPercent.written),
    }
  }
  const { low, nominal, high } = assumed.meanRhPercent
  return {
    mean: [nominal, (high - low) / (2 * toRangeEnd)],
    ...along(assumed.swingRhPercent, assumed.swingErrorRhPercent.assumed),
  }
}

/** The course after one more span of weather was read: three unknowns, one linear look at them. */
interface Known {
  readonly mean: readonly number[]
  readonly covariance: readonly (readonly number[])[]
}

function learnt({ mean, covariance }: Known, look: readonly number[], read: number, variance: number): Known {
  const through = covariance.map((row) => row.reduce((sum, value, at) => sum + value * look[at]!, 0))
  const spread = through.reduce((sum, value, at) => sum + value * look[at]!, variance)
  const gain = through.map((value) => value / spread)
  const missed = read - mean.reduce((sum, value, at) => sum + value * look[at]!, 0)
  return {
    mean: mean.map((value, at) => value + gain[at]! * missed),
    covariance: covariance.map((row, at) => row.map((value, to) => value - gain[at]! * through[to]!)),
  }
}

/**
 * The yearly course of humidity around the boxes of a room, from the best that is known of it. A logger's readings correct
 * what is written or assumed as far as they reach: a week in May says little of October, a year says nearly all.
 */
export function surroundingsOf(room: KnownOfRoom, assumed: AssumedRoom): Surroundings {
  const spans = room.series === null ? [] : roomSpans(room.series, assumed.weatherDays)
  const { mean, cosine, sine } = before(room, assumed)
  let known: Known = {
    mean: [mean[0], cosine[0], sine[0]],
    covariance: [
      [mean[1] ** 2, 0, 0],
      [0, cosine[1] ** 2, 0],
      [0, 0, sine[1] ** 2],
    ],
  }
  for (const { on, rhPercent, share } of spans) {
    const look = [1, Math.cos(perDay * on), Math.sin(perDay * on)]
    // Weather that lasts goes on into the next span: two spans tell what one would, had weather no memory.
    known = learnt(known, look, rhPercent, (2 * assumed.weatherRhPercent ** 2) / share)
  }
  const [nominal, along, across] = known.mean as [number, number, number]
  const off = known.covariance.map((row, at) => Math.sqrt(row[at]!))
  const ofLogger = [assumed.yearsDifferRhPercent, assumed.loggerErrorRhPercent / 2]
  const meanOff = toRangeEnd * Math.hypot(off[0]!, ...(spans.length === 0 ? [] : ofLogger))
  const written = room.rhLowPercent !== null && room.rhHighPercent !== null
  return {
    meanRhPercent: { low: nominal - meanOff, nominal, high: nominal + meanOff },
    swingRhPercent: Math.hypot(along, across),
    swingErrorRhPercent: 2 * Math.max(off[1]!, off[2]!),
    highestOn: (Math.atan2(across, along) / perDay + yearDays) % yearDays,
    from: spans.length > 0 ? 'logger' : written ? 'written' : 'assumed',
  }
}
