import type { IsoDate } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { stretchesOf, withHumidity } from '../logger/stretches.ts'
import { loggerSeries } from './logger-series.ts'
import type { World } from './ports.ts'

/** How much of the time was spent at each humidity. */
export interface LogSpread {
  /** Share of the time [one] in each whole per cent, from 0 up; nothing read: none. */
  readonly shares: readonly number[]
  readonly hours: number
}

export interface SpreadAsked {
  readonly loggerId: string
  /** Left out: the channel with the most days. */
  readonly channel?: string
  /** Days [UTC], both included; left out: all there is. */
  readonly from?: IsoDate
  readonly to?: IsoDate
}

const hourMs = 3_600_000
const places = 101

/** The readings of a logger by humidity, each standing till the next. */
export function logSpread({ store }: World, { loggerId, channel, ...days }: SpreadAsked): Answer<LogSpread> {
  return store.read<LogSpread>(async (reads) => {
    const logger = await reads.loggers.byId(loggerId)
    if (!logger) return refused(missing('logger', loggerId))
    const extents = await reads.readings.extents([loggerId])
    const most = channel ?? extents.toSorted((a, b) => b.days - a.days)[0]?.channel
    if (most === undefined) return given({ shares: [], hours: 0 })
    const series = withHumidity(await loggerSeries(reads, logger, { channel: most, ...days }))
    const stood = new Float64Array(places)
    for (const { from, to, stepMs } of stretchesOf(series)) {
      for (let at = from; at < to; at += 1) {
        const stands = at + 1 < to ? series.atMs[at + 1]! - series.atMs[at]! : stepMs
        const place = Math.min(places - 1, Math.max(0, Math.floor(series.rhPercent[at]!)))
        stood[place]! += stands
      }
    }
    const all = stood.reduce((sum, ms) => sum + ms, 0)
    return given({ shares: all === 0 ? [] : [...stood].map((ms) => ms / all), hours: all / hourMs })
  })
}
