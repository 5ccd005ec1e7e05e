import { addDays } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { dayAt } from '../base/zone.ts'
import { bucketsOf, type Bucket } from '../logger/buckets.ts'
import { excursionsOf } from '../logger/excursions.ts'
import type { SensorError } from '../logger/sensor-error.ts'
import type { Series } from '../logger/series.ts'
import { between, stretchesOf } from '../logger/stretches.ts'
import { loggerSeries } from './logger-series.ts'
import type { ChannelExtent, Reads, World } from './ports.ts'
import { sketchOfText } from './reading-days.ts'

/** A stretch of readings ready to draw. */
export interface LogView {
  readonly fromMs: number
  readonly toMs: number
  /** All there is of this channel; null where nothing was read. */
  readonly firstMs: number | null
  readonly lastMs: number | null
  readonly buckets: readonly Bucket[]
  /** Times above the level asked about, each cut to the view. */
  readonly above: readonly Span[]
  /** Times in the view without a reading, from one reading to the next. */
  readonly gaps: readonly Span[]
}

interface Span {
  readonly fromMs: number
  readonly toMs: number
}

export interface ViewAsked {
  readonly loggerId: string
  /** Left out: the channel with the most days. */
  readonly channel?: string
  /** Left out: from the first reading, to the last. */
  readonly fromMs?: number
  readonly toMs?: number
  /** Times above this [%] are told too. */
  readonly aboveRhPercent?: number
  /** Stretches at most; 1,200 where left out. */
  readonly most?: number
}

const mostBuckets = 1200
const dayMs = 86_400_000

/** The first or the last reading of a channel, by the sketch of its day. */
async function endOf(
  reads: Reads,
  { loggerId, channel, firstDay, lastDay }: ChannelExtent,
  end: 'first' | 'last',
): Promise<number | null> {
  const day = end === 'first' ? firstDay : lastDay
  const [kept] = await reads.readings.sketches({ loggerId, channel, from: day, to: day })
  return kept === undefined ? null : (sketchOfText(kept.sketch)[end]?.atMs ?? null)
}

/** The chance that they were real is not asked for here, so no error of the sensor is needed. */
const noError: SensorError = { rhPercent: 0, shape: 'normal', coverageFactor: 2 }

function gapsIn(series: Series, view: Span): readonly Span[] {
  const part = between(series, view.fromMs, view.toMs)
  const { atMs } = part
  return stretchesOf(part)
    .slice(1)
    .map(({ from }) => ({ fromMs: atMs[from - 1]!, toMs: atMs[from]! }))
}

function timesAbove(series: Series, level: number, view: Span) {
  const part = between(series, view.fromMs, view.toMs)
  return excursionsOf(part, { aboveRhPercent: level, error: noError }).map(({ fromMs, toMs }) => ({
    fromMs: Math.max(fromMs, view.fromMs),
    toMs: Math.min(toMs, view.toMs),
  }))
}

/** Readings between two moments in at most 1,200 stretches, each with its lowest and highest. Only the days seen are unpacked. */
export function logView(
  { store }: World,
  { loggerId, channel, fromMs, toMs, aboveRhPercent, most = mostBuckets }: ViewAsked,
): Answer<LogView> {
  return store.read<LogView>(async (reads) => {
    const logger = await reads.loggers.byId(loggerId)
    if (!logger) return refused(missing('logger', loggerId))
    const extents = await reads.readings.extents([loggerId])
    const extent =
      channel === undefined
        ? extents.toSorted((a, b) => b.days - a.days)[0]
        : extents.find((one) => one.channel === channel)
    if (!extent)
      return given({
        fromMs: fromMs ?? 0,
        toMs: toMs ?? 0,
        firstMs: null,
        lastMs: null,
        buckets: [],
        above: [],
        gaps: [],
      })
    const first = (await endOf(reads, extent, 'first')) ?? Date.parse(extent.firstDay)
    const last = (await endOf(reads, extent, 'last')) ?? Date.parse(extent.lastDay) + dayMs
    const [from, to] = [Math.max(fromMs ?? first, first), Math.min(toMs ?? last, last)]
    const days = { from: addDays(dayAt(from, 'UTC'), -1), to: addDays(dayAt(to, 'UTC'), 1) }
    const series = await loggerSeries(reads, logger, { channel: extent.channel, ...days })
    // One more than the last moment, so that the last reading is seen.
    const view = { fromMs: from, toMs: Math.max(from, to) + 1 }
    const wanted = Math.max(1, Math.min(most, mostBuckets))
    return given({
      ...view,
      firstMs: first,
      lastMs: last,
      buckets: bucketsOf(series, view.fromMs, view.toMs, wanted),
      above: aboveRhPercent === undefined ? [] : timesAbove(series, aboveRhPercent, view),
      gaps: gapsIn(series, view),
    })
  })
}
