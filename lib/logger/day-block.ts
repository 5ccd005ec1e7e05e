import type { IsoDate } from '../base/calendar.ts'
import { sketchOf, type Sketch } from './day-sketch.ts'
import { hundredthsOf, packed, unpacked } from './day-text.ts'
import type { Series } from './series.ts'
import { between, intervalMs } from './stretches.ts'

/** The readings of one day of UTC, packed, with what is known of them without unpacking. */
export interface DayBlock {
  readonly day: IsoDate
  readonly text: string
  readonly sketch: Sketch
  /** Values of more than two decimals, kept at the nearest hundredth. */
  readonly rounded: number
}

/** What a day became when others' readings of it came in. */
export interface MergedDay extends DayBlock {
  /** Moments that were not there before, or had no value. */
  readonly added: number
  /** Moments at which another value was offered: the one already kept stays. */
  readonly conflicts: number
}

const dayMs = 86_400_000
const dayOf = (atMs: number) => new Date(atMs).toISOString().slice(0, 10) as IsoDate
const startOf = (day: IsoDate) => Date.parse(day)

/** A series cut into days of UTC. Days without a reading have no block. */
export function packDays(series: Series, stepMs = intervalMs(series)): readonly DayBlock[] {
  const blocks: DayBlock[] = []
  for (let i = 0; i < series.atMs.length;) {
    const start = Math.floor(series.atMs[i]! / dayMs) * dayMs
    const part = between(series, start, start + dayMs)
    blocks.push(blockOf(dayOf(start), part, stepMs))
    i += part.atMs.length
  }
  return blocks
}

function blockOf(day: IsoDate, part: Series, stepMs: number): DayBlock {
  return {
    day,
    text: packed(part, startOf(day)),
    sketch: sketchOf(part, stepMs),
    rounded: roundedIn(part.rhPercent) + roundedIn(part.temperatureC),
  }
}

function roundedIn(values: Float32Array): number {
  let count = 0
  for (const value of values) {
    const whole = hundredthsOf(value)
    if (whole !== null && Math.fround(whole / 100) !== value) count += 1
  }
  return count
}

/** The readings of days, in order of time whatever the order of the days. */
export function unpackDays(blocks: readonly Pick<DayBlock, 'day' | 'text'>[]): Series {
  const parts = blocks
    .toSorted((a, b) => (a.day < b.day ? -1 : 1))
    .map(({ day, text }) => unpacked(text, startOf(day)))
  const length = parts.reduce((sum, { atMs }) => sum + atMs.length, 0)
  const whole = {
    atMs: new Float64Array(length),
    rhPercent: new Float32Array(length),
    temperatureC: new Float32Array(length),
  }
  let to = 0
  for (const part of parts) {
    whole.atMs.set(part.atMs, to)
    whole.rhPercent.set(part.rhPercent, to)
    whole.temperatureC.set(part.temperatureC, to)
    to += part.atMs.length
  }
  return whole
}

/**
 * A day with the readings of another file of that day. The same readings again change nothing; where two files disagree the
 * value that was there stays, and the disagreement is counted.
 */
export function mergeDay(kept: DayBlock, offered: DayBlock): MergedDay {
  if (kept.day !== offered.day) throw new Error(`${kept.day} and ${offered.day} are not one day.`)
  const start = startOf(kept.day)
  const [ours, theirs] = [unpacked(kept.text, start), unpacked(offered.text, start)]
  const union = unionOf(ours, theirs)
  if (union.added === 0) return { ...kept, added: 0, conflicts: union.conflicts }
  const stepMs = intervalMs(union.series) || Math.max(kept.sketch.stepMs, offered.sketch.stepMs)
  return {
    ...blockOf(kept.day, union.series, stepMs),
    rounded: kept.rounded + offered.rounded,
    added: union.added,
    conflicts: union.conflicts,
  }
}

/** Both in order of time; what the first has of a moment stays. */
function unionOf(ours: Series, theirs: Series) {
  const [atMs, rhPercent, temperatureC]: [number[], number[], number[]] = [[], [], []]
  let [a, b, added, conflicts] = [0, 0, 0, 0]
  while (a < ours.atMs.length || b < theirs.atMs.length) {
    const [mine, its] = [ours.atMs[a] ?? Infinity, theirs.atMs[b] ?? Infinity]
    const values = (from: Series, i: number) => [from.rhPercent[i]!, from.temperatureC[i]!] as const
    let [rh, temperature] = mine <= its ? values(ours, a) : values(theirs, b)
    if (mine === its) {
      const [otherRh, otherTemperature] = values(theirs, b)
      if (disagree(rh, otherRh) || disagree(temperature, otherTemperature)) conflicts += 1
      if (fills(rh, otherRh) || fills(temperature, otherTemperature)) added += 1
      if (Number.isNaN(rh)) rh = otherRh
      if (Number.isNaN(temperature)) temperature = otherTemperature
    } else if (its < mine) added += 1
    atMs.push(Math.min(mine, its))
    rhPercent.push(rh)
    temperatureC.push(temperature)
    if (mine <= its) a += 1
    if (its <= mine) b += 1
  }
  const series: Series = {
    atMs: Float64Array.from(atMs),
    rhPercent: Float32Array.from(rhPercent),
    temperatureC: Float32Array.from(temperatureC),
  }
  return { series, added, conflicts }
}

const fills = (ours: number, theirs: number) => Number.isNaN(ours) && !Number.isNaN(theirs)
const disagree = (ours: number, theirs: number) =>
  ours !== theirs && !Number.isNaN(ours) && !Number.isNaN(theirs)
