import type { Kysely } from 'kysely'
import type { ImportBatch } from '../services/kept.ts'
import type { Reads, UnreadableRow, Writes } from '../services/ports.ts'
import { add, noteChanged, type Hand } from './hand.ts'
import { author, fromJson, kept, type AuthorColumns } from './kept-row.ts'
import type { ImportBatchRow, Tables } from './tables.ts'

const batch = (row: ImportBatchRow & AuthorColumns): ImportBatch => ({
  ...kept(row),
  projectId: row.project_id,
  fileName: row.file_name,
  sha256: row.sha256,
  kind: row.kind as ImportBatch['kind'],
  headings: fromJson<readonly string[]>(row.headings),
  recordsRead: row.records_read,
  recordsAdded: row.records_added,
  recordsAlreadyThere: row.records_already_there,
  rowsRejected: row.rows_rejected,
  problems: row.problems,
  by: author(row),
})

export function importReads(db: Kysely<Tables>): Reads['imports'] {
  const withAuthor = db
    .selectFrom('import_batch')
    .innerJoin('person', 'person.id', 'import_batch.person_id')
    .innerJoin('device', 'device.id', 'import_batch.device_id')
    .selectAll('import_batch')
    .select(['person.name as person_name', 'person.role as person_role', 'device.name as device_name'])
  return {
    async ofProject(projectId) {
      const newestFirst = withAuthor
        .where('import_batch.project_id', '=', projectId)
        .orderBy('import_batch.created_at', 'desc')
        .orderBy('import_batch.id', 'desc')
      return (await newestFirst.execute()).map(batch)
    },
    async byId(id) {
      const row = await withAuthor.where('import_batch.id', '=', id).executeTakeFirst()
      return row ? batch(row) : null
    },
    async rejected(importId, afterRow, limit) {
      const rows = await db
        .selectFrom('rejected_row')
        .select(['row_number', 'line', 'cells', 'problems'])
        .where('import_id', '=', importId)
        .where('row_number', '>', afterRow)
        .orderBy('row_number')
        .limit(limit)
        .execute()
      return rows.map((row): UnreadableRow => ({
        row: row.row_number,
        line: row.line,
        cells: fromJson<UnreadableRow['cells']>(row.cells),
        problems: fromJson<UnreadableRow['problems']>(row.problems),
      }))
    },
  }
}

export function importWrites(hand: Hand): Writes['imports'] {
  const nothing = {
    records_read: 0,
    records_added: 0,
    records_already_there: 0,
    rows_rejected: 0,
    problems: 0,
  }
  return {
    ...importReads(hand.db),
    async begin({ projectId, fileName, sha256, kind, headings }) {
      const file = {
        project_id: projectId,
        file_name: fileName,
        sha256,
        kind,
        headings: JSON.stringify(headings),
      }
      const [row] = await add(hand, 'import_batch', [{ ...file, ...nothing }])
      return row!.id
    },
    async reject(importId, rows) {
      const rejected = rows.map(({ row, line, cells, problems }) => ({
        import_id: importId,
        row_number: row,
        line,
        cells: JSON.stringify(cells),
        problems: JSON.stringify(problems),
      }))
      await add(hand, 'rejected_row', rejected)
    },
    async finish(importId, counts) {
      await hand.db
        .updateTable('import_batch')
        .set({
          records_read: counts.recordsRead,
          records_added: counts.recordsAdded,
          records_already_there: counts.recordsAlreadyThere,
          rows_rejected: counts.rowsRejected,
          problems: counts.problems,
        })
        .where('id', '=', importId)
        .execute()
      noteChanged(hand, 'import_batch', importId)
    },
  }
}
