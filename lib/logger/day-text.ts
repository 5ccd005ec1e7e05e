import type { Series } from './series.ts'

/**
 * Readings of one day as a short text: whole numbers, of which small ones take one byte, in base64. Moments as how each step
 * differs from the one before and how often it does so, values in hundredths as how each differs from the last one.
 */
const format = 1
/** Single floats hold hundredths exactly so far; nothing that a logger reads lies beyond. */
const furthest = 8_000_000

/** Small numbers of either sign as small whole numbers. */
const folded = (value: number) => (value < 0 ? -2 * value - 1 : 2 * value)
const unfolded = (value: number) => (value % 2 === 0 ? value / 2 : -(value + 1) / 2)

/** The nearest hundredth, or null where there is no reading. */
export function hundredthsOf(value: number): number | null {
  const whole = Math.round(value * 100)
  return Math.abs(whole) <= furthest ? whole + 0 : null
}

/** Bytes that a day of readings may take at most: seven bits each of numbers that a float holds exactly. */
const longestNumber = 8

/** Packs readings whose moments are whole milliseconds, from `startMs` on. */
export function packed({ atMs, rhPercent, temperatureC }: Series, startMs: number): string {
  const count = atMs.length
  const bytes = new Uint8Array((3 + 4 * count) * longestNumber)
  let end = 0
  const put = (value: number) => {
    let left = value
    for (; left >= 128; left = Math.floor(left / 128)) bytes[end++] = (left % 128) + 128
    bytes[end++] = left
  }
  const putValues = (values: Float32Array) => {
    let before = 0
    for (let i = 0; i < count; i += 1) {
      const here = hundredthsOf(values[i]!)
      put(here === null ? 0 : folded(here - before) + 1)
      before = here ?? before
    }
  }
  const unit = atMs.every((at) => (at - startMs) % 1000 === 0) ? 1000 : 1
  put(format)
  put(unit)
  put(count)
  let [last, step, change, times] = [0, 0, 0, 0]
  for (let i = 0; i < count; i += 1) {
    const here = (atMs[i]! - startMs) / unit
    const differs = here - last - step
    if (times > 0 && differs !== change) {
      put(folded(change))
      put(times)
      times = 0
    }
    change = differs
    times += 1
    step = here - last
    last = here
  }
  if (times > 0) {
    put(folded(change))
    put(times)
  }
  putValues(rhPercent)
  putValues(temperatureC)
  return textOf(bytes.subarray(0, end))
}

/** As many bytes at once as a call may have arguments anywhere. */
const atOnce = 8192

function textOf(bytes: Uint8Array): string {
  let text = ''
  for (let from = 0; from < bytes.length; from += atOnce)
    text += String.fromCharCode(...bytes.subarray(from, from + atOnce))
  return btoa(text)
}

/** The readings of such a text. */
export function unpacked(text: string, startMs: number): Series {
  const bytes = atob(text)
  let place = 0
  const take = () => {
    const byte = bytes.charCodeAt(place++)
    // Nearly all numbers are of one byte.
    return byte < 128 ? byte : takeLong(byte)
  }
  const takeLong = (first: number) => {
    let [value, weight, byte] = [first % 128, 128, bytes.charCodeAt(place++)]
    for (; byte >= 128; byte = bytes.charCodeAt(place++)) {
      value += (byte % 128) * weight
      weight *= 128
    }
    if (Number.isNaN(byte)) throw new Error('A day of readings ends in the middle of a number.')
    return value + byte * weight
  }
  const known = take()
  if (known !== format)
    throw new Error(`A day of readings is packed in a form (${known}) this program does not know.`)
  const [unit, count] = [take(), take()]
  const atMs = new Float64Array(count)
  let [last, step] = [0, 0]
  for (let i = 0; i < count;) {
    const change = unfolded(take())
    for (let times = take(); times > 0 && i < count; times -= 1) {
      step += change
      last += step
      atMs[i++] = startMs + last * unit
    }
  }
  const takeValues = () => {
    const values = new Float32Array(count)
    let before = 0
    for (let i = 0; i < count; i += 1) {
      const code = take()
      if (code !== 0) before += unfolded(code - 1)
      values[i] = code === 0 ? Number.NaN : before / 100
    }
    return values
  }
  return { atMs, rhPercent: takeValues(), temperatureC: takeValues() }
}
