import type { SeenLine } from './delimiter.ts'
import { readHeading, type HeadingSense } from './heading-words.ts'
import type { Unit } from './units.ts'

/** What the lines surveyed show of one column. */
export interface ColumnSeen {
  readonly column: number
  readonly heading: string
  readonly headingSense: HeadingSense | null
  readonly headingUnit: Unit | null
  readonly rows: number
  readonly stamps: number
  readonly dates: number
  readonly times: number
  readonly numbers: number
  readonly gaps: number
  readonly empties: number
  /** Unit behind most of the values. */
  readonly unit: Unit | null
  readonly low: number
  readonly high: number
  readonly median: number
  readonly examples: readonly string[]
  readonly distinct: number
  /** Counts up by one from line to line. */
  readonly counter: boolean
}

const countsUp = (values: readonly number[]) =>
  values.length > 4 && values.every((value, at) => at === 0 || value === values[at - 1]! + 1)

function usualUnit(units: readonly Unit[], values: number): Unit | null {
  return [...Map.groupBy(units, (unit) => unit)].find(([, same]) => same.length * 2 > values)?.[0] ?? null
}

export function seeColumn(rows: readonly SeenLine[], column: number, heading: string): ColumnSeen {
  const seen = rows.flatMap((row) => row.seen[column] ?? [])
  const cells = rows.flatMap((row) => row.cells[column] ?? [])
  const count = (sense: string) => seen.filter((cell) => cell.sense === sense).length
  const values = seen.filter(({ sense }) => sense === 'number').map(({ value }) => value)
  const sorted = values.toSorted((a, b) => a - b)
  const { sense, unit } = readHeading(heading)
  return {
    column,
    heading,
    headingSense: sense,
    headingUnit: unit,
    rows: rows.length,
    stamps: count('stamp'),
    dates: count('date'),
    times: count('time'),
    numbers: values.length,
    gaps: count('gap'),
    empties: count('empty'),
    unit: usualUnit(
      seen.flatMap((cell) => cell.unit ?? []),
      values.length,
    ),
    low: sorted[0] ?? Number.NaN,
    high: sorted.at(-1) ?? Number.NaN,
    median: sorted[sorted.length >> 1] ?? Number.NaN,
    examples: [...new Set(cells.filter((cell) => cell !== ''))].slice(0, 3),
    distinct: new Set(cells).size,
    counter: countsUp(values),
  }
}

/** Most of what stands in the column is such a thing; blanks do not count. */
export const mostly = (count: number, column: ColumnSeen): boolean =>
  count > 0 && count * 2 > column.rows - column.empties

export const holdsNumbers = (column: ColumnSeen): boolean =>
  column.numbers > 0 && mostly(column.numbers + column.gaps, column)
