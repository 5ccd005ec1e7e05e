import type { Assembled } from './assemble.ts'
import { fields, type FieldName } from './fields.ts'
import { gathering } from './gather.ts'
import type { GivenRow } from './given.ts'
import type { Names } from './names.ts'
import { inFileOrder, problem, type Problem } from './problem.ts'
import { dayOrderOf, type DayOrder } from './read-date.ts'
import { readRow, type HazardSeen, type Reading, type RowRead } from './read-row.ts'
import type { ConditionRecord } from './record.ts'
import { textsWithin } from './free-text.ts'
import type { TextWord } from './text-words.ts'

export interface RecordsRead {
  /** In the order in which they begin in the file. */
  readonly records: readonly ConditionRecord[]
  /** All of them, by place in the file. */
  readonly problems: readonly Problem[]
  /** Rows that gave no record and no part of one. */
  readonly unreadable: ReadonlySet<number>
  /** Every hazard named in any row, readable or not. */
  readonly loudHazards: readonly HazardSeen[]
}

export const dateFields = (Object.keys(fields) as FieldName[]).filter((name) => fields[name].kind === 'date')

/** Which of day and month comes first, decided over each whole column. */
export function dayOrders(rows: Iterable<GivenRow>): ReadonlyMap<FieldName, DayOrder> {
  const texts = new Map(dateFields.map((field) => [field, new Set<string>()]))
  for (const row of rows) {
    for (const [field, seen] of texts)
      for (const text of textsWithin(row.cells.get(field)?.value)) seen.add(text)
  }
  return new Map([...texts].map(([field, seen]) => [field, dayOrderOf(seen)]))
}

/** The find number itself is missing: nothing can be planned for the row, but what it says of danger is heard. */
export const withoutNumber = (row: RowRead): Problem =>
  problem(
    'no-find-number',
    { row: row.row, ...(row.line === undefined ? {} : { line: row.line }), field: 'find_number' },
    '',
  )

export function readRecords(
  rows: readonly GivenRow[],
  names: Names,
  words: readonly TextWord[],
): RecordsRead {
  const reading: Reading = { names, words, dayOrders: dayOrders(rows) }
  const read = rows.map((row) => readRow(row, reading))
  const counts = new Map<string, number>()
  for (const { findNumber } of read)
    if (findNumber !== null) counts.set(findNumber, (counts.get(findNumber) ?? 0) + 1)
  const gather = gathering(counts)
  const assembled: readonly Assembled[] = read.flatMap((row) => gather.add(row))
  const nameless = read.filter((row) => row.findNumber === null)
  const empty = assembled.filter((one) => one.record === null).flatMap((one) => one.rows)
  return {
    records: assembled.flatMap((one) => (one.record ? [one.record] : [])),
    problems: inFileOrder([
      ...nameless.map(withoutNumber),
      ...read.flatMap((row) => row.problems),
      ...assembled.flatMap((one) => one.problems),
    ]),
    unreadable: new Set([...nameless, ...empty].map((row) => row.row)),
    loudHazards: read.flatMap((row) => row.hazards),
  }
}
