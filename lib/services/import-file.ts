import { createHash } from 'node:crypto'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import type { Problem } from '../record/problem.ts'
import type { UnreadableRow } from '../tables/file-read.ts'
import { enterRecords } from './enter-records.ts'
import { newRecordCount } from './import-count.ts'
import type { Actor } from './kept.ts'
import type { ImportCounts, Reads, World, Writes } from './ports.ts'
import {
  isProblem,
  openerOf,
  recordSource,
  type Content,
  type FileHead,
  type RecordSource,
} from './record-source.ts'
import { hazardsByRow, stopsOfBatch, type Stop } from './stops.ts'

export interface FileToImport {
  /** Null: a project that is not begun yet, of which only a dry run can be made. */
  readonly projectId: string | null
  readonly fileName: string
  readonly bytes: Content
  /** Only tells what would happen; nothing is kept. */
  readonly dryRun: boolean
  /** Records dealt with, of how many. May begin again from nought when another writer was in the way. */
  readonly onProgress?: (done: number, total: number) => void | Promise<void>
}

export interface ImportReport {
  readonly fileName: string
  readonly dryRun: boolean
  /** Null for a dry run, and for a file of which nothing could be read. */
  readonly importId: string | null
  readonly file: FileHead
  readonly stops: readonly Stop[]
  readonly problems: readonly Problem[]
  readonly unreadableRows: readonly UnreadableRow[]
  readonly recordsRead: number
  readonly recordsAdded: number
  /** Word for word there before. */
  readonly recordsAlreadyThere: number
  readonly findsNew: number
}

type Found = Pick<ImportReport, 'stops' | 'problems' | 'unreadableRows' | 'recordsRead'>

/** Everything a file says beside its records: to be told before anything is kept. */
async function lookThrough(source: RecordSource, world: World): Promise<Found> {
  const hazards = hazardsByRow(source)
  const stops: Stop[] = []
  const problems: Problem[] = [...source.head.problems]
  const unreadableRows: UnreadableRow[] = []
  let recordsRead = 0
  for await (const batch of source.batches()) {
    stops.push(...(await stopsOfBatch(batch, hazards, world.knowledge, world.today())))
    problems.push(...batch.problems)
    unreadableRows.push(...batch.unreadableRows)
    recordsRead += batch.records.length
  }
  return { stops, problems, unreadableRows, recordsRead }
}

type Counted = Pick<ImportReport, 'recordsAdded' | 'recordsAlreadyThere' | 'findsNew'>

async function wouldAdd(
  reads: Reads,
  { projectId, onProgress }: FileToImport,
  source: RecordSource,
  total: number,
): Promise<Counted> {
  const count = newRecordCount(reads, projectId)
  let done = 0
  for await (const { records } of source.batches()) {
    await count.see(records)
    await onProgress?.((done += records.length), total)
  }
  return count.sofar()
}

async function addAll(
  writes: Writes,
  world: World,
  { onProgress }: FileToImport,
  source: RecordSource,
  {
    projectId,
    importId,
    total,
  }: { readonly projectId: string; readonly importId: string; readonly total: number },
): Promise<Counted> {
  const count = newRecordCount(writes, projectId)
  let done = 0
  for await (const { records, unreadableRows } of source.batches()) {
    await count.see(records)
    await enterRecords(writes, world, projectId, records, importId)
    await writes.imports.reject(importId, unreadableRows)
    await onProgress?.((done += records.length), total)
  }
  return count.sofar()
}

async function hashOf(content: Content): Promise<string> {
  const hash = createHash('sha256')
  for await (const piece of openerOf(content)()) hash.update(piece)
  return hash.digest('hex')
}

/**
 * A file of records into a project: all that could be read is kept or nothing, what could not be read is kept as rows to
 * mend. The same file again adds nothing.
 */
export async function importFile(world: World, file: FileToImport, by: Actor): Answer<ImportReport> {
  const source = await recordSource(world.knowledge, file.bytes)
  const found = await lookThrough(source, world)
  const { projectId, fileName, dryRun } = file
  const report = { ...found, fileName, dryRun, importId: null, file: source.head }
  if (dryRun || found.recordsRead + found.unreadableRows.length === 0) {
    return world.store.read(async (reads) => {
      if (projectId !== null && !(await reads.projects.byId(projectId)))
        return refused(missing('project', projectId))
      return given({ ...report, ...(await wouldAdd(reads, file, source, found.recordsRead)) })
    })
  }
  const sha256 = await hashOf(file.bytes)
  return world.store.write('import-file', by, async (writes) => {
    if (projectId === null || !(await writes.projects.byId(projectId)))
      return refused(missing('project', projectId ?? ''))
    const { kind, headings } = source.head
    const importId = await writes.imports.begin({ projectId, fileName, sha256, kind, headings })
    const counted = await addAll(writes, world, file, source, {
      projectId,
      importId,
      total: found.recordsRead,
    })
    const counts: ImportCounts = {
      recordsRead: found.recordsRead,
      recordsAdded: counted.recordsAdded,
      recordsAlreadyThere: counted.recordsAlreadyThere,
      rowsRejected: found.unreadableRows.length,
      problems: found.problems.filter(isProblem).length,
    }
    await writes.imports.finish(importId, counts)
    return given({ ...report, ...counted, importId })
  })
}
