/** A table as it stands in the file: texts under headings, nothing understood yet. */
export interface TableRow {
  /** As a spreadsheet shows it, from 1. */
  readonly row: number
  readonly cells: readonly string[]
  /** Places of cells that hold a live formula. */
  readonly formulas?: ReadonlySet<number>
}

export interface Table {
  readonly headings: readonly string[]
  /** Row of the headings; 0 where there is none. */
  readonly headingRow: number
  readonly rows: readonly TableRow[]
}
