import { splitCells } from './cells.ts'
import { isOnlyUnits, isUnits } from './heading-line.ts'
import { isNewHeading, isOwnHeading } from './heading-again.ts'
import type { Layout } from './layout.ts'
import type { LogDelimiter } from './log-form.ts'
import { joinPairs } from './pairs.ts'
import { plainText } from './plain-text.ts'
import { readRow, type RowRead } from './read-row.ts'
import { lacksDecimals } from './table-form.ts'
import { takeReading } from './take-reading.ts'
import type { LineGiven, WalkState } from './walk-state.ts'

const others: readonly LogDelimiter[] = ['\t', ';', '|', ',', 'spaces']

interface Parted {
  readonly cells: readonly string[]
  readonly unclosed: boolean
}

/** The cells of a line as the table has them; where commas part the decimals too, a line of another length is not guessed at. */
function part(text: string, layout: Layout): Parted | null {
  const split = splitCells(text, layout.delimiter)
  if (layout.pairedFrom === null) return split
  const { pairedFrom, width } = layout
  if (split.cells.length !== pairedFrom + 2 * (width - pairedFrom)) return null
  return { cells: joinPairs(split.cells, pairedFrom), unclosed: split.unclosed }
}

/** Another mark must make a whole reading of the line, not a worse one. */
const harmless: ReadonlySet<string> = new Set(['decimal-marks-mixed', 'thousands-marks', 'sensor-error'])

/** A line that another mark parts into a whole reading: the mark was changed on the way. */
function underOther(
  text: string,
  layout: Layout,
): { readonly cells: readonly string[]; readonly row: RowRead } | null {
  if (layout.delimiter === 'cells') return null
  for (const delimiter of others) {
    if (delimiter === layout.delimiter) continue
    const { cells } = splitCells(text, delimiter)
    if (cells.length !== layout.width) continue
    const row = readRow(cells, layout)
    const whole = row.kind === 'reading' && row.remarks.every(({ code }) => harmless.has(code))
    if (whole && row.values.some((value) => !Number.isNaN(value))) return { cells, row }
  }
  return null
}

/** Headings of another table may be parted by another mark. */
const isHeadingUnderOther = (text: string, { delimiter }: Layout) =>
  others.some(
    (other) => other !== delimiter && other !== 'spaces' && isNewHeading(splitCells(text, other).cells),
  )

/** The last line without a line feed behind it may have been cut off amid a number. */
function cutShort(cells: readonly string[], row: RowRead, layout: Layout): boolean {
  if (row.kind !== 'reading') return row.kind === 'fault' || /^\W?\d/.test(cells[0] ?? '')
  if (cells.length < layout.width) return true
  const last = cells.at(-1) ?? ''
  if (last.endsWith('\ufffd')) return true
  return layout.lastDecimals !== null && /\d$/.test(last) && lacksDecimals(last, layout.lastDecimals)
}

/** What is left of a reading cut short: all but its last cell. */
function withoutLast(cells: readonly string[], row: RowRead, layout: Layout): RowRead {
  if (row.kind !== 'reading') return { kind: 'fault', remarks: [] }
  const values = row.values.map((value, at) =>
    layout.values[at]!.column >= cells.length - 1 ? Number.NaN : value,
  )
  const dropped = layout.values
    .filter(({ column }) => column >= cells.length - 1)
    .map(({ heading }) => heading)
  const remarks = row.remarks.filter(
    ({ code, column }) => code !== 'too-few-cells' && (column === null || !dropped.includes(column)),
  )
  return values.every((value) => Number.isNaN(value))
    ? { kind: 'fault', remarks: [] }
    : {
        ...row,
        values,
        remarks: [...remarks, { code: 'line-cut-short', found: cells.join(' | '), column: null }],
      }
}

const isUnitsHere = (state: WalkState, cells: readonly string[]) =>
  state.waiting.hasHeading() ? isUnits(cells) : isOnlyUnits(cells)

/** Reads one line with care: as a reading, as headings, or as text that waits for what comes after it. */
export function takeLine(state: WalkState, given: LineGiven): void {
  const { book, table } = state
  const { layout } = table
  const { line, isLast } = given
  const { text, hadInvisible, hadOtherDigits } = plainText(given.text)
  if (text.trim() === '') return
  if (hadInvisible) book.note('invisible-marks', line, text)
  if (hadOtherDigits) book.note('other-digits', line, given.text)
  const parted = part(text, layout)
  const whole = parted?.cells ?? splitCells(text, layout.delimiter).cells
  let cells = whole
  let row: RowRead = parted ? readRow(whole, layout) : { kind: 'text' }
  if (row.kind !== 'reading' || row.remarks.some(({ code }) => code === 'too-few-cells')) {
    const other = underOther(text, layout)
    if (other) {
      book.note('delimiter-changed', line, text)
      takeReading(state, line, other.cells, other.row as Extract<RowRead, { kind: 'reading' }>, null)
      return
    }
  }
  if (row.kind === 'text') {
    if (isOwnHeading(whole, layout) || isUnitsHere(state, whole)) return state.waiting.sawHeading(line, text)
    if (isNewHeading(whole) || isHeadingUnderOther(text, layout)) {
      state.collecting = [given]
      return
    }
    if (!parted && /^\W?\d/.test(text) && /\d,\d/.test(text)) {
      book.note(isLast ? 'line-cut-short' : 'too-few-cells', line, text)
      state.unreadable++
      return
    }
  }
  if (isLast && cutShort(whole, row, layout)) {
    row = withoutLast(whole, row, layout)
    cells = whole
    if (row.kind !== 'reading') book.note('line-cut-short', line, text)
  }
  if (row.kind === 'text') return state.waiting.add(line, text)
  if (parted?.unclosed) book.note('quote-not-closed', line, text)
  if (row.kind === 'fault') {
    for (const { code, found, column } of row.remarks) book.note(code, line, found, column)
    state.waiting.beforeReading()
    state.unreadable++
    return
  }
  const clean = !parted?.unclosed && !hadInvisible && !hadOtherDigits && !isLast
  takeReading(state, line, cells, row, clean ? given.bytes : null)
}
