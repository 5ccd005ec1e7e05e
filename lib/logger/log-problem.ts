/**
 * What is wrong or notable in a logger file, as data: the same fault on many lines is one problem, with its first line and how
 * many lines have it. The sentences are made in lib/wording/log-problems.ts.
 */
export type LogSeverity =
  | 'error' // readings are missing, or nothing can be kept until this is mended or answered
  | 'warning' // something was read that a person ought to look at
  | 'note' // it was read, and this is how

const severities = {
  // the file
  'empty-file': 'error',
  'spreadsheet-file': 'error',
  'old-spreadsheet-file': 'error',
  'document-file': 'error',
  'pdf-file': 'error',
  'picture-file': 'error',
  'archive-file': 'error',
  'database-file': 'error',
  'binary-file': 'error',
  'web-page': 'error',
  'json-file': 'error',
  'xml-file': 'error',
  'no-readings': 'error',
  'headings-only': 'error',
  'no-stamp-column': 'error',
  'dates-missing': 'error',
  'no-value-column': 'error',
  'no-humidity': 'warning',
  'no-temperature': 'warning',
  'read-in-old-encoding': 'note',
  'utf-16-without-mark': 'note',
  'undecodable-text': 'warning',
  'zero-bytes': 'warning',
  'invisible-marks': 'note',
  'other-digits': 'note',
  'lone-carriage-returns': 'note',
  'one-reading': 'warning',
  'all-in-one-moment': 'error',
  // the table
  'heading-repeated': 'note',
  'second-table': 'note',
  'columns-changed': 'warning',
  'columns-seem-swapped': 'warning',
  'delimiter-changed': 'warning',
  'decimal-marks-mixed': 'warning',
  'decimal-comma-between-commas': 'warning',
  'thousands-marks': 'note',
  'column-not-read': 'note',
  'column-repeated': 'note',
  'channel-without-values': 'note',
  'too-many-sensors': 'error',
  // the line
  'line-not-read': 'warning',
  'comment-lines': 'note',
  'footer-lines': 'note',
  'line-too-long': 'error',
  'line-cut-short': 'warning',
  'too-few-cells': 'warning',
  'too-many-cells': 'warning',
  'quote-not-closed': 'warning',
  // the stamp
  'stamp-missing': 'error',
  'stamp-unreadable': 'error',
  'date-does-not-exist': 'error',
  'time-does-not-exist': 'error',
  'stamp-without-time': 'warning',
  'hour-24': 'note',
  'leap-second': 'note',
  'year-of-two-digits': 'note',
  'clocks-mixed': 'warning',
  'date-orders-mixed': 'error',
  'offsets-mixed': 'warning',
  'clock-not-set': 'error',
  'clock-set-back': 'warning',
  'clock-jumps-ahead': 'warning',
  'stamps-in-future': 'warning',
  'stamps-backward': 'warning',
  'newest-first': 'note',
  'reading-repeated': 'note',
  'readings-disagree': 'warning',
  'unknown-time-zone': 'error',
  'zone-said-in-file': 'note',
  'skipped-by-clock-change': 'error',
  'hour-told-twice': 'warning',
  'clock-not-changed': 'warning',
  // the value
  'empty-cells': 'note',
  'sensor-error': 'note',
  'value-unreadable': 'error',
  'formula-cell': 'error',
  'wrong-unit': 'error',
  'humidity-out-of-range': 'error',
  'humidity-over-100': 'note',
  'humidity-as-fraction': 'note',
  'temperature-out-of-range': 'error',
  'read-as-fahrenheit': 'note',
  'read-as-kelvin': 'note',
} as const satisfies Record<string, LogSeverity>

export type LogProblemCode = keyof typeof severities

export interface LogProblem {
  readonly code: LogProblemCode
  readonly severity: LogSeverity
  /** First line of the file that has it, from 1; null: the whole file. */
  readonly line: number | null
  /** The heading as it stands in the file. */
  readonly column: string | null
  /** What stands there, cut to a length that can be shown. */
  readonly found: string
  /** How many lines (cells, where it is about cells) have it. */
  readonly count: number
}

const longestFound = 80

export const shortened = (text: string): string =>
  text.length > longestFound ? `${text.slice(0, longestFound - 1)}…` : text

export function logProblem(
  code: LogProblemCode,
  line: number | null,
  found: string,
  column: string | null = null,
  count = 1,
): LogProblem {
  return { code, severity: severities[code], line, column, found: shortened(found), count }
}

export const logProblemCodes = Object.keys(severities) as readonly LogProblemCode[]
