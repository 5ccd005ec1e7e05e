import type { Kysely } from 'kysely'
import type { IsoDate } from '../base/calendar.ts'
import type { ConditionRecord } from '../record/record.ts'
import type { KeptRecord } from '../services/kept.ts'
import type { Reads, Writes } from '../services/ports.ts'
import { add, slices, type Hand } from './hand.ts'
import { author, fromJson, kept, type AuthorColumns } from './kept-row.ts'
import type { ConditionRecordRow, Tables } from './tables.ts'

const keptRecord = (row: ConditionRecordRow & AuthorColumns): KeptRecord => ({
  ...kept(row),
  findId: row.find_id,
  recordedOn: row.recorded_on === '' ? null : (row.recorded_on as IsoDate),
  contentHash: row.content_hash,
  record: fromJson<ConditionRecord>(row.record),
  importId: row.import_id,
  by: author(row),
})

export function recordReads(db: Kysely<Tables>): Reads['records'] {
  const withAuthor = db
    .selectFrom('condition_record')
    .innerJoin('person', 'person.id', 'condition_record.person_id')
    .innerJoin('device', 'device.id', 'condition_record.device_id')
    .selectAll('condition_record')
    .select(['person.name as person_name', 'person.role as person_role', 'device.name as device_name'])
  return {
    async byId(id) {
      const row = await withAuthor.where('condition_record.id', '=', id).executeTakeFirst()
      return row ? keptRecord(row) : null
    },
    async ofFinds(findIds) {
      const rows: KeptRecord[] = []
      for (const slice of slices(findIds, 1000)) {
        const query = withAuthor
          .where('condition_record.find_id', 'in', [...slice])
          .orderBy('condition_record.recorded_on')
          .orderBy('condition_record.created_at')
          .orderBy('condition_record.id')
        rows.push(...(await query.execute()).map(keptRecord))
      }
      return rows
    },
    async hashesOf(findIds) {
      const rows: { findId: string; contentHash: string }[] = []
      for (const slice of slices(findIds, 1000)) {
        const query = db
          .selectFrom('condition_record')
          .select(['find_id', 'content_hash'])
          .where('find_id', 'in', [...slice])
        for (const row of await query.execute())
          rows.push({ findId: row.find_id, contentHash: row.content_hash })
      }
      return rows
    },
  }
}

export function recordWrites(hand: Hand): Writes['records'] {
  return {
    ...recordReads(hand.db),
    async add(records) {
      const rows = records.map(({ findId, record, contentHash, importId }) => ({
        find_id: findId,
        recorded_on: record.recorded_on ?? '',
        content_hash: contentHash,
        record: JSON.stringify(record),
        import_id: importId,
      }))
      return (await add(hand, 'condition_record', rows, ['find_id', 'content_hash'])).map(({ id }) => id)
    },
  }
}
