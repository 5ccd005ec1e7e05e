import { problem, type Problem } from '../record/problem.ts'
import type { RecordsRead } from '../record/read-record.ts'
import type { HazardSeen } from '../record/read-row.ts'
import type { ConditionRecord } from '../record/record.ts'
import type { Delimiter } from './csv-dialect.ts'
import type { Decoded, Encoding } from './decode.ts'

/** A row that gave no record, as it stood, to be saved and mended. */
export interface UnreadableRow {
  readonly row: number
  readonly line: number | null
  readonly cells: readonly string[]
  readonly problems: readonly Problem[]
}

export interface FileRead {
  readonly kind: 'csv' | 'xlsx' | 'json' | 'none'
  readonly encoding: Encoding | null
  readonly delimiter: Delimiter | null
  /** Name of the sheet that was read. */
  readonly sheet: string | null
  /** As they stand in the file; for JSON the one heading `json`. */
  readonly headings: readonly string[]
  readonly unknownColumns: readonly string[]
  readonly records: readonly ConditionRecord[]
  readonly problems: readonly Problem[]
  readonly unreadableRows: readonly UnreadableRow[]
  readonly loudHazards: readonly HazardSeen[]
}

export const nothing: FileRead = {
  kind: 'none',
  encoding: null,
  delimiter: null,
  sheet: null,
  headings: [],
  unknownColumns: [],
  records: [],
  problems: [],
  unreadableRows: [],
  loudHazards: [],
}

export function decodingProblems({ encoding, undecodable }: Decoded): readonly Problem[] {
  const old = encoding === 'windows-1252' ? [problem('read-in-old-encoding', { row: null }, encoding)] : []
  return undecodable > 0 ? [...old, problem('undecodable-text', { row: null }, String(undecodable))] : old
}

/** Rows that gave nothing, each with why. */
export function unreadableOf(
  read: RecordsRead,
  problems: readonly Problem[],
  cellsOf: ReadonlyMap<number, readonly string[]>,
): readonly UnreadableRow[] {
  const byRow = Map.groupBy(problems, (one) => one.row)
  return [...read.unreadable]
    .toSorted((a, b) => a - b)
    .map((row) => {
      const own = byRow.get(row) ?? []
      return { row, line: own[0]?.line ?? null, cells: cellsOf.get(row) ?? [], problems: own }
    })
}
