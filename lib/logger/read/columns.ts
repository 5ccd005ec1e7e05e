import type { LogProblemCode } from '../log-problem.ts'
import { holdsNumbers, mostly, type ColumnSeen } from './column-senses.ts'
import type { SeenLine } from './delimiter.ts'
import type { LooseColumn } from './channels.ts'
import type { StampPlace } from './layout.ts'
import type { ColumnAnswer, ColumnUse, LogQuestion } from './log-answers.ts'
import type { Quantity } from './store.ts'
import { isTemperatureUnit, type Unit } from './units.ts'

export interface ColumnsFound {
  readonly values: readonly LooseColumn[]
  readonly channelColumns: readonly number[]
  readonly serialColumn: number | null
  readonly question: LogQuestion | null
  readonly remarks: readonly { readonly code: LogProblemCode; readonly heading: string }[]
}

const quantityOfUnit = (unit: Unit | null): Quantity | null =>
  unit === null ? null : isTemperatureUnit(unit) ? 'temperature' : 'humidity'

/** What a column holds by its heading, else by the unit behind its values; null: neither says it. */
function quantityOf({ headingSense, unit }: ColumnSeen): Quantity | null {
  if (headingSense === 'temperature' || headingSense === 'humidity') return headingSense
  return headingSense === 'other-quantity' ? null : quantityOfUnit(unit)
}

const loose = (
  column: ColumnSeen,
  quantity: Quantity,
  group: string,
  sensor: string | null = null,
): LooseColumn => ({
  column: column.column,
  heading: column.heading,
  quantity,
  unit: [column.headingUnit, column.unit].find((unit) => quantityOfUnit(unit) === quantity) ?? null,
  sensor,
  group,
})

/** A heading that means nothing here names no sensor either. */
const unnamed = (column: ColumnSeen) => (column.headingSense === null ? '' : null)

/** A guess at columns that nothing names, two by two: of two the one that runs higher is humidity, else the second. */
function proposed(columns: readonly ColumnSeen[]): readonly Quantity[] {
  return columns.map((column, at) => {
    const second = at % 2 === 1
    const other = columns[second ? at - 1 : at + 1]
    if (!other) return column.high > 50 ? 'humidity' : 'temperature'
    const higher = column.high === other.high ? second : column.high > other.high
    return higher ? 'humidity' : 'temperature'
  })
}

function repeatedColumns(columns: readonly ColumnSeen[], rows: readonly SeenLine[]): ReadonlySet<number> {
  const same = (a: number, b: number) => rows.every(({ cells }) => cells[a] === cells[b])
  const repeated = new Set<number>()
  for (const [at, column] of columns.entries()) {
    const earlier = columns
      .slice(0, at)
      .find((other) => other.heading === column.heading && same(other.column, column.column))
    if (earlier) repeated.add(column.column)
  }
  return repeated
}

/** Columns that name the sensor. What is another on every line, though the moments are too, counts lines and names none. */
function channelColumnsOf(
  columns: readonly ColumnSeen[],
  used: ReadonlySet<number>,
  moments: number,
): readonly ColumnSeen[] {
  return columns.filter(
    (column) =>
      column.headingSense === 'channel' &&
      !used.has(column.column) &&
      !column.counter &&
      !mostly(column.empties, column) &&
      (column.distinct === 1 || column.distinct < column.rows || moments < column.rows),
  )
}

const isSerial = (heading: string) => /serial|serien|s[ée]rie|\bs\/?n\b/i.test(heading)

function stampColumnsOf(stamp: StampPlace): readonly number[] {
  return stamp.kind === 'split' ? [stamp.date, stamp.time] : [stamp.column]
}

/** Which column is what. What neither heading nor unit tells is proposed and asked, where nothing else gives values. */
export function findColumns(
  columns: readonly ColumnSeen[],
  rows: readonly SeenLine[],
  stamp: StampPlace,
  groups: readonly string[],
  answers: readonly ColumnAnswer[],
  headed: boolean,
): ColumnsFound {
  const stampAt = new Set(stampColumnsOf(stamp))
  const said = new Map(answers.map((answer) => [answer.column, answer]))
  const free = columns.filter(({ column }) => !stampAt.has(column))
  const group = (column: number) => groups[column] ?? ''
  const values: LooseColumn[] = []
  for (const column of free) {
    const answer = said.get(column.column)
    if (answer?.use === 'temperature' || answer?.use === 'humidity') {
      values.push(loose(column, answer.use, group(column.column), answer.channel ?? unnamed(column)))
    }
  }
  const open = free.filter(({ column }) => !said.has(column))
  const candidates = open.filter(
    (column) =>
      holdsNumbers(column) ||
      (column.gaps > 0 && column.gaps + column.empties === column.rows) ||
      column.empties === column.rows,
  )
  const repeated = repeatedColumns(
    candidates.filter((column) => column.headingSense !== null),
    rows,
  )
  for (const column of candidates) {
    const quantity = quantityOf(column)
    if (quantity && !repeated.has(column.column)) values.push(loose(column, quantity, group(column.column)))
  }
  const remarks: { code: LogProblemCode; heading: string }[] = columns
    .filter(({ column }) => repeated.has(column))
    .map(({ heading }) => ({ code: 'column-repeated', heading }))
  const used = new Set([...stampAt, ...values.map(({ column }) => column), ...said.keys()])
  const unknown = open.filter(
    (column) =>
      column.headingSense === null && holdsNumbers(column) && !used.has(column.column) && !column.counter,
  )
  const ask = values.length === 0 && unknown.length > 0
  const guesses = ask ? proposed(unknown) : []
  const guessed = unknown
    .slice(0, guesses.length)
    .map((column, at) => loose(column, guesses[at]!, group(column.column), ''))
  const moments = new Set(
    rows.map(({ cells }) =>
      stampColumnsOf(stamp)
        .map((column) => cells[column])
        .join(' '),
    ),
  ).size
  const channels = [
    ...columns.filter(({ column }) => said.get(column)?.use === 'channel'),
    ...channelColumnsOf(open, used, moments),
  ]
  const read = new Set([
    ...used,
    ...guessed.map(({ column }) => column),
    ...channels.map(({ column }) => column),
  ])
  for (const { column, heading, headingSense } of columns) {
    if (!read.has(column) && !repeated.has(column) && heading !== '' && headingSense !== 'counter') {
      remarks.push({ code: 'column-not-read', heading })
    }
  }
  const use = (column: number): ColumnUse =>
    stampAt.has(column)
      ? stamp.kind === 'split'
        ? column === stamp.date
          ? 'date'
          : 'time'
        : 'stamp'
      : (guessed.find((guess) => guess.column === column)?.quantity ??
        (channels.some((channel) => channel.column === column) ? 'channel' : 'not-read'))
  return {
    values: [...values, ...guessed],
    channelColumns: channels.map(({ column }) => column),
    serialColumn: channels.find(({ heading }) => isSerial(heading))?.column ?? null,
    question: ask
      ? {
          about: 'columns',
          answers: ['temperature', 'humidity', 'not-read'],
          proposed: null,
          because: headed ? 'headings-not-known' : 'no-headings',
          examples: rows.slice(0, 3).map(({ line, text }) => ({ line, text: text.slice(0, 120) })),
          columns: columns.map(({ column, heading, examples }) => ({
            column,
            heading,
            examples,
            use: use(column),
          })),
        }
      : null,
    remarks,
  }
}
