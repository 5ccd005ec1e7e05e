import type { ColumnsFound } from './columns.ts'
import type { SeenLine } from './delimiter.ts'
import type { StampPlace, ValueColumn } from './layout.ts'
import type { LogColumn } from './log-form.ts'
import { readStamp } from './stamp-text.ts'

const decimals = (cell: string) => /[.,](\d+)\D*$/.exec(cell)?.[1]?.length ?? 0

/** How many decimals every number of a column has, the last line left out, which may be cut short; null where they vary. */
export function sameDecimals(rows: readonly SeenLine[], column: number): number | null {
  const numbers = rows.slice(0, -1).filter((row) => row.seen[column]?.sense === 'number')
  const counts = new Set(numbers.map((row) => decimals(row.cells[column]!)))
  const [only] = counts
  return numbers.length > 2 && counts.size === 1 && only! > 0 ? only! : null
}

export const lacksDecimals = (cell: string, wanted: number): boolean => decimals(cell) !== wanted

export function decimalMarkOf(rows: readonly SeenLine[], columns: readonly number[]): '.' | ',' {
  const marks = rows.flatMap((row) => columns.map((column) => row.seen[column]?.mark ?? null))
  const commas = marks.filter((mark) => mark === ',').length
  return commas > marks.filter((mark) => mark === '.').length ? ',' : '.'
}

/** Most stamps say AM or PM. */
export function saysHalfDays(rows: readonly SeenLine[], stamp: StampPlace): boolean {
  if (stamp.kind === 'counted') return false
  const column = stamp.kind === 'split' ? stamp.time : stamp.column
  const marked = rows.filter(({ cells }) => readStamp(cells[column] ?? '')?.clock?.meridiem).length
  return marked * 2 > rows.length
}

/** Every column with what it is read as. */
export function columnUsesOf(
  headings: readonly string[],
  values: readonly ValueColumn[],
  found: ColumnsFound,
  stamp: StampPlace,
): readonly LogColumn[] {
  return headings.map((heading, column): LogColumn => {
    const value = values.find((one) => one.column === column)
    const base = { column, heading, channel: value?.channel ?? '' }
    if (value) return { ...base, use: value.quantity }
    if (stamp.kind === 'split' && stamp.date === column) return { ...base, use: 'date' }
    if (stamp.kind === 'split' && stamp.time === column) return { ...base, use: 'time' }
    if (stamp.kind !== 'split' && stamp.column === column) return { ...base, use: 'stamp' }
    return { ...base, use: found.channelColumns.includes(column) ? 'channel' : 'not-read' }
  })
}
