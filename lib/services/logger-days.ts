import type { IsoDate } from '../base/calendar.ts'
import { sketchMean, type Sketch } from '../logger/day-sketch.ts'
import type { Logger } from './loggers.ts'
import type { ChannelExtent, Reads, Store } from './ports.ts'
import { sketchOfText } from './reading-days.ts'

/** One day [UTC] of a logger, as its sensor read it: nothing corrected, nothing left out. */
export interface LoggerDay {
  readonly day: IsoDate
  readonly readings: number
  readonly meanRhPercent: number
  readonly minRhPercent: number
  readonly maxRhPercent: number
  readonly meanTemperatureC: number | null
  /** The last reading of the day. */
  readonly lastMs: number
  /** Most of the day it read the least it can: the truth was there or lower. */
  readonly atFloor: boolean
}

/** The days of a logger's own channel of humidity: the one with the most days, where there are several. */
export interface LoggerDays {
  readonly channel: string
  readonly extent: ChannelExtent
  readonly days: readonly LoggerDay[]
  /** The least it can report [%], by the register or by whole days on which it read nothing else; null: none known. */
  readonly floorRhPercent: number | null
}

const fewest = 6

/** Whole days at one and the same lowest value: no box is so quiet. */
function floorSeen(sketches: readonly Sketch[], highestFloorRhPercent: number): number | null {
  const lows = sketches.flatMap(({ minRhPercent }) => minRhPercent ?? [])
  const lowest = lows.reduce((least, low) => Math.min(least, low), Infinity)
  if (lowest > highestFloorRhPercent) return null
  const flat = sketches.some(
    ({ readings, minRhPercent, maxRhPercent }) =>
      readings >= fewest && minRhPercent === lowest && maxRhPercent === lowest,
  )
  return flat ? lowest : null
}

/** Whether it lay at the floor for most of the time it was read. */
function mostlyAtFloor({ bins, maxRhPercent, minRhPercent }: Sketch, floor: number | null): boolean {
  if (floor === null || minRhPercent === null || minRhPercent > floor) return false
  if ((maxRhPercent ?? Infinity) <= floor) return true
  const all = bins.reduce((sum, { stoodMs }) => sum + stoodMs, 0)
  const at = bins.reduce(
    (sum, { percent, stoodMs }) => (percent <= Math.ceil(floor) ? sum + stoodMs : sum),
    0,
  )
  return at * 2 >= all
}

const remembered = new WeakMap<Store, Map<string, LoggerDays>>()

async function read(
  reads: Reads,
  { given }: Logger,
  extent: ChannelExtent,
  highestFloorRhPercent: number,
): Promise<LoggerDays> {
  const { loggerId, channel } = extent
  const kept = (await reads.readings.sketches({ loggerId, channel })).map(({ day, sketch }) => ({
    day,
    sketch: sketchOfText(sketch),
  }))
  const floorRhPercent =
    given.floor_rh_percent ??
    floorSeen(
      kept.map(({ sketch }) => sketch),
      highestFloorRhPercent,
    )
  const days = kept.flatMap(({ day, sketch }): LoggerDay[] => {
    const mean = sketchMean(sketch)
    const { last } = sketch
    if (mean === null || last === null || sketch.minRhPercent === null || sketch.maxRhPercent === null)
      return []
    const { readings, minRhPercent, maxRhPercent, temperatures, sumTemperatureHundredths } = sketch
    return [
      {
        day,
        readings,
        meanRhPercent: mean.meanRhPercent,
        minRhPercent,
        maxRhPercent,
        meanTemperatureC: temperatures === 0 ? null : sumTemperatureHundredths / temperatures / 100,
        lastMs: last.atMs,
        atFloor: mostlyAtFloor(sketch, floorRhPercent),
      },
    ]
  })
  return { channel, extent, days, floorRhPercent }
}

/**
 * The days of loggers by their ids, from their sketches. Remembered for as long as nothing was read in: a store is looked at
 * far more often than its loggers are.
 */
export async function loggerDays(
  store: Store,
  reads: Reads,
  loggers: readonly Logger[],
  highestFloorRhPercent: number,
): Promise<ReadonlyMap<string, LoggerDays>> {
  const own = remembered.get(store) ?? new Map<string, LoggerDays>()
  remembered.set(store, own)
  const extents = Map.groupBy(
    await reads.readings.extents(loggers.map(({ id }) => id)),
    ({ loggerId }) => loggerId,
  )
  const all = new Map<string, LoggerDays>()
  for (const logger of loggers) {
    const longest = extents.get(logger.id)?.toSorted((a, b) => b.days - a.days)[0]
    if (longest === undefined) continue
    const { channel, days, writtenAt } = longest
    const key = `${logger.id} ${logger.version} ${channel} ${days} ${writtenAt}`
    const known = own.get(logger.id + key) ?? (await read(reads, logger, longest, highestFloorRhPercent))
    for (const old of own.keys()) if (old.startsWith(logger.id)) own.delete(old)
    own.set(logger.id + key, known)
    all.set(logger.id, known)
  }
  return all
}
