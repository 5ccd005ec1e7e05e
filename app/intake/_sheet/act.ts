import type { FieldName } from '../../../lib/record/fields.ts'
import { move, tab, type Size, type Spot } from './move.ts'
import { nextPart, nextRow } from './next-row.ts'
import { pasteBlock, type Block as PastedBlock } from './paste.ts'
import {
  insert,
  isBlank,
  redo,
  remove,
  step,
  undo,
  write,
  type Edit,
  type Rows,
  type Sheet,
} from './sheet.ts'
import { fieldAt, gridState, liveRows, selected, spotsOf, textAt, type GridState } from './state.ts'

/** What a person does to the grid. New row ids come with the action, for a step must give the same twice. */
export type Act =
  | { readonly do: 'load'; readonly sheet: Sheet }
  | { readonly do: 'columns'; readonly columns: readonly FieldName[] }
  | {
      readonly do: 'move'
      readonly key: string
      readonly control: boolean
      readonly extend: boolean
      readonly page: number
    }
  | { readonly do: 'go'; readonly spot: Spot; readonly extend: boolean }
  | { readonly do: 'tab'; readonly back: boolean }
  | { readonly do: 'enter'; readonly newId: string }
  | { readonly do: 'edit'; readonly text: string; readonly typed: boolean }
  | { readonly do: 'type'; readonly text: string }
  | { readonly do: 'commit' }
  | { readonly do: 'cancel' }
  | { readonly do: 'clear' }
  | { readonly do: 'fill-down' }
  | { readonly do: 'paste'; readonly block: PastedBlock; readonly newIds: readonly string[] }
  | { readonly do: 'add-part'; readonly newId: string }
  | { readonly do: 'remove-rows' }
  | { readonly do: 'answer'; readonly rowId: string; readonly field: FieldName; readonly text: string }
  | { readonly do: 'bag-kept'; readonly rowIds: readonly string[]; readonly newId: string }
  | { readonly do: 'undo' }
  | { readonly do: 'redo' }

export function act(before: GridState, action: Act): GridState {
  // Whatever is done next, what is being typed is first kept, except where the action is about the typing itself.
  const typing =
    action.do === 'type' || action.do === 'cancel' || action.do === 'edit' || action.do === 'load'
  const state = typing ? before : commit(before)
  const { sheet } = state
  switch (action.do) {
    case 'load':
      return { ...gridState([], state.columns), sheet: action.sheet }
    case 'columns':
      return {
        ...state,
        columns: action.columns,
        spot: { ...state.spot, column: 0 },
        corner: null,
        runFrom: 0,
      }
    case 'move':
      return moved(
        state,
        move(state.spot, action.key, action.control, sizeOf(state, action.page)),
        action.extend,
      )
    case 'go':
      return moved(state, action.spot, action.extend)
    case 'tab': {
      const spot = tab(state.spot, action.back, sizeOf(state))
      return spot === null ? state : { ...state, spot, corner: null }
    }
    case 'enter':
      return entered(state, action.newId)
    case 'edit':
      return { ...state, corner: null, editing: { text: action.text, typed: action.typed } }
    case 'type':
      return state.editing === null ? state : { ...state, editing: { ...state.editing, text: action.text } }
    case 'commit':
      return state
    case 'cancel':
      return { ...state, editing: null, corner: null }
    case 'clear':
      return changed(
        state,
        write(
          sheet.rows,
          blockEdits(state, () => ''),
        ),
      )
    case 'fill-down':
      return filledDown(state)
    case 'paste':
      return changed(state, pasted(state, action.block, action.newIds))
    case 'add-part':
      return partAdded(state, action.newId)
    case 'remove-rows':
      return rowsRemoved(state)
    case 'answer':
      return answered(state, action.rowId, action.field, action.text)
    case 'bag-kept':
      return kept(state, action.rowIds, action.newId)
    case 'undo':
      return inside({ ...state, sheet: undo(sheet), corner: null })
    case 'redo':
      return inside({ ...state, sheet: redo(sheet), corner: null })
  }
}

