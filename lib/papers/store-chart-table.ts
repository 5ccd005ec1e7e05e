import { rhWords } from '../wording/chart-reading.ts'
import { instantWords } from '../wording/chart-time.ts'
import { numberWords } from '../wording/band.ts'
import type { ChartGround, ChartView } from './store-chart.ts'

export interface TableLine {
  readonly atMs: number
  readonly from: string
  readonly humidity: string
  readonly temperature: string
}

const linesShown = 60

/** The stretches of a view joined to at most sixty lines; nothing of what was lowest or highest is lost by joining. */
export function tableOf(view: ChartView, { floorRhPercent }: ChartGround): readonly TableLine[] {
  const { stretches, zone } = view
  const places = stretches.fromMs.length
  const each = Math.max(1, Math.ceil(places / linesShown))
  const lines: TableLine[] = []
  for (let first = 0; first < places; first += each) {
    const part = (column: readonly (number | null)[]) =>
      column.slice(first, first + each).filter((value) => value !== null)
    const [low, high] = [part(stretches.rhLow), part(stretches.rhHigh)]
    const [cold, warm] = [part(stretches.temperatureLow), part(stretches.temperatureHigh)]
    const atMs = stretches.fromMs[first] ?? 0
    lines.push({
      atMs,
      from: instantWords(atMs, zone),
      humidity:
        low.length === 0 ? 'nothing read' : rhWords(Math.min(...low), Math.max(...high), floorRhPercent),
      temperature: cold.length === 0 ? 'nothing read' : degrees(Math.min(...cold), Math.max(...warm)),
    })
  }
  return lines
}

function degrees(cold: number, warm: number): string {
  const [from, to] = [numberWords(cold), numberWords(warm)]
  return `${from === to ? from : `${from} to ${to}`} °C`
}
