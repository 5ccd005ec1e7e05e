import type { Channel, Series } from '../series.ts'
import type { Ordered } from './time-order.ts'
import type { Quantity, Slot } from './store.ts'

/** Readings of one sensor out of one table. */
export interface Part {
  readonly channel: string
  readonly serial: string | null
  readonly series: Series
}

const nothing = (length: number) => new Float32Array(length).fill(Number.NaN)

/** The sensors whose values stand side by side in one table; they share their moments. */
export function partsOf(ordered: Ordered, slots: readonly Slot[], serial: string | null): readonly Part[] {
  const names = [...new Set(slots.map(({ channel }) => channel))]
  return names.map((channel) => {
    const column = (quantity: Quantity) => {
      const slot = slots.findIndex((one) => one.channel === channel && one.quantity === quantity)
      return slot === -1 ? nothing(ordered.atMs.length) : ordered.values[slot]!
    }
    return {
      channel,
      serial,
      series: { atMs: ordered.atMs, rhPercent: column('humidity'), temperatureC: column('temperature') },
    }
  })
}

const pick = (kept: number, other: number) => (Number.isNaN(kept) ? other : kept)

export interface Joined {
  readonly series: Series
  readonly disagreeing: number
}

/** Two stretches of one sensor as one: each fills in what the other lacks, the first one counts where they differ. */
export function join(a: Series, b: Series): Joined {
  const longest = a.atMs.length + b.atMs.length
  const atMs = new Float64Array(longest)
  const rhPercent = new Float32Array(longest)
  const temperatureC = new Float32Array(longest)
  let length = 0
  let disagreeing = 0
  const differ = (kept: number, other: number) =>
    !Number.isNaN(kept) && !Number.isNaN(other) && kept !== other
  for (let left = 0, right = 0; left < a.atMs.length || right < b.atMs.length; length++) {
    const first = a.atMs[left] ?? Number.POSITIVE_INFINITY
    const second = b.atMs[right] ?? Number.POSITIVE_INFINITY
    const at = Math.min(first, second)
    atMs[length] = at
    const fromA = first === at
    const fromB = second === at
    const rhA = fromA ? a.rhPercent[left]! : Number.NaN
    const rhB = fromB ? b.rhPercent[right]! : Number.NaN
    const tA = fromA ? a.temperatureC[left]! : Number.NaN
    const tB = fromB ? b.temperatureC[right]! : Number.NaN
    if (differ(rhA, rhB) || differ(tA, tB)) disagreeing++
    rhPercent[length] = pick(rhA, rhB)
    temperatureC[length] = pick(tA, tB)
    if (fromA) left++
    if (fromB) right++
  }
  return {
    series: {
      atMs: atMs.slice(0, length),
      rhPercent: rhPercent.slice(0, length),
      temperatureC: temperatureC.slice(0, length),
    },
    disagreeing,
  }
}

const hasValues = ({ rhPercent, temperatureC }: Series) =>
  rhPercent.some((value) => !Number.isNaN(value)) || temperatureC.some((value) => !Number.isNaN(value))

export interface Channels {
  readonly channels: readonly Channel[]
  readonly disagreeing: number
  /** Sensors that a column stands for but that gave nothing. */
  readonly silent: readonly string[]
}

/** Columns are made longer than what was read; what stands over much is given back. */
function fitted<Column extends Float32Array | Float64Array>(column: Column): Column {
  const spare = column.buffer.byteLength - column.byteLength
  return spare > column.byteLength / 4 + 65_536 ? (column.slice() as Column) : column
}

/** One channel for each sensor, whatever tables of the file its readings stand in. */
export function channelsFrom(parts: readonly Part[]): Channels {
  let disagreeing = 0
  const silent: string[] = []
  const channels = [...Map.groupBy(parts, ({ channel }) => channel)].flatMap(([name, own]) => {
    const speaking = own.filter(({ series }) => hasValues(series))
    if (speaking.length === 0) {
      silent.push(name)
      return []
    }
    const series = speaking
      .map((part) => part.series)
      .reduce((a, b) => {
        const both = join(a, b)
        disagreeing += both.disagreeing
        return both.series
      })
    return [{ name, serial: own.find(({ serial }) => serial !== null)?.serial ?? null, series }]
  })
  const moments = new Map<Float64Array, Float64Array>()
  const once = (atMs: Float64Array) => {
    const known = moments.get(atMs) ?? fitted(atMs)
    moments.set(atMs, known)
    return known
  }
  return {
    channels: channels.map(({ name, serial, series }) => ({
      name,
      serial,
      series: {
        atMs: once(series.atMs),
        rhPercent: fitted(series.rhPercent),
        temperatureC: fitted(series.temperatureC),
      },
    })),
    disagreeing,
    silent,
  }
}
