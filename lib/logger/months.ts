import type { Series } from './series.ts'

/** One calendar month of UTC. */
export interface MonthRow {
  /** `2026-11` */
  readonly month: string
  readonly readings: number
  readonly meanRhPercent: number
  readonly minRhPercent: number
  readonly maxRhPercent: number
  /** Null where no temperature was read. */
  readonly meanTemperatureC: number | null
  readonly minTemperatureC: number | null
  readonly maxTemperatureC: number | null
}

/** Every month that holds readings; each reading counts once. */
export function monthsOf(series: Series): readonly MonthRow[] {
  const { atMs } = series
  const rows: MonthRow[] = []
  for (let from = 0; from < atMs.length;) {
    const day = new Date(atMs[from]!)
    const next = Date.UTC(day.getUTCFullYear(), day.getUTCMonth() + 1, 1)
    let to = from + 1
    while (to < atMs.length && atMs[to]! < next) to += 1
    rows.push(monthRow(series, from, to, day.toISOString().slice(0, 7)))
    from = to
  }
  return rows
}

function monthRow({ rhPercent, temperatureC }: Series, from: number, to: number, month: string): MonthRow {
  const rh = extremes(rhPercent, from, to)
  const temperature = extremes(temperatureC, from, to)
  return {
    month,
    readings: to - from,
    meanRhPercent: rh.mean,
    minRhPercent: rh.min,
    maxRhPercent: rh.max,
    meanTemperatureC: temperature.count === 0 ? null : temperature.mean,
    minTemperatureC: temperature.count === 0 ? null : temperature.min,
    maxTemperatureC: temperature.count === 0 ? null : temperature.max,
  }
}

function extremes(values: Float32Array, from: number, to: number) {
  let [count, sum, min, max] = [0, 0, Infinity, -Infinity]
  for (let i = from; i < to; i += 1) {
    const value = values[i]!
    if (Number.isNaN(value)) continue
    count += 1
    sum += Math.round(value * 100)
    if (value < min) min = value
    if (value > max) max = value
  }
  return {
    count,
    mean: sum / count / 100,
    min: Math.round(min * 100) / 100,
    max: Math.round(max * 100) / 100,
  }
}
