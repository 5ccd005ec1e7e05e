const minuteS = 60
const hourS = 3600
const dayS = 24 * hourS

const plural = (count: number, one: string) =>
  `${count.toLocaleString('en-GB')} ${count === 1 ? one : `${one}s`}`

/** A time to wait, rounded up so that nobody comes too early: `13 minutes`, `6 hours`, `3 days`. */
export function waitWords(seconds: number): string {
  if (seconds <= 90 * minuteS) return plural(Math.max(1, Math.ceil(seconds / minuteS)), 'minute')
  if (seconds <= 2 * dayS) return plural(Math.ceil(seconds / hourS), 'hour')
  return plural(Math.ceil(seconds / dayS), 'day')
}

const unitOf = (words: string) => words.replace(/^\S+ /, '').replace(/s$/, '')

/** `5 to 13 minutes`, `50 minutes to 2 hours`; one time where both round to the same. */
export function waitRangeWords({ low, high }: { readonly low: number; readonly high: number }): string {
  const [from, to] = [waitWords(low), waitWords(high)]
  if (from === to) return to
  return unitOf(from) === unitOf(to) ? `${from.split(' ')[0]} to ${to}` : `${from} to ${to}`
}
