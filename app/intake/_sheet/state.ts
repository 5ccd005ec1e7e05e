import type { FieldName } from '../../../lib/record/fields.ts'
import type { Spot } from './move.ts'
import { emptySheet, write, type Rows, type Sheet } from './sheet.ts'

/** Everything the Intake grid is at one moment; no clock, no document, so that keys can be tested as plain steps. */
export interface GridState {
  readonly sheet: Sheet
  readonly columns: readonly FieldName[]
  readonly spot: Spot
  /** The other corner of a selected block; null where one cell is selected. */
  readonly corner: Spot | null
  /** The column a run of Tab began in: Enter comes back to it. */
  readonly runFrom: number
  readonly editing: Editing | null
}

export interface Editing {
  readonly text: string
  /** Begun by typing, which replaces: arrow keys then end it and go on, as a spreadsheet does. */
  readonly typed: boolean
}

export function gridState(rows: Rows, columns: readonly FieldName[]): GridState {
  return {
    sheet: emptySheet(rows),
    columns,
    spot: { row: 0, column: 0 },
    corner: null,
    runFrom: 0,
    editing: null,
  }
}

export function fieldAt(state: GridState, column = state.spot.column): FieldName {
  return state.columns[column] ?? 'find_number'
}

export function textAt(state: GridState, spot = state.spot): string {
  return state.sheet.rows[spot.row]?.cells[fieldAt(state, spot.column)] ?? ''
}

/** The rows as they would stand if typing stopped now: what is planned while one types. */
export function liveRows(state: GridState): Rows {
  const { editing, sheet, spot } = state
  return editing === null
    ? sheet.rows
    : write(sheet.rows, [{ row: spot.row, field: fieldAt(state), text: editing.text.trim() }])
}

export interface Block {
  readonly top: number
  readonly bottom: number
  readonly left: number
  readonly right: number
}

export function selected({ spot, corner }: GridState): Block {
  const other = corner ?? spot
  return {
    top: Math.min(spot.row, other.row),
    bottom: Math.max(spot.row, other.row),
    left: Math.min(spot.column, other.column),
    right: Math.max(spot.column, other.column),
  }
}

export function spotsOf({ top, bottom, left, right }: Block): readonly Spot[] {
  const spots: Spot[] = []
  for (let row = top; row <= bottom; row += 1) {
    for (let column = left; column <= right; column += 1) spots.push({ row, column })
  }
  return spots
}
