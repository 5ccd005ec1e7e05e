import type { IsoDate } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import type { ExcursionMeaning } from '../boxes/excursion-meaning.ts'
import type { Excursion } from '../logger/excursions.ts'
import { standDays } from '../record/logger-register.ts'
import { excursionsInStand } from './box-excursions.ts'
import type { Project } from './kept.ts'
import { limitsInBox } from './limits-in-box.ts'
import { loggerSeries, registeredFloor } from './logger-series.ts'
import type { Logger, LogFile } from './loggers.ts'
import type { Reads, World } from './ports.ts'
import { refresh } from './refresh.ts'
import { tellLog, type LogTold } from './tell-log.ts'

/** A time outside of what the finds in the box bear, and what it meant for each of them. */
export interface ExcursionShown extends Omit<Excursion, 'kind'> {
  readonly serial: string
  readonly channel: string
  readonly box: string
  readonly side: Excursion['kind']
  readonly hours: number
  /** Finds that lay in the box at the time. */
  readonly findIds: readonly string[]
  /** What it meant for each of them, the gravest first. */
  readonly meanings: readonly FindMeaning[]
}

export interface FindMeaning {
  readonly findId: string
  readonly findNumber: string
  readonly meaning: ExcursionMeaning
}

export interface LoggerShown {
  readonly project: Project
  readonly today: IsoDate
  readonly logger: Logger
  /** Newest first. */
  readonly files: readonly LogFile[]
  readonly channels: readonly ChannelShown[]
  /** Newest first. */
  readonly excursions: readonly ExcursionShown[]
}

export interface ChannelShown {
  readonly channel: string
  readonly fromMs: number
  readonly toMs: number
  readonly readings: number
  /** What all its readings say, held against what the finds bear where it stands or stood last. */
  readonly told: LogTold
}

/** The box a logger stands in, or stood in last: what its readings are held against. */
function lastBox({ given: { stood } }: Logger): string | null {
  return stood.findLast(({ box }) => box !== undefined)?.box ?? null
}

async function channelsOf(world: World, reads: Reads, logger: Logger): Promise<readonly ChannelShown[]> {
  const box = lastBox(logger)
  const limits = box === null ? null : await limitsInBox(reads, logger.projectId, box)
  const { serial, error_rh_percent } = logger.given
  const shown: ChannelShown[] = []
  for (const { channel } of await reads.readings.extents([logger.id])) {
    const series = await loggerSeries(reads, logger, { channel })
    const asked = {
      maxRhPercent: limits?.maxRhPercent ?? null,
      minRhPercent: limits?.minRhPercent ?? null,
      sensorErrorRhPercent: error_rh_percent ?? null,
      floorRhPercent: registeredFloor(logger),
      percentiles: [7, 50, 93],
      percentileMethod: 'linear',
      doseMethod: 'rectangle',
    } as const
    const { atMs } = series
    shown.push({
      channel,
      fromMs: atMs[0]!,
      toMs: atMs.at(-1)!,
      readings: atMs.length,
      told: tellLog({ name: channel, serial, series }, asked, world.knowledge),
    })
  }
  return shown
}

async function excursionsOf(world: World, reads: Reads, logger: Logger): Promise<readonly ExcursionShown[]> {
  const all: ExcursionShown[] = []
  for (const stand of standDays(logger.given.stood)) {
    if (stand.stand.box === undefined) continue
    all.push(...(await excursionsInStand(world, reads, { logger, box: stand.stand.box, stand })).excursions)
  }
  return all.toSorted((a, b) => b.fromMs - a.fromMs)
}

/** A logger: its files, what its readings say, and every time a box it stood in left what its finds bear. */
export async function showLogger(
  world: World,
  { loggerId }: { readonly loggerId: string },
): Answer<LoggerShown> {
  const found = await world.store.read(async (reads) => given(await reads.loggers.byId(loggerId)))
  if (!found.ok) return found
  if (found.value === null) return refused(missing('logger', loggerId))
  const fresh = await refresh(world, found.value.projectId)
  if (!fresh.ok) return fresh
  return world.store.read(async (reads) => {
    const logger = await reads.loggers.byId(loggerId)
    const project = logger && (await reads.projects.byId(logger.projectId))
    if (!logger || !project) return refused(missing('logger', loggerId))
    const files = (await reads.logFiles.ofProject(project.id)).filter(({ brought }) =>
      brought.some((one) => one.loggerId === loggerId),
    )
    return given({
      project,
      today: world.today(),
      logger,
      files: files.toReversed(),
      channels: await channelsOf(world, reads, logger),
      excursions: await excursionsOf(world, reads, logger),
    })
  })
}
