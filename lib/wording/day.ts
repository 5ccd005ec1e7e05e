import type { IsoDate } from '../base/calendar.ts'

export const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]

/** `25 November 2026`: no order of day and month to mistake. */
export function dayWords(date: IsoDate): string {
  const [year, month, day] = date.split('-').map(Number)
  return `${day} ${months[(month ?? 1) - 1]} ${year}`
}

/** An instant as this machine's clock shows it: `25 November 2026, 14:05`. */
export function momentWords(epochMs: number): string {
  const at = new Date(epochMs)
  const clock = `${String(at.getHours()).padStart(2, '0')}:${String(at.getMinutes()).padStart(2, '0')}`
  return `${at.getDate()} ${months[at.getMonth()]} ${at.getFullYear()}, ${clock}`
}
