import { daysBetween, type IsoDate } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import type { Sighting } from '../boxes/box.ts'
import { standDays } from '../record/logger-register.ts'
import { excursionsInStand } from './box-excursions.ts'
import { gelSince } from './closed-box.ts'
import type { DiaryEntry } from './diary.ts'
import type { Find, Project } from './kept.ts'
import type { Logger } from './loggers.ts'
import type { Box } from './places.ts'
import type { Reads, World } from './ports.ts'
import { refresh } from './refresh.ts'
import type { ExcursionShown } from './show-logger.ts'
import type { BoxLine, RoomShown } from './show-store.ts'
import type { Standing } from './standing.ts'
import { storeData, type StoreData } from './store-data.ts'
import { reckonStore } from './store-reckoned.ts'

export interface BoxShown {
  readonly project: Project
  readonly today: IsoDate
  readonly line: BoxLine
  readonly room: Omit<RoomShown, 'shelves'>
  readonly finds: readonly Standing[]
  readonly out: readonly FindOut[]
  /** Every find that ever lay in it, from when to when. */
  readonly stays: readonly {
    readonly find: Find
    readonly from: IsoDate | null
    readonly to: IsoDate | null
  }[]
  /** Newest first: every gel it is known to have held. */
  readonly gel: readonly DiaryEntry<'gel-change'>[]
  /** Newest first. */
  readonly diary: readonly DiaryEntry[]
  readonly sightings: readonly Sighting[]
  /** Loggers that stood in it, with the days. */
  readonly loggers: readonly {
    readonly logger: Logger
    readonly from: IsoDate | null
    readonly to: IsoDate | null
  }[]
  /** Since the gel was last renewed, newest first. */
  readonly excursions: readonly ExcursionShown[]
  /** Hours of readings since then that say nothing, for they lie below what the logger can report. */
  readonly belowRangeHours: number
}

export interface FindOut {
  readonly find: Find
  readonly since: IsoDate
  readonly where: string
  readonly why: string
  /** For so long it has stood in whatever air there is where it was taken. */
  readonly days: number
}

async function contents(reads: Reads, data: StoreData, box: string) {
  const lay = await reads.stays.inBoxes(data.project.id, [box])
  const finds = new Map(
    (await reads.finds.byIds([...new Set(lay.map(({ findId }) => findId))])).map((find) => [find.id, find]),
  )
  const stays = lay.flatMap(({ findId, from, to }) => {
    const find = finds.get(findId)
    return find ? [{ find, from, to }] : []
  })
  const out = stays.flatMap(({ find, to }): FindOut[] => {
    const last = data.outings.get(find.id)?.at(-1)
    if (to !== null || last === undefined || last.to !== null) return []
    const { from: since, where, why } = last
    return [{ find, since, where, why, days: daysBetween(since, data.today) }]
  })
  return { stays, out }
}

/** A list of boxes tells of a gel change too, in fewer words than whoever made it: told twice it is shown once. */
function toldOnce(entries: readonly DiaryEntry[]): readonly DiaryEntry[] {
  const changes = entries.filter((entry) => entry.kind === 'gel-change')
  const saysLess = (one: DiaryEntry<'gel-change'>) =>
    changes.some((other) => {
      if (other === one || other.on !== one.on) return false
      const told = Object.entries(one.given)
      const more = Object.keys(other.given).length > told.length
      return more && told.every(([key, value]) => (other.given as Record<string, unknown>)[key] === value)
    })
  return entries.filter((entry) => entry.kind !== 'gel-change' || !saysLess(entry))
}

function standsIn({ loggers }: StoreData, box: string) {
  return loggers.flatMap((logger) =>
    standDays(logger.given.stood)
      .filter(({ stand }) => stand.box === box)
      .map((stand) => ({ logger, stand })),
  )
}

async function excursionsSince(world: World, reads: Reads, data: StoreData, { given: box }: Box) {
  const since = gelSince(box, data.diary.get(box.box) ?? [])
  const all: ExcursionShown[] = []
  let belowRangeHours = 0
  for (const { logger, stand } of standsIn(data, box.box)) {
    if (since !== null && stand.to !== null && stand.to < since) continue
    const asked = { logger, box: box.box, stand, ...(since === null ? {} : { since }) }
    const read = await excursionsInStand(world, reads, asked)
    all.push(...read.excursions)
    belowRangeHours += read.belowRangeHours
  }
  return { excursions: all.toSorted((a, b) => b.fromMs - a.fromMs), belowRangeHours }
}

async function shown(world: World, reads: Reads, box: Box): Answer<BoxShown> {
  const read = await storeData(world, reads, box.projectId)
  if (!read.ok) return read
  const data = read.value
  const name = box.given.box
  const reckoned = await reckonStore(world, data)
  const line = reckoned.lines.find((one) => one.box.id === box.id)
  if (!line) return refused(missing('box', box.id))
  const diary = toldOnce(await reads.diary.list({ projectId: box.projectId, boxes: [name] })).toReversed()
  return given({
    project: data.project,
    today: data.today,
    line,
    room: {
      room: data.rooms.find(({ given: room }) => room.room === line.room) ?? null,
      name: line.room,
      surroundings: reckoned.surroundings(line.room),
    },
    finds: data.standings.get(name) ?? [],
    ...(await contents(reads, data, name)),
    gel: diary.filter((entry) => entry.kind === 'gel-change'),
    diary,
    sightings: reckoned.sightings.get(name) ?? [],
    loggers: standsIn(data, name).map(({ logger, stand: { from, to } }) => ({ logger, from, to })),
    ...(await excursionsSince(world, reads, data, box)),
  })
}

/** A box: what lies in it and lay in it, its gel, what was seen of it, what is likely, and when it left what its finds bear. */
export async function showBox(world: World, { boxId }: { readonly boxId: string }): Answer<BoxShown> {
  const found = await world.store.read(async (reads) => given(await reads.boxes.byId(boxId)))
  if (!found.ok) return found
  if (found.value === null) return refused(missing('box', boxId))
  const fresh = await refresh(world, found.value.projectId)
  if (!fresh.ok) return fresh
  return world.store.read(async (reads) => {
    const box = await reads.boxes.byId(boxId)
    return box ? shown(world, reads, box) : refused(missing('box', boxId))
  })
}
