import type { FieldName } from '../../../lib/record/fields.ts'

/** What is typed, exactly as typed; reading it is another step. */
export type Cells = Readonly<Partial<Record<FieldName, string>>>

export interface SheetRow {
  readonly id: string
  readonly cells: Cells
}

export type Rows = readonly SheetRow[]

/** The sheet with its own past and future: undo is the answer to "are you sure?". */
export interface Sheet {
  readonly rows: Rows
  readonly past: readonly Rows[]
  readonly future: readonly Rows[]
}

const stepsKept = 50

export function emptySheet(rows: Rows = []): Sheet {
  return { rows, past: [], future: [] }
}

/** A change as one step that can be taken back. A change that changes nothing is no step. */
export function step(sheet: Sheet, rows: Rows): Sheet {
  if (rows === sheet.rows) return sheet
  return { rows, past: [...sheet.past, sheet.rows].slice(-stepsKept), future: [] }
}

export function undo(sheet: Sheet): Sheet {
  const before = sheet.past.at(-1)
  if (before === undefined) return sheet
  return { rows: before, past: sheet.past.slice(0, -1), future: [sheet.rows, ...sheet.future] }
}

export function redo(sheet: Sheet): Sheet {
  const [after, ...future] = sheet.future
  if (after === undefined) return sheet
  return { rows: after, past: [...sheet.past, sheet.rows], future }
}

export interface Edit {
  readonly row: number
  readonly field: FieldName
  readonly text: string
}

/** Writes cells; rows that stay the same stay the same object, so that only changed rows are planned again. */
export function write(rows: Rows, edits: readonly Edit[]): Rows {
  const byRow = Map.groupBy(edits, ({ row }) => row)
  let changed = false
  const written = rows.map((row, at) => {
    const cells = writeCells(row.cells, byRow.get(at) ?? [])
    if (cells === row.cells) return row
    changed = true
    return { ...row, cells }
  })
  return changed ? written : rows
}

function writeCells(cells: Cells, edits: readonly Edit[]): Cells {
  const changes = edits.filter(({ field, text }) => (cells[field] ?? '') !== text)
  if (changes.length === 0) return cells
  const after: Partial<Record<FieldName, string>> = { ...cells }
  for (const { field, text } of changes) {
    if (text === '') delete after[field]
    else after[field] = text
  }
  return after
}

export function insert(rows: Rows, at: number, added: Rows): Rows {
  return added.length === 0 ? rows : rows.toSpliced(at, 0, ...added)
}

export function remove(rows: Rows, ids: ReadonlySet<string>): Rows {
  const kept = rows.filter(({ id }) => !ids.has(id))
  return kept.length === rows.length ? rows : kept
}

export function isBlank(row: SheetRow): boolean {
  return Object.values(row.cells).every((text) => text.trim() === '')
}
