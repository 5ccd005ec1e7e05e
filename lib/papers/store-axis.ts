import { clockAt, instantOf, type Clock } from '../wording/chart-clock.ts'
import { tickWords } from '../wording/chart-time.ts'

/** A place on an axis with the words that stand there; a stronger one begins a day, month or year. */
export interface Tick {
  readonly at: number
  readonly words: string
}

export type TickUnit = 'minute' | 'hour' | 'day' | 'month' | 'year'

const minuteMs = 60_000
const hourMs = 60 * minuteMs
const dayMs = 24 * hourMs

/** Steps people count time in, the finest first, with how long [ms] each lasts. */
const steps: readonly { readonly unit: TickUnit; readonly every: number; readonly lastsMs: number }[] = [
  { unit: 'minute', every: 15, lastsMs: 15 * minuteMs },
  { unit: 'hour', every: 1, lastsMs: hourMs },
  { unit: 'hour', every: 3, lastsMs: 3 * hourMs },
  { unit: 'hour', every: 6, lastsMs: 6 * hourMs },
  { unit: 'hour', every: 12, lastsMs: 12 * hourMs },
  { unit: 'day', every: 1, lastsMs: dayMs },
  { unit: 'day', every: 2, lastsMs: 2 * dayMs },
  { unit: 'day', every: 7, lastsMs: 7 * dayMs },
  { unit: 'day', every: 14, lastsMs: 14 * dayMs },
  { unit: 'month', every: 1, lastsMs: 30.4 * dayMs },
  { unit: 'month', every: 2, lastsMs: 60.9 * dayMs },
  { unit: 'month', every: 3, lastsMs: 91.3 * dayMs },
  { unit: 'month', every: 6, lastsMs: 182.6 * dayMs },
  { unit: 'year', every: 1, lastsMs: 365.25 * dayMs },
  { unit: 'year', every: 2, lastsMs: 2 * 365.25 * dayMs },
  { unit: 'year', every: 5, lastsMs: 5 * 365.25 * dayMs },
  { unit: 'year', every: 10, lastsMs: 10 * 365.25 * dayMs },
]

interface Span {
  readonly fromMs: number
  readonly toMs: number
  readonly zone: string
}

/** Whole hours, days, months or years of that zone within the span, at most as many as asked. */
export function timeTicks({ fromMs, toMs, zone }: Span, most: number): readonly Tick[] {
  const step = steps.find(({ lastsMs }) => (toMs - fromMs) / lastsMs <= most) ?? steps.at(-1)!
  const first = beginningOf(clockAt(fromMs, zone), step)
  const ticks: Tick[] = []
  for (let count = 0; count <= most + 2; count += 1) {
    const at = instantOf(onwards(first, step.unit, count * step.every), zone)
    if (at > toMs) break
    if (at >= fromMs) ticks.push({ at, words: tickWords(clockAt(at, zone), step.unit) })
  }
  return ticks
}

function beginningOf(
  clock: Clock,
  { unit, every }: { readonly unit: TickUnit; readonly every: number },
): Clock {
  const down = (value: number) => Math.floor(value / every) * every
  const midnight = { ...clock, hour: 0, minute: 0 }
  switch (unit) {
    case 'minute':
      return { ...clock, minute: down(clock.minute) }
    case 'hour':
      return { ...midnight, hour: down(clock.hour) }
    case 'day':
      return midnight
    case 'month':
      return { ...midnight, day: 1, month: down(clock.month - 1) + 1 }
    case 'year':
      return { ...midnight, day: 1, month: 1, year: down(clock.year) }
  }
}

const onwards = (clock: Clock, unit: TickUnit, by: number): Clock => ({ ...clock, [unit]: clock[unit] + by })

/** Round steps a reader can halve and double in the head. */
const roundSteps = [1, 2, 5, 10, 20]

interface ScaleAsked {
  /** How much it must at least span. */
  readonly least: number
  /** What can be at all. */
  readonly within: readonly [number, number]
  /** Steps there is room for. */
  readonly most?: number
}

/** A scale of round numbers that holds all values with a little air, and its ticks. */
export function numberScale(
  values: readonly number[],
  { least, within, most = 6 }: ScaleAsked,
): { readonly from: number; readonly to: number; readonly ticks: readonly number[] } {
  const [floor, ceiling] = within
  const low = values.length === 0 ? floor : Math.min(...values)
  const high = values.length === 0 ? floor + least : Math.max(...values)
  const wide = Math.max(high - low, least)
  const step = roundSteps.find((one) => wide / one <= most) ?? roundSteps.at(-1)!
  const from = Math.max(floor, Math.floor((low - step * 0.1) / step) * step)
  const to = Math.min(ceiling, Math.max(Math.ceil((high + step * 0.1) / step) * step, from + least))
  const ticks = Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, index) => from + index * step)
  return { from, to, ticks }
}
