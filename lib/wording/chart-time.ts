import { clockAt, type Clock } from './chart-clock.ts'
import { months } from './day.ts'

const two = (value: number) => String(value).padStart(2, '0')
const monthOf = (clock: Clock) => months[clock.month - 1] ?? ''

/** What stands at a tick of a time axis: a new day, month or year is named where finer ones begin. */
export function tickWords(clock: Clock, unit: 'minute' | 'hour' | 'day' | 'month' | 'year'): string {
  switch (unit) {
    case 'minute':
    case 'hour':
      if (clock.hour === 0 && clock.minute === 0) return `${clock.day} ${monthOf(clock).slice(0, 3)}`
      return `${two(clock.hour)}:${two(clock.minute)}`
    case 'day':
      return `${clock.day} ${monthOf(clock).slice(0, 3)}`
    case 'month':
      return clock.month === 1 ? String(clock.year) : monthOf(clock).slice(0, 3)
    case 'year':
      return String(clock.year)
  }
}

/** An instant in a time zone: `14 March 2026, 13:05`. */
export function instantWords(atMs: number, zone: string): string {
  const clock = clockAt(atMs, zone)
  return `${dateOf(clock)}, ${timeOf(clock)}`
}

/** The day of an instant in a time zone: `14 March 2026`. */
export function instantDayWords(atMs: number, zone: string): string {
  return dateOf(clockAt(atMs, zone))
}

/** From one instant to another, saying the day once where it is the same: `14 March 2026, 13:00 to 19:00`. */
export function stretchWords(fromMs: number, toMs: number, zone: string): string {
  const [from, to] = [clockAt(fromMs, zone), clockAt(toMs, zone)]
  if (dateOf(from) === dateOf(to)) return `${dateOf(from)}, ${timeOf(from)} to ${timeOf(to)}`
  return `${dateOf(from)}, ${timeOf(from)} to ${dateOf(to)}, ${timeOf(to)}`
}

const dateOf = (clock: Clock) => `${clock.day} ${monthOf(clock)} ${clock.year}`
const timeOf = (clock: Clock) => `${two(clock.hour)}:${two(clock.minute)}`

/** How long [ms] something lasted, to what a reader needs: `40 min`, `5 h`, `3 days 4 h`, `12 days`. */
export function lastingWords(ms: number): string {
  const minutes = Math.round(ms / 60_000)
  if (minutes < 60) return `${minutes} min`
  const hours = Math.round(ms / 3_600_000)
  if (hours < 48) return `${hours} h`
  const days = Math.floor(hours / 24)
  const rest = hours % 24
  return rest === 0 || days >= 7 ? `${Math.round(hours / 24)} days` : `${days} days ${rest} h`
}
