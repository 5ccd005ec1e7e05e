import { nameKey } from '../record/likeness.ts'
import { problem, type Problem } from '../record/problem.ts'

export interface StoreCell {
  /** The heading or key as it stands in the file. */
  readonly column: string
  readonly text: string
  readonly formula: boolean
}

/** A row of a store's table before anything in it is understood. */
export interface StoreRow {
  readonly row: number
  readonly line?: number
  readonly sheet?: string
  /** Cells that hold something, by heading: `Gel kg` and `gel_kg` are one. */
  readonly cells: ReadonlyMap<string, StoreCell>
  /** Every heading it has, filled or not. */
  readonly keys: ReadonlySet<string>
  /** As it came, to be handed back. */
  readonly raw: readonly string[]
}

/** Rows under one set of headings. */
export interface StoreSheet {
  readonly name: string | null
  /** As they stand in the file; for JSON the one heading `json`. */
  readonly headings: readonly string[]
  readonly headingRow: number | null
  readonly keys: ReadonlySet<string>
  readonly rows: readonly StoreRow[]
}

export interface StoreFile {
  readonly kind: 'csv' | 'xlsx' | 'json' | 'none'
  readonly sheets: readonly StoreSheet[]
  /** Pieces that are no row at all. */
  readonly broken: readonly { readonly row: number; readonly line: number; readonly text: string }[]
  readonly problems: readonly Problem[]
}

export const nothing: StoreFile = { kind: 'none', sheets: [], broken: [], problems: [] }

export const failed = (
  code: Problem['code'],
  found: string,
  kind: StoreFile['kind'] = 'none',
): StoreFile => ({
  ...nothing,
  kind,
  problems: [problem(code, { row: null }, found)],
})

export const headingKey = (heading: string): string => nameKey(heading).replaceAll('-', '_')
