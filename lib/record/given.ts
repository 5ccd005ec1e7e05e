import type { FieldName } from './fields.ts'

/** One cell as it came, under the field that its heading was matched to. */
export interface GivenCell {
  /** The heading or JSON key as it stands in the file. */
  readonly column: string
  /** The text of a cell; a list where the source has lists of its own. */
  readonly value: string | readonly string[]
  /** The cell holds a live spreadsheet formula instead of a value. */
  readonly formula?: true
}

/** A row of a table, or a component of a JSON object, before anything in it is understood. */
export interface GivenRow {
  /** As a spreadsheet shows it, from 1; for JSON the how-manieth object. */
  readonly row: number
  readonly line?: number
  /** Cells that hold something; an empty cell is absent. */
  readonly cells: ReadonlyMap<FieldName, GivenCell>
  /** What stands under headings that are no field, by heading: of the find, and of this component. */
  readonly findExtra: Readonly<Record<string, unknown>>
  readonly partExtra: Readonly<Record<string, unknown>>
}
