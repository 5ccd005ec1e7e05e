import { addDays, type IsoDate } from '../base/calendar.ts'
import { dayStartMs } from '../base/zone.ts'
import type { Series } from '../logger/series.ts'
import { between } from '../logger/stretches.ts'
import { standDays, type StandDays } from '../record/logger-register.ts'
import type { Stand } from '../record/store-loggers.ts'

/** Where a stretch of readings belongs: the logger stood there at the time. */
export interface Landing {
  readonly box: string | null
  readonly room: string | null
  readonly from: IsoDate | null
  readonly to: IsoDate | null
  readonly readings: number
  readonly fromMs: number
  readonly toMs: number
}

export interface Landings {
  readonly lands: readonly Landing[]
  /** Readings of times of which nobody wrote where the logger stood; null: there are none. */
  readonly nowhere: { readonly readings: number; readonly fromMs: number; readonly toMs: number } | null
}

/** The moments between which a logger stood there, on the clock of the store. */
export function standMoments(
  { from, to }: Pick<StandDays, 'from' | 'to'>,
  timeZone: string,
): { readonly fromMs: number; readonly toMs: number } {
  return {
    fromMs: from === null ? -Infinity : dayStartMs(from, timeZone),
    toMs: to === null ? Infinity : dayStartMs(addDays(to, 1), timeZone),
  }
}

/** Which readings belong to which box or room, by where the logger stood from when to when. */
export function landingsOf(series: Series, stood: readonly Stand[], timeZone: string): Landings {
  const { atMs } = series
  const lands = standDays(stood).flatMap((days): Landing[] => {
    const { fromMs, toMs } = standMoments(days, timeZone)
    const own = between(series, fromMs, toMs).atMs
    if (own.length === 0) return []
    const { box = null, room = null } = days.stand
    return [
      {
        box,
        room,
        from: days.from,
        to: days.to,
        readings: own.length,
        fromMs: own[0]!,
        toMs: own.at(-1)!,
      },
    ]
  })
  const placed = lands.filter(({ box, room }) => box !== null || room !== null)
  const readings = atMs.length - placed.reduce((sum, land) => sum + land.readings, 0)
  if (readings === 0) return { lands: placed, nowhere: null }
  const isPlaced = (at: number) => placed.some(({ fromMs, toMs }) => fromMs <= at && at <= toMs)
  const first = atMs.find((at) => !isPlaced(at))!
  const last = atMs.findLast((at) => !isPlaced(at))!
  return { lands: placed, nowhere: { readings, fromMs: first, toMs: last } }
}
