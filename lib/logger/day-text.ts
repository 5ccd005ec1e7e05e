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

/** Packs readings whose moments are whole milliseconds, from `startMs` on. */
export function packed({ atMs, rhPercent, temperatureC }: Series, startMs: number): string {
  const bytes: number[] = []
  const put = (value: number) => {
    let left = value
    for (; left >= 128; left = Math.floor(left / 128)) bytes.push((left % 128) + 128)
    bytes.push(left)
  }
  const unit = atMs.every((at) => (at - startMs) % 1000 === 0) ? 1000 : 1
  put(format)
  put(unit)
  put(atMs.length)
  let [last, step, again] = [0, 0, 0]
  const runs: [change: number, times: number][] = []
  for (const at of atMs) {
    const here = (at - startMs) / unit
    again = here - last - step
    const run = runs.at(-1)
    if (run?.[0] === again) run[1] += 1
    else runs.push([again, 1])
    ;[last, step] = [here, here - last]
  }
  for (const [change, times] of runs) {
    put(folded(change))
    put(times)
  }
  for (const values of [rhPercent, temperatureC]) {
    let before = 0
    for (const value of values) {
      const here = hundredthsOf(value)
      put(here === null ? 0 : folded(here - before) + 1)
      before = here ?? before
    }
  }
  return btoa(bytes.map((byte) => String.fromCharCode(byte)).join(''))
}

/** The readings of such a text. */
export function unpacked(text: string, startMs: number): Series {
  const bytes = atob(text)
  let place = 0
  const take = () => {
    let [value, weight] = [0, 1]
    for (;;) {
      const byte = bytes.charCodeAt(place++)
      if (Number.isNaN(byte)) throw new Error('A day of readings ends in the middle of a number.')
      value += (byte % 128) * weight
      if (byte < 128) return value
      weight *= 128
    }
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
  const values = () => {
    let before = 0
    return Float32Array.from({ length: count }, () => {
      const code = take()
      if (code === 0) return Number.NaN
      before += unfolded(code - 1)
      return before / 100
    })
  }
  return { atMs, rhPercent: values(), temperatureC: values() }
}
