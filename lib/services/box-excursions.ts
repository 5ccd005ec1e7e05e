import type { IsoDate } from '../base/calendar.ts'
import { dayAt } from '../base/zone.ts'
import { excursionMeaning, meaningAnswers } from '../boxes/excursion-meaning.ts'
import { loggerFigures, sensorErrorOf } from '../boxes/logger-figures.ts'
import type { Plan } from '../engine/plan.ts'
import { assess } from '../engine/assess.ts'
import { excursionsOf, type Excursion } from '../logger/excursions.ts'
import { flatFloorOf } from '../logger/flat-floor.ts'
import type { Series } from '../logger/series.ts'
import { between, firstFrom } from '../logger/stretches.ts'
import type { StandDays } from '../record/logger-register.ts'
import type { DiaryEntry } from './diary.ts'
import { limitsInBox, type LimitsInBox } from './limits-in-box.ts'
import { standMoments } from './log-landing.ts'
import { loggerSeries, registeredFloor } from './logger-series.ts'
import type { Logger } from './loggers.ts'
import type { Reads, World } from './ports.ts'
import type { ExcursionShown, FindMeaning } from './show-logger.ts'
import { outingsOf, type Outing } from './whereabouts.ts'

const hourMs = 3_600_000

export interface ExcursionsRead {
  readonly excursions: readonly ExcursionShown[]
  /** Hours at the least the logger can report, where the finds bear less than that: nobody can tell. */
  readonly belowRangeHours: number
}

interface Asked {
  readonly logger: Logger
  readonly box: string
  readonly stand: StandDays
  /** Only what was read from this day on. */
  readonly since?: IsoDate
}

/** Time [h] for which the readings of an excursion lay beyond a level, each standing till the next. */
function hoursBeyond({ atMs, rhPercent }: Series, { fromMs, toMs, kind }: Excursion, limit: number): number {
  // As exact as a reading is, or one that stands at the limit would lie beyond it.
  const level = Math.fround(limit)
  const end = firstFrom(atMs, toMs)
  let ms = 0
  for (let at = firstFrom(atMs, fromMs); at < end; at += 1) {
    const beyond = kind === 'above' ? rhPercent[at]! > level : rhPercent[at]! < level
    if (beyond) ms += Math.min(atMs[at + 1] ?? toMs, toMs) - atMs[at]!
  }
  return ms / hourMs
}

function hoursAtFloor({ atMs, rhPercent }: Series, floor: number): number {
  let ms = 0
  for (let at = 0; at + 1 < atMs.length; at += 1) if (rhPercent[at]! <= floor) ms += atMs[at + 1]! - atMs[at]!
  return ms / hourMs
}

const covers = (from: IsoDate | null, to: IsoDate | null, first: IsoDate, last: IsoDate) =>
  (from === null || from <= last) && (to === null || to >= first)

/** Finds that lay in the box for any of the days; one that was out for all of them did not. */
function findsThere(
  limits: LimitsInBox,
  outings: ReadonlyMap<string, readonly Outing[]>,
  first: IsoDate,
  last: IsoDate,
) {
  const there = limits.stays.filter(({ findId, from, to }) => {
    const away = (outings.get(findId) ?? []).some(
      (out) => out.from < first && (out.to === null || out.to > last),
    )
    return covers(from, to, first, last) && !away
  })
  const ids = new Set(there.map(({ findId }) => findId))
  // In the order of their numbers.
  return [...limits.finds.keys()].filter((findId) => ids.has(findId))
}

/** The plan of each find, for today, made when first asked for. */
async function plansOf(
  world: World,
  reads: Reads,
  findIds: readonly string[],
): Promise<(id: string) => Plan | null> {
  const records = await reads.records.ofFinds(findIds)
  const newest = new Map(records.map((record) => [record.findId, record.record]))
  const plans = new Map<string, Plan>()
  return (id) => {
    const record = newest.get(id)
    if (!record) return null
    const plan = plans.get(id) ?? assess(record, world.knowledge, { asOf: world.today(), questions: false })
    plans.set(id, plan)
    return plan
  }
}

