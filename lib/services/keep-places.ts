import { createHash } from 'node:crypto'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { inFileOrder, type Problem } from '../record/problem.ts'
import type { StoreTable } from '../record/store-tables.ts'
import { readPlaces, type PlacesRead, type Unreadable } from '../tables/place-table.ts'
import { diaryRows, roundRows, type EntriesRead } from './keep-diary-rows.ts'
import { boxRows, gelRows, loggerRows, roomRows } from './keep-place-rows.ts'
import { bringUpToDate } from './enter-records.ts'
import type { Actor } from './kept.ts'
import type { World, Writes } from './ports.ts'
import { stopsHeard } from './stops-heard.ts'
import type { Stop } from './stops.ts'

/** A file of the store's own tables. */
export interface PlacesToKeep {
  readonly projectId: string
  readonly bytes: Uint8Array
  readonly fileName?: string
  /** Only tells what would happen; nothing is kept. */
  readonly dryRun?: boolean
}

export interface PlacesKept {
  /** Rows read of each table. */
  readonly rooms: number
  readonly boxes: number
  readonly loggers: number
  readonly rounds: number
  readonly diary: number
  /** Rounds and diary entries that were new; the others were there before, word for word. */
  readonly entriesAdded: number
  readonly problems: readonly Problem[]
  readonly stops: readonly Stop[]
  readonly unreadableRows: number
  /** Where rows to mend were put down, of each sheet that had some. */
  readonly importIds: readonly string[]
}

type Counts = Pick<PlacesKept, StoreTable>

const countsOf = (read: PlacesRead): Counts => ({
  rooms: read.rooms.length,
  boxes: read.boxes.length,
  loggers: read.loggers.length,
  rounds: read.rounds.length,
  diary: read.diary.length,
})

function stopsOf({ heard }: PlacesRead, { knowledge, today }: World): readonly Stop[] {
  return [...Map.groupBy(heard, ({ row }) => row)].flatMap(([row, hazards]) => {
    const ids = hazards.map(({ hazard }) => hazard)
    return stopsHeard(`row ${row}`, ids, knowledge, today()).map((caution) => ({ find: null, row, caution }))
  })
}

/** Rows to mend, put down as an import of their own, so that they are shown and handed back like those of finds. */
async function putDown(
  writes: Writes,
  { projectId, bytes, fileName = 'store table' }: PlacesToKeep,
  kind: PlacesRead['kind'],
  lost: readonly Unreadable[],
): Promise<readonly string[]> {
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  const ids: string[] = []
  for (const { sheet, headings, rows } of lost) {
    const name = sheet === null ? fileName : `${fileName} (${sheet})`
    const id = await writes.imports.begin({ projectId, fileName: name, sha256, kind, headings })
    await writes.imports.reject(id, rows)
    await writes.imports.finish(id, {
      recordsRead: 0,
      recordsAdded: 0,
      recordsAlreadyThere: 0,
      rowsRejected: rows.length,
      problems: rows.reduce((sum, row) => sum + row.problems.length, 0),
    })
    ids.push(id)
  }
  return ids
}

/** Everything the file tells into the project, what is named by others before them. */
async function keepAll(writes: Writes, world: World, file: PlacesToKeep, read: PlacesRead) {
  const { projectId } = file
  await roomRows(writes, projectId, read.rooms)
  await boxRows(writes, projectId, read.boxes)
  const overlaps = await loggerRows(writes, projectId, read.loggers)
  const gel = await gelRows(writes, projectId, read.boxes)
  const told: readonly EntriesRead[] = [
    await roundRows(writes, projectId, read.rounds),
    await diaryRows(writes, projectId, read.diary, read.kind),
  ]
  const added = await writes.diary.add(projectId, [...gel, ...told.flatMap(({ entries }) => entries)])
  const moved = await writes.finds.byIds([...new Set(told.flatMap(({ movedFinds }) => movedFinds))])
  await bringUpToDate(writes, world, moved)
  const lost = told.flatMap(({ unreadable }) => unreadable)
  return {
    entriesAdded: Math.max(0, added.length - gel.length),
    problems: [...overlaps, ...told.flatMap(({ problems }) => problems)],
    lost,
  }
}

/**
 * Tables of rooms, boxes, loggers, rounds or the diary into a project. Places that are known by name are changed in the
 * columns the file has, none is taken away; the same rounds and entries again add nothing.
 */
export async function keepPlaces(world: World, file: PlacesToKeep, by: Actor): Answer<PlacesKept> {
  const read = await readPlaces(file.bytes, world.knowledge.vocabulary.textWords)
  const counts = countsOf(read)
  const lostRows = (lost: readonly Unreadable[]) => lost.reduce((sum, { rows }) => sum + rows.length, 0)
  const report: PlacesKept = {
    ...counts,
    entriesAdded: 0,
    problems: read.problems,
    stops: stopsOf(read, world),
    unreadableRows: lostRows(read.unreadable),
    importIds: [],
  }
  const anything = Object.values(counts).some((count) => count > 0) || read.unreadable.length > 0
  if (!anything || file.dryRun === true) {
    return world.store.read(async (reads) =>
      (await reads.projects.byId(file.projectId))
        ? given(report)
        : refused(missing('project', file.projectId)),
    )
  }
  return world.store.write('keep-places', by, async (writes) => {
    if (!(await writes.projects.byId(file.projectId))) return refused(missing('project', file.projectId))
    const kept = await keepAll(writes, world, file, read)
    const lost = [...read.unreadable, ...kept.lost]
    const importIds = await putDown(writes, file, read.kind, lost)
    return given({
      ...report,
      entriesAdded: kept.entriesAdded,
      problems: inFileOrder([...read.problems, ...kept.problems]),
      unreadableRows: lostRows(lost),
      importIds,
    })
  })
}
