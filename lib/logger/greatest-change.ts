import type { Series } from './series.ts'

/** From one reading to a later one. */
export interface Change {
  readonly fromRhPercent: number
  readonly toRhPercent: number
  readonly fromMs: number
  readonly toMs: number
}

/** Readings looked at together: one by one only where a group could hold a greater change than is known. */
const group = 64

/**
 * The greatest rise or fall between two readings at most `windowMs` apart; so it is also the widest range that any such time
 * holds. Null where no two readings are so near.
 */
export function greatestChange({ atMs, rhPercent }: Series, windowMs: number): Change | null {
  const { lows, highs } = groupExtremes(rhPercent)
  let [found, at, left] = [-1, 0, 0]
  for (let n = 0; n < lows.length; n += 1) {
    const [from, to] = [n * group, Math.min(atMs.length, (n + 1) * group)]
    while (atMs[left]! < atMs[from]! - windowMs) left += 1
    let [low, high] = [lows[n]!, highs[n]!]
    for (let k = Math.floor(left / group); k < n; k += 1) {
      if (lows[k]! < low) low = lows[k]!
      if (highs[k]! > high) high = highs[k]!
    }
    if (Math.max(highs[n]! - low, high - lows[n]!) <= found) continue
    // The window of a reading begins no earlier than that of the one before it; so, from the last reading of the group to the
    // first, what lies before the group only grows, and each of it is looked at once.
    let [k, greatest, where] = [from, found, at]
    low = Infinity
    high = -Infinity
    for (let i = to - 1; i >= from; i -= 1) {
      const begins = atMs[i]! - windowMs
      for (; k > left && atMs[k - 1]! >= begins; k -= 1) {
        const rh = rhPercent[k - 1]!
        if (rh < low) low = rh
        if (rh > high) high = rh
      }
      const rh = rhPercent[i]!
      let change = Math.max(rh - low, high - rh)
      for (let near = i - 1; near >= from && atMs[near]! >= begins; near -= 1) {
        const apart = Math.abs(rh - rhPercent[near]!)
        if (apart > change) change = apart
      }
      // Of equal changes the first counts.
      if (change > found && change >= greatest) [greatest, where] = [change, i]
    }
    ;[found, at] = [greatest, where]
  }
  return found < 0 ? null : changeEnding({ atMs, rhPercent }, at, windowMs)
}

/** The greatest change within the window that ends in that reading. */
function changeEnding(
  { atMs, rhPercent }: Omit<Series, 'temperatureC'>,
  at: number,
  windowMs: number,
): Change {
  let [found, from] = [-1, at]
  for (let k = at - 1; k >= 0 && atMs[at]! - atMs[k]! <= windowMs; k -= 1) {
    const apart = Math.abs(rhPercent[at]! - rhPercent[k]!)
    if (apart > found) [found, from] = [apart, k]
  }
  return {
    fromRhPercent: hundredths(rhPercent[from]!),
    toRhPercent: hundredths(rhPercent[at]!),
    fromMs: atMs[from]!,
    toMs: atMs[at]!,
  }
}

const hundredths = (value: number) => Math.round(value * 100) / 100

function groupExtremes(rhPercent: Float32Array) {
  const groups = Math.ceil(rhPercent.length / group)
  const [lows, highs] = [new Float32Array(groups), new Float32Array(groups)]
  for (let n = 0; n < groups; n += 1) {
    let [low, high] = [Infinity, -Infinity]
    for (let i = n * group; i < Math.min(rhPercent.length, (n + 1) * group); i += 1) {
      const rh = rhPercent[i]!
      if (rh < low) low = rh
      if (rh > high) high = rh
    }
    lows[n] = low
    highs[n] = high
  }
  return { lows, highs }
}
