export interface Spot {
  readonly row: number
  readonly column: number
}

export interface Size {
  readonly rows: number
  readonly columns: number
  /** Rows a page key jumps. */
  readonly page: number
}

/** Where a key takes the active cell; null for a key that moves nothing. Never leaves the sheet. */
export function move(from: Spot, key: string, control: boolean, size: Size): Spot | null {
  const last = { row: size.rows - 1, column: size.columns - 1 }
  const to = (row: number, column: number): Spot => ({
    row: Math.min(Math.max(row, 0), Math.max(last.row, 0)),
    column: Math.min(Math.max(column, 0), last.column),
  })
  switch (key) {
    case 'ArrowUp':
      return to(control ? 0 : from.row - 1, from.column)
    case 'ArrowDown':
      return to(control ? last.row : from.row + 1, from.column)
    case 'ArrowLeft':
      return to(from.row, control ? 0 : from.column - 1)
    case 'ArrowRight':
      return to(from.row, control ? last.column : from.column + 1)
    case 'Home':
      return to(control ? 0 : from.row, 0)
    case 'End':
      return to(control ? last.row : from.row, last.column)
    case 'PageUp':
      return to(from.row - size.page, from.column)
    case 'PageDown':
      return to(from.row + size.page, from.column)
    default:
      return null
  }
}

/** Tab goes on to the next row at the end of one; null past either end, where focus leaves the sheet. */
export function tab(from: Spot, back: boolean, size: Size): Spot | null {
  const place = from.row * size.columns + from.column + (back ? -1 : 1)
  if (place < 0 || place >= size.rows * size.columns) return null
  return { row: Math.floor(place / size.columns), column: place % size.columns }
}
