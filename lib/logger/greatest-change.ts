import type { Series } from './series.ts'

/** From one reading to a later one. */
export interface Change {
  readonly fromRhPercent: number
  readonly toRhPercent: number
  readonly fromMs: number
  readonly toMs: number
}

/** Most readings that any time of `windowMs` holds. */
function mostWithin(at: Float64Array, windowMs: number): number {
  let [left, most] = [0, 0]
  for (let i = 0; i < at.length; i += 1) {
    while (at[i]! - at[left]! > windowMs) left += 1
    if (i + 1 - left > most) most = i + 1 - left
  }
  return most
}

/**
 * The greatest rise or fall between two readings at most `windowMs` apart; so it is also the widest range that any such time
 * holds. Null where no two readings are so near.
 */
export function greatestChange({ atMs, rhPercent }: Series, windowMs: number): Change | null {
  // Of the readings of the window only those can still be the lowest that lie below all after them, likewise the highest:
  // two rings of places, the extreme of the window first.
  const ring = 2 ** Math.ceil(Math.log2(mostWithin(atMs, windowMs) + 1))
  const [lows, highs, mask] = [new Int32Array(ring), new Int32Array(ring), ring - 1]
  let [lowHead, lowEnd, highHead, highEnd] = [0, 0, 0, 0]
  let [most, from, to] = [-1, 0, 0]
  for (let i = 0; i < atMs.length; i += 1) {
    const rh = rhPercent[i]!
    const start = atMs[i]! - windowMs
    while (lowEnd > lowHead && rhPercent[lows[(lowEnd - 1) & mask]!]! >= rh) lowEnd -= 1
    while (highEnd > highHead && rhPercent[highs[(highEnd - 1) & mask]!]! <= rh) highEnd -= 1
    lows[lowEnd++ & mask] = i
    highs[highEnd++ & mask] = i
    while (atMs[lows[lowHead & mask]!]! < start) lowHead += 1
    while (atMs[highs[highHead & mask]!]! < start) highHead += 1
    const [low, high] = [lows[lowHead & mask]!, highs[highHead & mask]!]
    const rise = rh - rhPercent[low]!
    const fall = rhPercent[high]! - rh
    if (rise > most && low < i) [most, from, to] = [rise, low, i]
    if (fall > most && high < i) [most, from, to] = [fall, high, i]
  }
  if (most < 0) return null
  const rounded = (value: number) => Math.round(value * 100) / 100
  return {
    fromRhPercent: rounded(rhPercent[from]!),
    toRhPercent: rounded(rhPercent[to]!),
    fromMs: atMs[from]!,
    toMs: atMs[to]!,
  }
}
