import type { FieldName } from '../../../lib/record/fields.ts'
import { insert, write, type Rows, type SheetRow } from './sheet.ts'
import type { Spot } from './move.ts'

/** A quote opens a cell only where another closes it before the next tab or line; a lone one is a letter and eats nothing. */
const quotedCell = /^"(?:[^"]|"")*"(?=[\t\r\n]|$)/

/** A block from a spreadsheet: tabs between cells, line breaks between rows, quotes round cells that hold either. */
export function readBlock(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [[]]
  let cell = ''
  let quoted = false
  const end = () => {
    rows.at(-1)!.push(cell)
    cell = ''
  }
  for (let at = 0; at < text.length; at += 1) {
    const sign = text[at]!
    if (quoted) {
      if (sign !== '"') cell += sign
      else if (text[at + 1] === '"') {
        cell += '"'
        at += 1
      } else quoted = false
    } else if (sign === '"' && cell === '' && quotedCell.test(text.slice(at))) quoted = true
    else if (sign === '\t') end()
    else if (sign === '\n' || sign === '\r') {
      if (sign === '\r' && text[at + 1] === '\n') at += 1
      end()
      rows.push([])
    } else cell += sign
  }
  if (cell !== '' || rows.at(-1)!.length > 0) end()
  return rows.filter((row) => row.length > 0)
}

export interface Block {
  /** The field of each column; null where the block's heading means no field of the record. */
  readonly fields: readonly (FieldName | null)[]
  readonly headed: boolean
  readonly rows: readonly (readonly string[])[]
}

/** A block whose first line names at least half its columns is read by its headings; any other by where it lands. */
export function placeBlock(
  cells: readonly (readonly string[])[],
  at: number,
  columns: readonly FieldName[],
  fieldOf: (heading: string) => FieldName | null,
): Block {
  const heading = (cells[0] ?? []).map((text) => fieldOf(text))
  const named = heading.filter((field) => field !== null).length
  if (cells.length > 1 && named > 0 && named * 2 >= heading.length) {
    return { fields: heading, headed: true, rows: cells.slice(1) }
  }
  const width = Math.max(...cells.map((row) => row.length))
  return {
    fields: Array.from({ length: width }, (_, column) => columns[at + column] ?? null),
    headed: false,
    rows: cells,
  }
}

/** Puts the block over the rows from `spot` down, adding rows where it is longer than the sheet. */
export function pasteBlock(rows: Rows, spot: Spot, block: Block, newId: () => string): Rows {
  const missing = Math.max(spot.row + block.rows.length - rows.length, 0)
  const added: SheetRow[] = Array.from({ length: missing }, () => ({ id: newId(), cells: {} }))
  const edits = block.rows.flatMap((cells, down) =>
    cells.flatMap((text, column) => {
      const field = block.fields[column]
      return field === null || field === undefined ? [] : [{ row: spot.row + down, field, text: text.trim() }]
    }),
  )
  return write(insert(rows, rows.length, added), edits)
}
