import type { LogColumn, LogDelimiter } from './log-form.ts'
import type { Slot } from './store.ts'

/** Where the moment of a reading stands in its line. */
export type StampPlace =
  | { readonly kind: 'whole'; readonly column: number }
  | { readonly kind: 'split'; readonly date: number; readonly time: number }
  | { readonly kind: 'counted'; readonly column: number; readonly counts: Counts }

export type Counts = 'seconds' | 'milliseconds' | 'days'

export interface ValueColumn extends Slot {
  readonly column: number
}

/** How the lines of one table are written. */
export interface Layout {
  readonly delimiter: LogDelimiter
  /** Cells a line has. */
  readonly width: number
  readonly decimalMark: '.' | ','
  /** Commas part the cells and the decimals alike: every value takes two cells, from this column on; null otherwise. */
  readonly pairedFrom: number | null
  readonly headings: readonly string[]
  readonly headingLine: number | null
  readonly stamp: StampPlace
  readonly channelColumns: readonly number[]
  readonly serialColumn: number | null
  readonly values: readonly ValueColumn[]
  readonly columns: readonly LogColumn[]
  /** Decimals that every value of the last column has; null where they vary. */
  readonly lastDecimals: number | null
}

const countMs: Readonly<Record<Counts, number>> = { seconds: 1000, milliseconds: 1, days: 86_400_000 }
/** Spreadsheets count days from the end of 1899, this many before 1970. */
const spreadsheetDays = 25_569

/** The moment that a count stands for [ms since 1970-01-01]: days are told to the second, as more is lost in printing them. */
export const countedMs = (count: number, counts: Counts): number =>
  counts === 'days'
    ? Math.round((count - spreadsheetDays) * 86_400) * 1000
    : Math.round(count * countMs[counts])

/** What a number in a column of stamps counts, by its size: moments from 1990 to 2080. */
export function countsOf(value: number): Counts | null {
  if (value >= 631_152_000 && value < 3_471_292_800) return 'seconds'
  if (value >= 631_152_000_000 && value < 3_471_292_800_000) return 'milliseconds'
  return value >= 32_874 && value < 65_746 ? 'days' : null
}
