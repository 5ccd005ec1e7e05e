import { isoDate, type IsoDate } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import type { Answer } from '../base/trouble.ts'
import { together, type Bought } from '../boxes/what-if.ts'
import { storeReport, type StoreReport } from '../papers/store-report.ts'
import type { ReportBox } from '../papers/store-report-box.ts'
import { gelSince } from './closed-box.ts'
import type { DiaryEntry } from './diary.ts'
import type { Project } from './kept.ts'
import type { Reads, World } from './ports.ts'
import { refresh } from './refresh.ts'
import type { Standing } from './standing.ts'
import { doubtfulOf, noChange } from './show-what-if.ts'
import { boughtBoxes } from './show-what-if-boxes.ts'
import { plainBoxOf, withAbove } from './store-report-boxes.ts'
import {
  lidsOf,
  movementsOf,
  tubsOf,
  waterOf,
  type LidEvents,
  type Movement,
  type WaterEvent,
} from './store-report-events.ts'
import { aboveLimit, standsByBox } from './store-report-hours.ts'
import { storeData, type StoreData } from './store-data.ts'
import { reckonStore, type StoreReckoned } from './store-reckoned.ts'

export interface StoreYear {
  readonly project: Project
  readonly today: IsoDate
  readonly year: number
  /** The year runs still: all is told up to today. */
  readonly running: boolean
  /** Years of which anything is kept, the newest first. */
  readonly years: readonly number[]
  readonly report: StoreReport
  readonly lines: readonly ReportBox[]
  /** Numbers of the finds that were at risk, by their ids. */
  readonly findNumbers: Readonly<Record<string, string>>
  readonly boxIds: Readonly<Record<string, string>>
  readonly water: readonly WaterEvent[]
  readonly lids: readonly LidEvents[]
  readonly movements: readonly Movement[]
  readonly tubs: { readonly tubs: number; readonly waterChanges: number }
  readonly stock: { readonly gelDryKg: number | null; readonly gelSpentKg: number | null }
  readonly drier: Drier
}

/** What drier rooms would save, by today's outlook. */
export interface Drier {
  readonly byPercent: number
  readonly counted: number
  readonly leftOut: number
  /** Boxes whose readings stray from the model, and how many of the renewals now are theirs. */
  readonly doubtful: readonly string[]
  readonly doubtfulRenewalsPerYear: number
  readonly whole: Bought
  readonly rooms: readonly {
    readonly room: string
    readonly boxes: number
    readonly nowRhPercent: number
    readonly bought: Bought
  }[]
}

/** How much drier is told of; the page for it tries any other. */
const drierByPercent = 10

/** From the first thing that is kept to the year that runs. */
function yearsOf({ boxes, diary, days, today }: StoreData, floods: readonly DiaryEntry[]): readonly number[] {
  const firsts = [
    ...[...diary.values()].flatMap((entries) => entries[0]?.on ?? []),
    ...[...days.values()].flatMap((logger) => logger.days[0]?.day ?? []),
    ...boxes.flatMap(({ given: box }) => gelSince(box, []) ?? []),
    ...floods.map(({ on }) => on),
  ]
  const last = Number(today.slice(0, 4))
  const first = firsts.reduce((least, on) => Math.min(least, Number(on.slice(0, 4))), last)
  return Array.from({ length: last - first + 1 }, (_, back) => last - back)
}

async function boxesOf(
  world: World,
  reads: Reads,
  data: StoreData,
  reckoned: StoreReckoned,
  standings: ReadonlyMap<string, Standing>,
  period: { readonly from: IsoDate; readonly to: IsoDate },
): Promise<readonly ReportBox[]> {
  const dry = reckoned.lines.filter(({ kind }) => kind !== 'tub')
  const names = dry.map(({ box }) => box.given.box)
  const stays = Map.groupBy(await reads.stays.inBoxes(data.project.id, names), ({ box }) => box)
  const stands = standsByBox(data)
  const boxes: ReportBox[] = []
  for (const line of dry) {
    const own = stays.get(line.box.given.box) ?? []
    const plain = plainBoxOf({ data, reckoned, standings, to: period.to }, line, own)
    const { box, limits } = plain
    boxes.push(withAbove(plain, await aboveLimit(world, reads, data, { box, limits, stands, period })))
  }
  return boxes
}

function drierOf(world: World, data: StoreData, { lines }: StoreReckoned): Drier {
  const change = { ...noChange, drierByPercent }
  const { bought, leftOut } = boughtBoxes(world.knowledge, data, lines, change)
  return {
    byPercent: drierByPercent,
    counted: bought.length,
    leftOut: leftOut.filter(({ because }) => because !== 'tub' && because !== 'no-limit').length,
    ...doubtfulOf(bought),
    whole: together(bought.map((each) => each.bought)),
    rooms: [...Map.groupBy(bought, ({ room }) => room)].map(([room, boxes]) => ({
      room,
      boxes: boxes.length,
      nowRhPercent: boxes[0]!.meanRhPercent.now,
      bought: together(boxes.map((each) => each.bought)),
    })),
  }
}

/** A year of the store as it is kept: how boxes stood, what gel was used, what was done in time, and what was at risk. */
export async function reportYear(
  world: World,
  { projectId, year }: { readonly projectId: string; readonly year: number },
): Answer<StoreYear> {
  const from = isoDate(`${year}-01-01`)
  const [end, ahead] = [isoDate(`${year}-12-31`), isoDate(`${year + 1}-12-31`)]
  const today = world.today()
  if (from === null || end === null || ahead === null || from > today)
    return refused({ kind: 'not-accepted', field: 'year', because: 'unknown' })
  const fresh = await refresh(world, projectId)
  if (!fresh.ok) return fresh
  return world.store.read(async (reads) => {
    const read = await storeData(world, reads, projectId)
    if (!read.ok) return read
    const data = read.value
    const reckoned = await reckonStore(world, data)
    const floods = (await reads.diary.list({
      projectId,
      kinds: ['flood'],
    })) as readonly DiaryEntry<'flood'>[]
    const standings = new Map(
      [...data.standings.values()].flat().map((standing) => [standing.findId, standing]),
    )
    const period = { from, to: end < today ? end : today, ahead }
    const lines = await boxesOf(world, reads, data, reckoned, standings, period)
    const report = storeReport(lines, period)
    const { gelDryKg, gelSpentKg } = data.setting
    return given({
      project: data.project,
      today: data.today,
      year,
      running: end >= today,
      years: yearsOf(data, floods),
      report,
      lines,
      findNumbers: Object.fromEntries(
        report.atRisk
          .flatMap(({ findIds }) => findIds)
          .map((id) => [id, standings.get(id)?.line.findNumber ?? id]),
      ),
      boxIds: Object.fromEntries(data.boxes.map(({ id, given: { box } }) => [box, id])),
      water: waterOf(floods, period),
      lids: lidsOf(data, period),
      movements: movementsOf(data, standings, period),
      tubs: tubsOf(data, period),
      stock: { gelDryKg, gelSpentKg },
      drier: drierOf(world, data, reckoned),
    })
  })
}
