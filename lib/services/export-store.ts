import { given, refused, type Outcome } from '../base/outcome.ts'
import { missing, type Answer, type Trouble } from '../base/trouble.ts'
import { rowOfEntry } from '../record/diary-rows.ts'
import { rowsOfLogger } from '../record/logger-register.ts'
import { storeTables, type StoreTable } from '../record/store-tables.ts'
import {
  storeJsonLines,
  storeTableCsv,
  storeWorkbook,
  type StoreGiven,
  type StoreRows,
} from '../tables/write-places.ts'
import type { DiaryEntry } from './diary.ts'
import type { ExportFormat } from './export-file.ts'
import type { Reads, World } from './ports.ts'

export interface StoreToExport {
  readonly projectId: string
  /** Left out: all of them, as one workbook or as objects; CSV holds one table. */
  readonly table?: StoreTable
  readonly format: ExportFormat
}

export interface StoreExported {
  readonly fileName: string
  readonly content: string | Uint8Array
}

const roundRow = ({ box, on, given: told }: DiaryEntry<'round'>): StoreGiven => ({
  box: box ?? '',
  on,
  ...told,
})

async function diaryRows(reads: Reads, projectId: string): Promise<readonly StoreGiven[]> {
  const entries = await reads.diary.list({ projectId })
  const told = entries.filter((entry) => entry.kind !== 'round')
  const finds = new Map(
    (await reads.finds.byIds([...new Set(told.flatMap(({ findId }) => findId ?? []))])).map((find) => [
      find.id,
      find,
    ]),
  )
  return told.map(({ kind, on, atMs, box, room, findId, given: entry }) => {
    const find = findId === null ? undefined : finds.get(findId)
    const named = find ? { site_code: find.siteCode, find_number: find.findNumber } : null
    return rowOfEntry({ kind, on, atMs, box, room, find: named, given: entry })
  })
}

async function rowsOf(reads: Reads, projectId: string, table: StoreTable): Promise<readonly StoreGiven[]> {
  switch (table) {
    case 'rooms':
      return (await reads.rooms.ofProject(projectId)).map(({ given: room }) => room)
    case 'boxes':
      return (await reads.boxes.ofProject(projectId)).map(({ given: box }) => box)
    case 'loggers':
      return (await reads.loggers.ofProject(projectId)).flatMap(({ given: logger }) => rowsOfLogger(logger))
    case 'rounds': {
      const rounds = await reads.diary.list({ projectId, kinds: ['round'] })
      return (rounds as readonly DiaryEntry<'round'>[]).map(roundRow)
    }
    case 'diary':
      return diaryRows(reads, projectId)
  }
}

/** The store's tables as a file that comes back as the same store: rooms, boxes, loggers, rounds and the diary. */
export function exportStore(
  { store }: World,
  { projectId, table, format }: StoreToExport,
): Answer<StoreExported> {
  return store.read(async (reads): Promise<Outcome<StoreExported, Trouble>> => {
    const project = await reads.projects.byId(projectId)
    if (!project) return refused(missing('project', projectId))
    if (format === 'csv' && table === undefined)
      return refused({ kind: 'not-accepted', field: 'table', because: 'empty' })
    const wanted = table === undefined ? storeTables : [table]
    const rows = new Map<StoreTable, readonly StoreGiven[]>()
    for (const one of wanted) rows.set(one, await rowsOf(reads, projectId, one))
    const all = Object.fromEntries(
      storeTables.map((one) => [one, rows.get(one) ?? []]),
    ) as unknown as StoreRows
    const name = `${project.name} - ${table ?? 'store'}`
    switch (format) {
      case 'csv':
        return given({ fileName: `${name}.csv`, content: storeTableCsv(table!, all[table!]) })
      case 'xlsx':
        return given({ fileName: `${name}.xlsx`, content: await storeWorkbook(all) })
      case 'json':
        return given({
          fileName: `${name}.jsonl`,
          content: storeTables.map((one) => storeJsonLines(all[one])).join(''),
        })
    }
  })
}
