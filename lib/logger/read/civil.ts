export const msPerMinute = 60_000
export const msPerHour = 3_600_000
export const msPerDay = 86_400_000

const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]

const isLeap = (year: number) => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)

const daysInMonth = (year: number, month: number) =>
  month === 2 && isLeap(year) ? 29 : (monthLengths[month - 1] ?? 0)

/** Days since 1970-01-01 of a day of the calendar; NaN where there is no such day. */
export function dayNumber(year: number, month: number, day: number): number {
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return Number.NaN
  // Years begin in March here, so that the leap day ends one.
  const shifted = month > 2 ? year : year - 1
  const era = Math.floor(shifted / 400)
  const yearOfEra = shifted - era * 400
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear
  return era * 146_097 + dayOfEra - 719_468
}

export interface CivilDay {
  readonly year: number
  readonly month: number
  readonly day: number
}

/** The day of the calendar that a number of days since 1970-01-01 is. */
export function civilDay(dayNumber: number): CivilDay {
  const shifted = dayNumber + 719_468
  const era = Math.floor(shifted / 146_097)
  const dayOfEra = shifted - era * 146_097
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  )
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100))
  const shiftedMonth = Math.floor((5 * dayOfYear + 2) / 153)
  const month = shiftedMonth < 10 ? shiftedMonth + 3 : shiftedMonth - 9
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1,
  }
}

/** Two digits stand for 1970 to 2069. */
export const fullYear = (year: number, digits: number): number =>
  digits > 2 ? year : year < 70 ? 2000 + year : 1900 + year

/** `2024-03-31 02:00` of a moment, without a zone. */
export const civilText = (ms: number): string =>
  Number.isFinite(ms) ? new Date(ms).toISOString().slice(0, 16).replace('T', ' ') : '?'
