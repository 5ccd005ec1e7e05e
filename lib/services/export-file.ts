import { given, type Outcome } from '../base/outcome.ts'
import type { Trouble } from '../base/trouble.ts'
import { namesOf } from '../knowledge/names.ts'
import type { ConditionRecord } from '../record/record.ts'
import { recordsToCsv, recordsToJsonLines, recordsToXlsx } from '../tables/write-file.ts'
import { exportRecords } from './export-records.ts'
import type { World } from './ports.ts'

export const exportFormats = ['csv', 'xlsx', 'json'] as const
export type ExportFormat = (typeof exportFormats)[number]

type Piece = Outcome<string | Uint8Array, Trouble>

/**
 * All records of a project as a file that comes back as the same records. JSON leaves piece by piece; a table needs all its
 * headings first, so CSV and XLSX are put together before they leave.
 */
export async function* exportFile(
  world: World,
  { projectId, format }: { readonly projectId: string; readonly format: ExportFormat },
): AsyncGenerator<Piece> {
  const names = namesOf(world.knowledge.vocabulary).fields
  const all: ConditionRecord[] = []
  for await (const slice of exportRecords(world, projectId)) {
    if (!slice.ok) {
      yield slice
      return
    }
    const records = slice.value.flatMap((find) => find.records.map(({ record }) => record))
    if (format === 'json') yield given(recordsToJsonLines(records, names))
    else all.push(...records)
  }
  if (format === 'csv') yield given(recordsToCsv(all, names))
  if (format === 'xlsx') yield given(await recordsToXlsx(all, names))
}
