export type DateOrder = 'day-first' | 'month-first' | 'year-first'
export type TemperatureUnit = 'celsius' | 'fahrenheit'
export type HumidityScale = 'percent' | 'fraction'

export const columnUses = ['stamp', 'date', 'time', 'temperature', 'humidity', 'channel', 'not-read'] as const
export type ColumnUse = (typeof columnUses)[number]

/** What a person said a column is. */
export interface ColumnAnswer {
  /** Place of the column, from 0. */
  readonly column: number
  readonly use: ColumnUse
  /** Which sensor the values belong to, where there are several. */
  readonly channel?: string
}

/** What a person said about a file; null where nobody was asked yet. */
export interface LogAnswers {
  /** IANA name, `UTC`, or fixed as `+01:00`. */
  readonly timeZone: string | null
  readonly dateOrder: DateOrder | null
  readonly temperatureUnit: TemperatureUnit | null
  readonly humidityScale?: HumidityScale | null
  readonly columns?: readonly ColumnAnswer[] | null
  /** When the file was handed over [ms since 1970-01-01 UTC]; stamps after it are told. */
  readonly receivedAtMs?: number | null
}

export const noAnswers: LogAnswers = { timeZone: null, dateOrder: null, temperatureUnit: null }

/** A place in the file that shows what the question is about. */
export interface LogExample {
  readonly line: number
  readonly text: string
}

interface Asked<About extends string, Answer, Because extends string> {
  readonly about: About
  /** The answers possible; empty where they are too many to list (time zones). */
  readonly answers: readonly Answer[]
  /** The likeliest, and what the file was read with meanwhile; null: nothing speaks for one of them. */
  readonly proposed: Answer | null
  readonly because: Because
  readonly examples: readonly LogExample[]
}

/** What must be asked before the file can be kept. */
export type LogQuestion =
  | Asked<'date-order', DateOrder, 'both-orders-fit' | 'stamps-contradict'>
  | (Asked<
      'time-zone',
      string,
      'hour-skipped-or-repeated' | 'no-hour-skipped' | 'cannot-tell' | 'named-in-heading' | 'not-a-zone'
    > & {
      /** What the stamps themselves show of the clock: changed in spring and autumn, left alone, or they do not show it. */
      readonly clock: 'changed' | 'fixed' | null
    })
  | Asked<'temperature-unit', TemperatureUnit, 'no-unit-and-warm'>
  | Asked<'humidity-scale', HumidityScale, 'no-unit-and-none-above-one'>
  | (Asked<'columns', ColumnUse, 'no-headings' | 'headings-not-known'> & {
      /** Each column with what it seems to be; read so meanwhile. */
      readonly columns: readonly (ColumnAnswer & {
        readonly heading: string
        readonly examples: readonly string[]
      })[]
    })
