import { addDays, type IsoDate } from '../base/calendar.ts'
import { dayAt } from '../base/zone.ts'
import { sensorErrorOf } from '../boxes/logger-figures.ts'
import { correctedRhPercent } from '../climate/fixed-points-correction.ts'
import { excursionsOf } from '../logger/excursions.ts'
import { between } from '../logger/stretches.ts'
import type { LimitSpan, ReportBox } from '../papers/store-report-box.ts'
import { standDays } from '../record/logger-register.ts'
import { correctionOf } from './box-sightings.ts'
import { standMoments } from './log-landing.ts'
import type { LoggerDay } from './logger-days.ts'
import { loggerSeries } from './logger-series.ts'
import type { Logger } from './loggers.ts'
import type { Reads, World } from './ports.ts'
import type { StoreData } from './store-data.ts'

/** What loggers recorded above the limit of a box: hours, the worst, and on which days. */
export type AboveLimit = ReportBox['above']

const none: AboveLimit = { hours: 0, worstRhPercent: null, days: [] }
const hourMs = 3_600_000

interface Span {
  readonly from: IsoDate
  readonly to: IsoDate
}

interface Asked {
  readonly logger: Logger
  readonly span: Span
  readonly limitRhPercent: number
}

const later = (a: IsoDate | null, b: IsoDate) => (a === null || a < b ? b : a)
const sooner = (a: IsoDate | null, b: IsoDate) => (a === null || a > b ? b : a)

/** The days on which it read more than the limit at all: only those need be looked at reading by reading. */
function daysOver({ days }: StoreData, { logger, span, limitRhPercent }: Asked): readonly LoggerDay[] {
  const line = correctionOf(logger)
  const right = (read: number) => (line === null ? read : correctedRhPercent(line, read))
  // Days are counted by the clock of Greenwich, stands by that of the store.
  const [from, to] = [addDays(span.from, -1), addDays(span.to, 1)]
  return (days.get(logger.id)?.days ?? []).filter(
    ({ day, maxRhPercent }) => day >= from && day <= to && right(maxRhPercent) > limitRhPercent,
  )
}

async function aboveBy(world: World, reads: Reads, data: StoreData, asked: Asked): Promise<AboveLimit> {
  const { logger, span, limitRhPercent } = asked
  const over = daysOver(data, asked)
  const [first, last, read] = [over[0], over.at(-1), data.days.get(logger.id)]
  if (first === undefined || last === undefined || read === undefined) return none
  const series = await loggerSeries(reads, logger, {
    channel: read.channel,
    from: addDays(first.day, -1),
    to: addDays(last.day, 1),
  })
  const { fromMs, toMs } = standMoments(span, data.timeZone)
  const excursions = excursionsOf(between(series, fromMs, toMs), {
    aboveRhPercent: limitRhPercent,
    error: sensorErrorOf(world.knowledge, limitRhPercent, logger.given.error_rh_percent ?? null),
    ...(read.floorRhPercent === null ? {} : { floorRhPercent: read.floorRhPercent }),
  })
  return joined(
    excursions.map((one) => ({
      hours: (one.toMs - one.fromMs) / hourMs,
      worstRhPercent: one.worstRhPercent,
      days: daysFrom(dayAt(one.fromMs, data.timeZone), dayAt(one.toMs - 1, data.timeZone)),
    })),
  )
}

function daysFrom(first: IsoDate, last: IsoDate): readonly IsoDate[] {
  const days = [first]
  while (days.at(-1)! < last) days.push(addDays(days.at(-1)!, 1))
  return days
}

function joined(all: readonly AboveLimit[]): AboveLimit {
  return all.reduce(
    (sum, one) => ({
      hours: sum.hours + one.hours,
      worstRhPercent:
        sum.worstRhPercent === null || (one.worstRhPercent ?? 0) > sum.worstRhPercent
          ? one.worstRhPercent
          : sum.worstRhPercent,
      days: [...sum.days, ...one.days],
    }),
    none,
  )
}

/** Loggers of every box with the days they stood in it. */
export function standsByBox({ loggers }: StoreData) {
  const stands = loggers.flatMap((logger) =>
    standDays(logger.given.stood).map((stand) => ({ logger, stand })),
  )
  return Map.groupBy(stands, ({ stand }) => stand.stand.box ?? '')
}

type Stands = ReturnType<typeof standsByBox>

/** What the loggers of a box recorded above what lay in it bore, within a period. */
export async function aboveLimit(
  world: World,
  reads: Reads,
  data: StoreData,
  {
    box,
    limits,
    stands,
    period,
  }: {
    readonly box: string
    readonly limits: readonly LimitSpan[]
    readonly stands: Stands
    readonly period: Span
  },
): Promise<AboveLimit> {
  const found: AboveLimit[] = []
  for (const { logger, stand } of stands.get(box) ?? []) {
    for (const { from, to, limitRhPercent } of limits) {
      if (limitRhPercent === null) continue
      const span = {
        from: later(stand.from, later(from, period.from)),
        to: sooner(stand.to, sooner(to, period.to)),
      }
      if (span.from <= span.to)
        found.push(await aboveBy(world, reads, data, { logger, span, limitRhPercent }))
    }
  }
  const { days, ...all } = joined(found)
  return { ...all, days: [...new Set(days)].toSorted() }
}
