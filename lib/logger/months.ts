import type { Series } from './series.ts'
import type { Spread } from './profile.ts'
import { firstFrom } from './stretches.ts'
import { spreadOfSums, valueSums, type ValueSums } from './value-spread.ts'

/** One calendar month of UTC; null for what was not read in it. */
export interface MonthRow {
  /** `2026-11` */
  readonly month: string
  readonly rhPercent: MonthMean | null
  readonly temperatureC: MonthMean | null
}

export interface MonthMean {
  readonly readings: number
  readonly mean: number
  readonly min: number
  readonly max: number
}

/** Every month that holds readings, and what all temperatures are together; each reading counts once. */
export function monthsOf(series: Series): {
  readonly months: readonly MonthRow[]
  readonly temperatureC: Spread | null
} {
  const { atMs, rhPercent, temperatureC } = series
  const about = temperatureC.find((value) => !Number.isNaN(value)) ?? 0
  const [months, temperatures]: [MonthRow[], ValueSums[]] = [[], []]
  for (let from = 0; from < atMs.length;) {
    const day = new Date(atMs[from]!)
    const to = firstFrom(atMs, Date.UTC(day.getUTCFullYear(), day.getUTCMonth() + 1, 1))
    const sums = valueSums(temperatureC, from, to, about)
    temperatures.push(sums)
    months.push({
      month: day.toISOString().slice(0, 7),
      rhPercent: meanOf(valueSums(rhPercent, from, to, 0)),
      temperatureC: meanOf(sums),
    })
    from = to
  }
  return { months, temperatureC: spreadOfSums(temperatures) }
}

const hundredths = (value: number) => Math.round(value * 100) / 100

function meanOf({ count, sum, min, max }: ValueSums): MonthMean | null {
  if (count === 0) return null
  return { readings: count, mean: sum / count, min: hundredths(min), max: hundredths(max) }
}
