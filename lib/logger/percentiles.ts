/** How a percentile between two readings is found, as statisticians number it. They differ most where readings are few. */
export type PercentileMethod = 'linear' | 'inverse' | 'hazen' | 'weibull'

export const percentileMethods = [
  'linear',
  'inverse',
  'hazen',
  'weibull',
] as const satisfies PercentileMethod[]

/** Readings by value: how many there are of each, values in rising order. Every reading counts once, however long it stands. */
export interface Counted {
  readonly values: readonly number[]
  /** Readings up to and with that value. */
  readonly upTo: readonly number[]
}

/**
 * The value below which so many in a hundred readings lie [as the readings].
 * @param counted [as the readings] the readings, counted by value
 * @param percent [%] how many in a hundred, 0 to 100
 * @param method [name] how a place between two readings is read: `linear` is type 7, `inverse` 1, `hazen` 5, `weibull` 6
 * @source Hyndman & Fan 1996, The American Statistician 50(4), 361-365, types 1, 5, 6 and 7
 * @valid one reading or more; NaN for none
 * @agrees exact with the worked day of 24 readings: 93 % at 25.39, 26, 25.82 and 26.25
 */
export function percentile(counted: Counted, percent: number, method: PercentileMethod): number {
  const n = counted.upTo.at(-1) ?? 0
  if (n === 0) return Number.NaN
  const share = percent / 100
  // A place that binary fractions put a hair beside a whole one is that whole one.
  const place = Math.round(placeOf(method, n, share) * 1e9) / 1e9
  const low = Math.min(n, Math.max(1, Math.floor(place)))
  const high = Math.min(n, Math.max(1, Math.ceil(place)))
  if (method === 'inverse') return valueAt(counted, high)
  const [from, to] = [valueAt(counted, low), valueAt(counted, high)]
  return from + (to - from) * (place - Math.floor(place))
}

/** The place among the readings in rising order, from 1. */
function placeOf(method: PercentileMethod, n: number, share: number): number {
  switch (method) {
    case 'linear':
      return 1 + (n - 1) * share
    case 'inverse':
      return n * share
    case 'hazen':
      return n * share + 0.5
    case 'weibull':
      return (n + 1) * share
  }
}

function valueAt({ values, upTo }: Counted, place: number): number {
  let [low, high] = [0, upTo.length - 1]
  while (low < high) {
    const middle = (low + high) >> 1
    if (upTo[middle]! < place) low = middle + 1
    else high = middle
  }
  return values[low]!
}

/** Single values counted, for lists that are no readings of hundredths. */
export function counted(values: ArrayLike<number>): Counted {
  const sorted = Float64Array.from(values).toSorted()
  return { values: Array.from(sorted), upTo: Array.from(sorted, (_, at) => at + 1) }
}
