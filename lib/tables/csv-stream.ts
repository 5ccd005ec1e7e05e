import { gathering } from '../record/gather.ts'
import type { Names } from '../record/names.ts'
import type { Problem } from '../record/problem.ts'
import { withoutNumber } from '../record/read-record.ts'
import { readRow, type Reading } from '../record/read-row.ts'
import type { ConditionRecord } from '../record/record.ts'
import { headingRow, type CsvSurvey } from './csv-survey.ts'
import { filledRows, type OpenFile } from './csv-walk.ts'
import type { UnreadableRow } from './file-read.ts'
import { givenRow } from './given-rows.ts'

/** What a stretch of rows gave, in file order. */
export interface CsvBatch {
  readonly records: readonly ConditionRecord[]
  readonly problems: readonly Problem[]
  readonly unreadableRows: readonly UnreadableRow[]
}

const rowsAtOnce = 500

/** The second reading: records as they are complete, in the order in which they begin, holding only finds still open. */
export async function* streamCsv(
  open: OpenFile,
  surveyed: CsvSurvey,
  names: Names,
): AsyncGenerator<CsvBatch> {
  const reading: Reading = { names, words: null, dayOrders: surveyed.dayOrders }
  const gather = gathering(surveyed.rowsOfFind)
  let batch = {
    records: [] as ConditionRecord[],
    problems: [] as Problem[],
    unreadableRows: [] as UnreadableRow[],
  }
  const lost = (row: number, cells: readonly string[], problems: readonly Problem[]) =>
    batch.unreadableRows.push({ row, line: null, cells, problems })
  // Only rows of finds that are still open: those whose material may yet turn out to be missing.
  const held = new Map<number, readonly string[]>()
  let rows = 0
  for await (const row of filledRows(open, surveyed.encoding, surveyed.dialect)) {
    if (row.row <= headingRow(surveyed.dialect)) continue
    const read = readRow(givenRow(row, surveyed.columns.columns), reading)
    batch.problems.push(...read.problems)
    if (read.findNumber === null) {
      const missing = withoutNumber(read)
      batch.problems.push(missing)
      lost(row.row, row.cells, [missing, ...read.problems])
    } else if (read.part === null) held.set(row.row, row.cells)
    for (const one of gather.add(read)) {
      batch.problems.push(...one.problems)
      if (one.record) batch.records.push(one.record)
      for (const member of one.rows) {
        const cells = held.get(member.row)
        if (one.record === null && cells)
          lost(member.row, cells, [
            ...one.problems.filter((each) => each.row === member.row),
            ...member.problems,
          ])
        held.delete(member.row)
      }
    }
    if (++rows % rowsAtOnce === 0) {
      yield batch
      batch = { records: [], problems: [], unreadableRows: [] }
    }
  }
  yield batch
}
