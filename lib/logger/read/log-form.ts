import type { ColumnUse, DateOrder, HumidityScale } from './log-answers.ts'

export type LogEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252'
export type LogDelimiter = ',' | ';' | '\t' | '|' | 'spaces' | 'cells'

export interface LogColumn {
  /** Place of the column, from 0. */
  readonly column: number
  readonly heading: string
  readonly use: ColumnUse
  /** Name of the channel its values go to; empty where there is one only. */
  readonly channel: string
}

/** How the file is written, and how each of it was decided: what a person wants to see before trusting the reading. */
export interface LogForm {
  readonly encoding: LogEncoding
  readonly delimiter: LogDelimiter
  readonly decimalMark: '.' | ','
  /** Line of the headings, from 1; null where there are none. */
  readonly headingLine: number | null
  /** Line of the first reading, from 1; null where there is none. */
  readonly firstLine: number | null
  readonly columns: readonly LogColumn[]
  /** What stands above the table as name and value. */
  readonly heading: readonly { readonly line: number; readonly name: string; readonly value: string }[]
  readonly serial: string | null
  readonly model: string | null
  readonly dates: {
    readonly order: DateOrder | null
    readonly how:
      | 'year-stands-first'
      | 'month-named'
      | 'day-above-12'
      | 'order-of-readings'
      | 'answered'
      | 'assumed'
      | 'counted' // epoch seconds, spreadsheet day numbers
  }
  readonly clock: '24-hour' | '12-hour'
  readonly timeZone: {
    readonly zone: string
    readonly how: 'in-stamps' | 'in-heading' | 'answered' | 'clock-not-changed' | 'assumed'
  }
  readonly temperature: {
    readonly unit: 'celsius' | 'fahrenheit' | 'kelvin'
    readonly how: 'in-heading' | 'behind-values' | 'answered' | 'assumed'
  }
  readonly humidity: {
    readonly scale: HumidityScale
    readonly how: 'in-heading' | 'behind-values' | 'by-values' | 'answered' | 'assumed'
  }
}