function sizeOf({ sheet, columns }: GridState, page = 1): Size {
  return { rows: sheet.rows.length, columns: columns.length, page }
}

function commit(state: GridState): GridState {
  return state.editing === null ? state : { ...changed(state, liveRows(state)), editing: null }
}

function changed(state: GridState, rows: Rows): GridState {
  return { ...state, sheet: step(state.sheet, rows) }
}

/** The active cell back inside a sheet that has become shorter. */
function inside(state: GridState): GridState {
  const row = Math.min(state.spot.row, Math.max(state.sheet.rows.length - 1, 0))
  return row === state.spot.row ? state : { ...state, spot: { ...state.spot, row } }
}

function moved(state: GridState, spot: Spot | null, extend: boolean): GridState {
  if (spot === null) return state
  return { ...state, spot, corner: extend ? (state.corner ?? state.spot) : null, runFrom: spot.column }
}

/** Enter goes down; from the last row it begins the next one, with what the bag has in common. */
function entered(state: GridState, newId: string): GridState {
  const { rows } = state.sheet
  const row = state.spot.row + 1
  const spot = { row, column: state.runFrom }
  if (row < rows.length) return { ...state, spot, corner: null }
  return { ...changed(state, [...rows, nextRow(rows.at(-1), newId)]), spot, corner: null }
}

function partAdded(state: GridState, newId: string): GridState {
  const above = state.sheet.rows[state.spot.row]
  if (above === undefined) return state
  const at = state.spot.row + 1
  const part = state.columns.indexOf('material')
  const column = part < 0 ? state.spot.column : part
  return {
    ...changed(state, insert(state.sheet.rows, at, [nextPart(above, newId)])),
    spot: { row: at, column },
    corner: null,
    runFrom: column,
  }
}

function rowsRemoved(state: GridState): GridState {
  const { top, bottom } = selected(state)
  const gone = new Set(state.sheet.rows.slice(top, bottom + 1).map(({ id }) => id))
  return inside({ ...changed(state, remove(state.sheet.rows, gone)), corner: null })
}

function blockEdits(state: GridState, text: (spot: Spot) => string): readonly Edit[] {
  return spotsOf(selected(state)).map((spot) => ({
    row: spot.row,
    field: fieldAt(state, spot.column),
    text: text(spot),
  }))
}

/** A block takes its own first row; a single cell takes the one above it. */
function filledDown(state: GridState): GridState {
  const { top, bottom } = selected(state)
  const from = top === bottom ? top - 1 : top
  if (from < 0) return state
  return changed(
    state,
    write(
      state.sheet.rows,
      blockEdits(state, ({ column }) => textAt(state, { row: from, column })),
    ),
  )
}

function pasted(state: GridState, block: PastedBlock, newIds: readonly string[]): Rows {
  const ids = newIds.values()
  const { top, left } = selected(state)
  return pasteBlock(state.sheet.rows, { row: top, column: left }, block, () => ids.next().value ?? '')
}

/** Rows that are safely kept make room for the next bag, which begins where this one ended. */
function kept(state: GridState, rowIds: readonly string[], newId: string): GridState {
  const { rows } = state.sheet
  const left = remove(rows, new Set(rowIds))
  const last = rows.findLast(({ id }) => rowIds.includes(id))
  const begun = left.filter((row) => !isBlank(row))
  const after = begun.length > 0 ? begun : [nextRow(last, newId)]
  return { ...changed(state, after), spot: { row: after.length - 1, column: 0 }, corner: null, runFrom: 0 }
}

function answered(state: GridState, rowId: string, field: FieldName, text: string): GridState {
  const row = state.sheet.rows.findIndex(({ id }) => id === rowId)
  return row < 0 ? state : changed(state, write(state.sheet.rows, [{ row, field, text }]))
}
