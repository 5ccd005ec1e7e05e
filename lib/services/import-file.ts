import { createHash } from 'node:crypto'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import type { ConditionRecord } from '../record/record.ts'
import type { FileRead } from '../tables/read-file.ts'
import { contentHash } from './content-hash.ts'
import { enterRecords } from './enter-records.ts'
import type { Actor } from './kept.ts'
import type { ImportCounts, Reads, World, Writes } from './ports.ts'
import { hasProblems, readRecordsFile } from './read-records.ts'
import { stopsOf, type Stop } from './stops.ts'

export interface FileToImport {
  readonly projectId: string
  readonly fileName: string
  readonly bytes: Uint8Array
  /** Only tells what would happen; nothing is kept. */
  readonly dryRun: boolean
  /** Records dealt with so far, of how many. May begin again from nought when another writer was in the way. */
  readonly onProgress?: (done: number, total: number) => void
}

export interface ImportReport {
  readonly fileName: string
  readonly dryRun: boolean
  /** Null for a dry run, and for a file of which nothing could be read. */
  readonly importId: string | null
  readonly read: FileRead
  readonly stops: readonly Stop[]
  readonly recordsAdded: number
  /** Word for word there before. */
  readonly recordsAlreadyThere: number
  readonly findsNew: number
  readonly hasProblems: boolean
}

const recordsAtOnce = 200

function inSlices(records: readonly ConditionRecord[]): readonly (readonly ConditionRecord[])[] {
  const count = Math.ceil(records.length / recordsAtOnce)
  return Array.from({ length: count }, (_, at) => records.slice(at * recordsAtOnce, (at + 1) * recordsAtOnce))
}

type Counted = Pick<ImportReport, 'recordsAdded' | 'recordsAlreadyThere' | 'findsNew'>

/** What an import would add: the same questions as adding asks, without adding. */
async function wouldAdd(reads: Reads, projectId: string, records: readonly ConditionRecord[]): Promise<Counted> {
  const sites = new Map((await reads.sites.ofProject(projectId)).map((site) => [site.code, site.id]))
  const finds = new Map<string, string>()
  const place = (record: ConditionRecord) => `${record.site_code ?? ''}\n${record.find_number}`
  for (const [code, group] of Map.groupBy(records, ({ site_code }) => site_code ?? '')) {
    const siteId = sites.get(code)
    if (siteId === undefined) continue
    for (const find of await reads.finds.byNumbers(siteId, group.map(({ find_number }) => find_number))) {
      finds.set(`${code}\n${find.findNumber}`, find.id)
    }
  }
  const there = new Set((await reads.records.hashesOf([...finds.values()])).map(({ findId, contentHash: hash }) => `${findId} ${hash}`))
  const added = new Set<string>()
  const newFinds = new Set<string>()
  for (const record of records) {
    const find = finds.get(place(record))
    const key = `${find ?? place(record)} ${contentHash(record)}`
    if (there.has(key)) continue
    added.add(key)
    if (find === undefined) newFinds.add(place(record))
  }
  return { recordsAdded: added.size, recordsAlreadyThere: records.length - added.size, findsNew: newFinds.size }
}

async function addAll(writes: Writes, world: World, file: FileToImport, read: FileRead, importId: string): Promise<Counted> {
  const { records } = read
  const { findsNew } = await wouldAdd(writes, file.projectId, records)
  let recordsAdded = 0
  let done = 0
  file.onProgress?.(0, records.length)
  for (const slice of inSlices(records)) {
    recordsAdded += (await enterRecords(writes, world, file.projectId, slice, importId)).added.length
    done += slice.length
    file.onProgress?.(done, records.length)
  }
  return { recordsAdded, recordsAlreadyThere: records.length - recordsAdded, findsNew }
}

/**
 * A file of records into a project: all that could be read is kept or nothing, what could not be read is kept as rows to
 * mend. The same file again adds nothing.
 */
export async function importFile(world: World, file: FileToImport, by: Actor): Answer<ImportReport> {
  const read = await readRecordsFile(world.knowledge, file.bytes)
  const report = {
    fileName: file.fileName,
    dryRun: file.dryRun,
    importId: null,
    read,
    stops: [...stopsOf(read, world.knowledge, world.today())],
    hasProblems: hasProblems(read),
  }
  const nothing = read.records.length === 0 && read.unreadableRows.length === 0
  if (file.dryRun || nothing) {
    return world.store.read(async (reads) => {
      if (!(await reads.projects.byId(file.projectId))) return refused(missing('project', file.projectId))
      return given({ ...report, ...(await wouldAdd(reads, file.projectId, read.records)) })
    })
  }
  return world.store.write('import-file', by, async (writes) => {
    if (!(await writes.projects.byId(file.projectId))) return refused(missing('project', file.projectId))
    const sha256 = createHash('sha256').update(file.bytes).digest('hex')
    const { projectId, fileName } = file
    const importId = await writes.imports.begin({ projectId, fileName, sha256, kind: read.kind, headings: read.headings })
    const counted = await addAll(writes, world, file, read, importId)
    await writes.imports.reject(importId, read.unreadableRows)
    const counts: ImportCounts = {
      recordsRead: read.records.length,
      recordsAdded: counted.recordsAdded,
      recordsAlreadyThere: counted.recordsAlreadyThere,
      rowsRejected: read.unreadableRows.length,
      problems: read.problems.filter(({ severity }) => severity !== 'note').length,
    }
    await writes.imports.finish(importId, counts)
    return given({ ...report, ...counted, importId })
  })
}
