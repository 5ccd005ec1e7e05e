import { fieldOfHeading } from '../record/heading.ts'
import type { FieldNames } from '../record/names.ts'
import type { ConditionRecord } from '../record/record.ts'
import { headingsOf, objectsOf, rowsOf, type IsField, type WrittenRow } from '../record/write-record.ts'
import { csvText } from './csv-write.ts'
import { writeWorkbook } from './xlsx-write.ts'

const isField =
  (names: FieldNames): IsField =>
  (heading) =>
    fieldOfHeading(heading, names) !== null

/**
 * Records of one find are told apart by their day. One that has none beside others that have says so, or it would be read
 * as further rows of its neighbour.
 */
function toldApart(records: readonly ConditionRecord[]): readonly ConditionRecord[] {
  const keyOf = (record: ConditionRecord) => JSON.stringify([record.site_code ?? '', record.find_number])
  const dated = new Set(records.filter((record) => dayOf(record) !== undefined).map(keyOf))
  return records.map((record) =>
    dayOf(record) === undefined && dated.has(keyOf(record))
      ? { ...record, unread: { ...record.unread, recorded_on: 'unknown' } }
      : record,
  )
}

const dayOf = (record: ConditionRecord) => record.recorded_on ?? record.unread?.['recorded_on']

/** Records as a table: headings first, then one row a component. */
export function recordTable(
  records: readonly ConditionRecord[],
  names: FieldNames,
): readonly (readonly string[])[] {
  const rows: readonly WrittenRow[] = toldApart(records).flatMap((record) => rowsOf(record, isField(names)))
  const headings = headingsOf(rows)
  return [headings, ...rows.map((row) => headings.map((heading) => row.get(heading) ?? ''))]
}

/** What leaves as a file comes back as the same records, what could not be read and kept columns too. */
export function recordsToCsv(records: readonly ConditionRecord[], names: FieldNames): string {
  return csvText(recordTable(records, names))
}

export function recordsToXlsx(records: readonly ConditionRecord[], names: FieldNames): Promise<Uint8Array> {
  return writeWorkbook('finds', recordTable(records, names))
}

/** One object a line, so that a store of any size can be written and read piece by piece. */
export function recordsToJsonLines(records: readonly ConditionRecord[], names: FieldNames): string {
  const objects = toldApart(records).flatMap((record) => objectsOf(record, isField(names)))
  return objects.map((object) => `${JSON.stringify(object)}\n`).join('')
}