async function outingsIn(reads: Reads, projectId: string, findIds: readonly string[]) {
  const moved = await reads.diary.list({ projectId, kinds: ['moved'], findIds })
  const byFind = Map.groupBy(moved as readonly DiaryEntry<'moved'>[], ({ findId }) => findId ?? '')
  return new Map([...byFind].map(([findId, own]) => [findId, outingsOf(own)]))
}

/** Every time the box left what its finds bear while the logger stood in it, and what that meant for each find. */
export async function excursionsInStand(
  world: World,
  reads: Reads,
  { logger, box, stand, since }: Asked,
): Promise<ExcursionsRead> {
  const { projectId } = logger
  const timeZone = (await reads.settings.ofProject(projectId))?.given.timeZone ?? 'UTC'
  const [longest] = (await reads.readings.extents([logger.id])).toSorted((a, b) => b.days - a.days)
  const limits = await limitsInBox(reads, projectId, box)
  const { maxRhPercent, minRhPercent } = limits
  if (longest === undefined || (maxRhPercent === null && minRhPercent === null))
    return { excursions: [], belowRangeHours: 0 }
  const { fromMs, toMs } = standMoments(
    { from: since === undefined || (stand.from ?? '') > since ? stand.from : since, to: stand.to },
    timeZone,
  )
  const { channel } = longest
  const series = between(await loggerSeries(reads, logger, { channel }), fromMs, toMs)
  const { highestFloorRhPercent, perhapsChance } = loggerFigures(world.knowledge)
  const { serial, error_rh_percent } = logger.given
  const floor = flatFloorOf(series, { highestFloorRhPercent, registeredRhPercent: registeredFloor(logger) })
  const errorNear = (rh: number) => sensorErrorOf(world.knowledge, rh, error_rh_percent ?? null)
  const found = excursionsOf(series, {
    error: errorNear(maxRhPercent ?? minRhPercent ?? 50),
    ...(maxRhPercent === null ? {} : { aboveRhPercent: maxRhPercent }),
    ...(minRhPercent === null ? {} : { belowRhPercent: minRhPercent }),
    ...(floor === null ? {} : { floorRhPercent: floor.atRhPercent }),
  })
  const ids = [...limits.finds.keys()]
  const planOf = await plansOf(world, reads, ids)
  const outings = await outingsIn(reads, projectId, ids)
  const meaningsOf = (excursion: Excursion, findIds: readonly string[]): readonly FindMeaning[] =>
    findIds
      .flatMap((findId): FindMeaning[] => {
        const plan = planOf(findId)
        if (!plan) return []
        const meaning = excursionMeaning(plan, excursion, {
          error: errorNear(excursion.worstRhPercent),
          perhapsChance,
          hoursBeyond: (level) => hoursBeyond(series, excursion, level),
        })
        return [{ findId, findNumber: limits.finds.get(findId)!.line.findNumber, meaning }]
      })
      .toSorted((a, b) => meaningAnswers.indexOf(b.meaning.answer) - meaningAnswers.indexOf(a.meaning.answer))
  const excursions = found.map((excursion): ExcursionShown => {
    const { kind, ...rest } = excursion
    const first = dayAt(excursion.fromMs, timeZone)
    const findIds = findsThere(limits, outings, first, dayAt(excursion.toMs, timeZone))
    return {
      ...rest,
      side: kind,
      serial,
      channel,
      box,
      hours: (excursion.toMs - excursion.fromMs) / hourMs,
      findIds,
      meanings: meaningsOf(excursion, findIds),
    }
  })
  const hidden = floor !== null && maxRhPercent !== null && maxRhPercent < floor.atRhPercent
  return { excursions, belowRangeHours: hidden ? hoursAtFloor(series, floor.atRhPercent) : 0 }
}
