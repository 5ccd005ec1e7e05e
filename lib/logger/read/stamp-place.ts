import type { SeenLine } from './delimiter.ts'
import { holdsNumbers, mostly, type ColumnSeen } from './column-senses.ts'
import type { ColumnAnswer } from './log-answers.ts'
import { countsOf, type StampPlace } from './layout.ts'
import { readStamp } from './stamp-text.ts'

const stampSenses: readonly (string | null)[] = ['stamp', 'date', 'time']
const saysUtc = (heading: string) => /\b(?:utc|gmt)\b(?!\s*[+-]\s*[1-9])/i.test(heading)

/** Some programs print a midnight behind every date, though the time stands in its own column. */
const alwaysMidnight = (rows: readonly SeenLine[], column: number) =>
  rows.every((row) => (readStamp(row.cells[column] ?? '')?.clock?.ms ?? 0) === 0)

function countedColumn(columns: readonly ColumnSeen[]): StampPlace | null {
  for (const column of columns) {
    if (!holdsNumbers(column) || column.counter) continue
    const counts = countsOf(column.median)
    if (counts === null || countsOf(column.low) !== counts || countsOf(column.high) !== counts) continue
    const headed = stampSenses.includes(column.headingSense)
    if (headed || (column.headingSense === null && counts !== 'days'))
      return { kind: 'counted', column: column.column, counts }
  }
  return null
}

function answered(columns: readonly ColumnSeen[], answers: readonly ColumnAnswer[]): StampPlace | null {
  const at = (use: string) => answers.find((answer) => answer.use === use)?.column
  const whole = at('stamp')
  const date = at('date')
  const time = at('time')
  if (date !== undefined && time !== undefined) return { kind: 'split', date, time }
  const column = whole ?? date
  if (column === undefined) return null
  const seen = columns[column]
  const counts = seen && holdsNumbers(seen) && seen.dates + seen.stamps === 0 ? countsOf(seen.median) : null
  return counts ? { kind: 'counted', column, counts } : { kind: 'whole', column }
}

/** Where the moments stand; `time-only`: there are times of day but no dates. */
export function stampPlace(
  columns: readonly ColumnSeen[],
  rows: readonly SeenLine[],
  answers: readonly ColumnAnswer[],
): StampPlace | 'time-only' | null {
  const said = answered(columns, answers)
  if (said) return said
  const taken = new Set(answers.filter(({ use }) => use !== 'not-read').map(({ column }) => column))
  const free = columns.filter(({ column }) => !taken.has(column))
  const whole = free.filter((column) => mostly(column.stamps, column))
  const dates = free.filter((column) => mostly(column.dates, column))
  const times = free.filter((column) => mostly(column.times, column))
  const bare = whole.find(({ column }) => alwaysMidnight(rows, column))
  if (bare && times[0]) return { kind: 'split', date: bare.column, time: times[0].column }
  const best =
    whole.find(({ heading }) => saysUtc(heading)) ??
    whole.find(({ headingSense }) => stampSenses.includes(headingSense)) ??
    whole[0]
  if (best) return { kind: 'whole', column: best.column }
  const date = dates.find(({ headingSense }) => stampSenses.includes(headingSense)) ?? dates[0]
  if (date && times[0]) return { kind: 'split', date: date.column, time: times[0].column }
  const counted = countedColumn(free)
  if (counted && !date) return counted
  if (date) return { kind: 'whole', column: date.column }
  return counted ?? (times.length > 0 ? 'time-only' : null)
}
