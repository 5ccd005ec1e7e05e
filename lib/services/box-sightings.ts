import { addDays, daysBetween, type IsoDate } from '../base/calendar.ts'
import { correctedRhPercent, correctionThrough, type Correction } from '../climate/fixed-points-correction.ts'
import type { Day, Sighting } from '../boxes/box.ts'
import { figureValue, type Figures } from '../boxes/figure-value.ts'
import { sensorErrorOf } from '../boxes/logger-figures.ts'
import { standDays, type StandDays } from '../record/logger-register.ts'
import type { DiaryEntry } from './diary.ts'
import { gelSpent } from './gel-colour.ts'
import type { LoggerDay } from './logger-days.ts'
import type { Logger } from './loggers.ts'
import type { StoreData } from './store-data.ts'

const dayMs = 86_400_000

/** A day as the box model counts it. Days of loggers come by the thousand, so the calendar is not asked. */
export const dayNumber = (day: IsoDate): Day => Date.parse(day) / dayMs

export const dayOfNumber = (day: Day): IsoDate =>
  new Date(Math.round(day) * dayMs).toISOString().slice(0, 10) as IsoDate

/** Where the sensor was held over salts, the line through what it read there; else none. */
export function correctionOf({ given }: Logger): Correction | null {
  const newest = (given.salts ?? []).toSorted((a, b) => ((a.on ?? '') < (b.on ?? '') ? 1 : -1)).slice(0, 2)
  if (newest.length === 0) return null
  const through = correctionThrough(newest)
  return through.ok ? through.value : null
}

const longEnough = 3

/** Whole days only: on the day it was carried a logger read two places. A stand of few days is taken as it is. */
function wholeDays({ from, to }: StandDays, today: IsoDate): { from: IsoDate | null; to: IsoDate | null } {
  const end = to ?? today
  if (from === null) return { from, to: to === null ? null : addDays(to, -1) }
  if (daysBetween(from, end) < longEnough) return { from, to }
  return { from: addDays(from, 1), to: to === null ? null : addDays(to, -1) }
}

const within = (day: IsoDate, from: IsoDate | null, to: IsoDate | null) =>
  (from === null || day >= from) && (to === null || day <= to)

/** The days a logger read where it stood, each with the logger; oldest first for each logger. */
export function daysStood(
  { loggers, days, today }: Pick<StoreData, 'loggers' | 'days' | 'today'>,
  where: { readonly box: string } | { readonly room: string },
): readonly { readonly logger: Logger; readonly day: LoggerDay; readonly floorRhPercent: number | null }[] {
  return loggers.flatMap((logger) => {
    const read = days.get(logger.id)
    if (!read) return []
    const stood = standDays(logger.given.stood).filter(({ stand }) =>
      'box' in where ? stand.box === where.box : stand.box === undefined && stand.room === where.room,
    )
    return stood.flatMap((stand) => {
      const { from, to } = wholeDays(stand, today)
      return read.days
        .filter(({ day }) => within(day, from, to))
        .map((day) => ({ logger, day, floorRhPercent: read.floorRhPercent }))
    })
  })
}

const noon = 0.5

function fromLoggers(data: StoreData, box: string, knowledge: Figures): readonly Sighting[] {
  return daysStood(data, { box }).map(({ logger, day, floorRhPercent }): Sighting => {
    const { serial } = logger.given
    const on = dayNumber(day.day) + noon
    const line = correctionOf(logger)
    const right = (read: number) => (line === null ? read : correctedRhPercent(line, read))
    const { rhPercent: errorRhPercent } = sensorErrorOf(
      knowledge,
      day.meanRhPercent,
      logger.given.error_rh_percent ?? null,
    )
    if (day.atFloor && floorRhPercent !== null)
      return { kind: 'below-range', on, floorRhPercent: right(floorRhPercent), errorRhPercent, serial }
    return { kind: 'logger', on, rhPercent: right(day.meanRhPercent), errorRhPercent, serial }
  })
}

/** What rounds and looks at the lid saw of a box. */
function fromDiary(
  entries: readonly DiaryEntry[],
  gelKind: string | undefined,
  stripErrorRhPercent: number,
): readonly Sighting[] {
  return entries.flatMap((entry): Sighting[] => {
    const on = dayNumber(entry.on)
    if (entry.kind === 'lid') return entry.given.lid === 'not-seated' ? [{ kind: 'lid-loose', on }] : []
    if (entry.kind !== 'round') return []
    const { strip_low, strip_high, gel_colour, lid } = entry.given
    const strip: Sighting[] =
      strip_low === undefined && strip_high === undefined
        ? []
        : [
            {
              kind: 'strip',
              on,
              lowRhPercent: strip_low ?? 0,
              highRhPercent: strip_high ?? 100,
              errorRhPercent: stripErrorRhPercent,
            },
          ]
    return [
      ...strip,
      ...(gelSpent(gelKind, gel_colour) === true ? [{ kind: 'gel-spent', on } as const] : []),
      ...(lid === 'not-seated' ? [{ kind: 'lid-loose', on } as const] : []),
    ]
  })
}

/** Everything that loggers, strips, gel and lid told of a box, in the order of time. */
export function sightingsOf(
  data: StoreData,
  box: string,
  gelKind: string | undefined,
  knowledge: Figures,
): readonly Sighting[] {
  const strip = figureValue(knowledge, 'strip-error')
  return [
    ...fromLoggers(data, box, knowledge),
    ...fromDiary(data.diary.get(box) ?? [], gelKind, strip),
  ].toSorted((a, b) => a.on - b.on)
}
