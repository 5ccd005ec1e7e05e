import type { IsoDate } from '../base/calendar.ts'
import { refused, given } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { figureValue } from '../boxes/figure-value.ts'
import type { DiaryEntry } from './diary.ts'
import type { Project } from './kept.ts'
import { everyStanding } from './list-salvage.ts'
import { loggerDays, type LoggerDays } from './logger-days.ts'
import type { Logger } from './loggers.ts'
import type { Box, Room } from './places.ts'
import type { Reads, World } from './ports.ts'
import type { Standing } from './standing.ts'
import type { FindStay } from './stays.ts'
import { nothingSet, type StoreSettingGiven } from './store-setting.ts'
import { outingsOf, type Outing } from './whereabouts.ts'

/** Everything that is kept of a store, put in order once so that each box finds its own. */
export interface StoreData {
  readonly project: Project
  readonly today: IsoDate
  readonly setting: StoreSettingGiven
  readonly timeZone: string
  readonly rooms: readonly Room[]
  readonly boxes: readonly Box[]
  readonly loggers: readonly Logger[]
  /** By the id of the logger; a logger without readings has none. */
  readonly days: ReadonlyMap<string, LoggerDays>
  /** By the name of the box: rounds, gel, lids and water, oldest first. */
  readonly diary: ReadonlyMap<string, readonly DiaryEntry[]>
  readonly standings: ReadonlyMap<string, readonly Standing[]>
  /** Times a find was out, by its id. */
  readonly outings: ReadonlyMap<string, readonly Outing[]>
  /** Finds that lay in tubs, by the name of the tub: nothing else says since when it is full. */
  readonly tubStays: ReadonlyMap<string, readonly FindStay[]>
}

const boxKinds = ['round', 'gel-change', 'lid', 'water-change', 'logger-placed'] as const

async function outingsOfAll(reads: Reads, projectId: string): Promise<StoreData['outings']> {
  const moved = (await reads.diary.list({ projectId, kinds: ['moved'] })) as readonly DiaryEntry<'moved'>[]
  const byFind = Map.groupBy(moved, ({ findId }) => findId ?? '')
  return new Map([...byFind].map(([findId, own]) => [findId, outingsOf(own)]))
}

/** Lists must be made for today before this is read. */
export async function storeData(world: World, reads: Reads, projectId: string): Answer<StoreData> {
  const project = await reads.projects.byId(projectId)
  if (!project) return refused(missing('project', projectId))
  const setting = { ...nothingSet, ...(await reads.settings.ofProject(projectId))?.given }
  const boxes = await reads.boxes.ofProject(projectId)
  const loggers = await reads.loggers.ofProject(projectId)
  const entries = await reads.diary.list({ projectId, kinds: boxKinds })
  const tubs = boxes.filter(({ given: box }) => box.kind === 'tub').map(({ given: box }) => box.box)
  const highest = figureValue(world.knowledge, 'logger-floor-highest')
  return given({
    project,
    today: world.today(),
    setting,
    timeZone: setting.timeZone ?? 'UTC',
    rooms: await reads.rooms.ofProject(projectId),
    boxes,
    loggers,
    days: await loggerDays(world.store, reads, loggers, highest),
    diary: Map.groupBy(entries, ({ box }) => box ?? ''),
    standings: Map.groupBy(await everyStanding(reads, projectId), ({ line }) => line.box),
    outings: await outingsOfAll(reads, projectId),
    tubStays: Map.groupBy(await reads.stays.inBoxes(projectId, tubs), ({ box }) => box),
  })
}
