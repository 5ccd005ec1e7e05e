import type { LogAnswers } from '../../../lib/logger/read/log-answers.ts'
import type { LogRead } from '../../../lib/logger/read/read-log.ts'

/** A file as somebody may hand it over, and all that must be said of it. */
export interface Hostile {
  readonly name: string
  readonly file: string | Uint8Array
  readonly answers?: Partial<LogAnswers>
  /** Every reading, as `2024-05-06 07:00 20.1 45.2`; a dash where there is no value; the channel before it where it is named. */
  readonly reads: readonly string[]
  /** Every problem: `code @line ×count`, the line left out for the whole file, the count where it is one. */
  readonly tells: readonly string[]
  /** What is asked, and why. */
  readonly asks?: readonly string[]
  /** Lines of the table that gave no reading. */
  readonly unreadable?: number
}

export const heading = 'time,t °C,rh %'

const start = Date.UTC(2024, 4, 6, 7)
const stamp = (at: number) => new Date(start + at * 600_000).toISOString().slice(0, 16).replace('T', ' ')

/** Readings of a quiet logger, ten minutes apart, from the `from`th on. */
export function quiet(count: number, from = 0): readonly string[] {
  return Array.from(
    { length: count },
    (_, at) => `${stamp(from + at)},20.${(from + at) % 10},45.${(from + at) % 10}`,
  )
}

/** The same as they must come out. */
export const quietReads = (count: number, from = 0): readonly string[] =>
  quiet(count, from).map((line) => {
    const [when, t, rh] = line.split(',')
    return `${when} ${Number(t)} ${Number(rh)}`
  })

export const table = (...lines: readonly string[]): string => `${[heading, ...lines].join('\n')}\n`

export const bytesOf = (file: string | Uint8Array): Uint8Array =>
  typeof file === 'string' ? new TextEncoder().encode(file) : file

const value = (number: number) => (Number.isNaN(number) ? '-' : String(Number(number.toFixed(3))))

export function readsOf({ channels }: LogRead): readonly string[] {
  return channels.flatMap(({ name, series }) =>
    Array.from(series.atMs, (ms, at) => {
      const when = new Date(ms).toISOString().slice(0, 19).replace('T', ' ').replace(/:00$/, '')
      const said = `${when} ${value(series.temperatureC[at]!)} ${value(series.rhPercent[at]!)}`
      return name === '' ? said : `${name} ${said}`
    }),
  )
}

export const tellsOf = ({ problems }: LogRead): readonly string[] =>
  problems.map(
    ({ code, line, count }) => `${code}${line === null ? '' : ` @${line}`}${count === 1 ? '' : ` ×${count}`}`,
  )

export const asksOf = ({ asks }: LogRead): readonly string[] =>
  asks.map(
    ({ about, because, proposed }) => `${about}: ${because}${proposed === null ? '' : ` → ${proposed}`}`,
  )
