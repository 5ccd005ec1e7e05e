import { addDays, isoDate, type IsoDate } from '../base/calendar.ts'
import { fold } from '../base/fold.ts'

/** Which comes first in `03/04/2024`, as the whole column shows. */
export type DayOrder = 'day-first' | 'month-first' | 'undecided'

export type DateRead =
  | { readonly ok: true; readonly date: IsoDate; readonly asWritten: boolean }
  | { readonly ok: false; readonly code: 'not-a-date' | 'ambiguous-date'; readonly suggestion?: string }

const yearFirst = /^(\d{4})\s*[-./ ]\s*(\d{1,2})\s*[-./ ]\s*(\d{1,2})$/
const yearLast = /^(\d{1,2})\s*[-./ ]\s*(\d{1,2})\s*[-./ ]\s*(\d{4})$/
const withTime = /^(\d{4}-\d{2}-\d{2})[T ]\d{2}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:Z|[+-]\d{2}:?\d{2})?$/
const dayMonthName =
  /^(?:[a-z]{3,9},?\s+)?(\d{1,2})(?:st|nd|rd|th)?[\s./-]*(?:of\s+)?([a-z]{3,9})\.?[\s,./-]*(\d{4})$/
const monthNameDay = /^([a-z]{3,9})\.?[\s./-]*(\d{1,2})(?:st|nd|rd|th)?[\s,./-]+(\d{4})$/
const months = 'january february march april may june july august september october november december'.split(
  ' ',
)

function day(year: string, month: number | string, dayOfMonth: string): IsoDate | null {
  return isoDate(`${year}-${String(month).padStart(2, '0')}-${dayOfMonth.padStart(2, '0')}`)
}

const monthOf = (name: string) =>
  months.findIndex((month) => month.startsWith(name) || (month === 'september' && name === 'sept')) + 1

/** What a column of dates says about its order: one day beyond twelve decides, unless another says the opposite. */
export function dayOrderOf(texts: Iterable<string>): DayOrder {
  let dayFirst = false
  let monthFirst = false
  for (const text of texts) {
    const found = yearLast.exec(text.trim())
    if (!found) continue
    if (Number(found[1]) > 12) dayFirst = true
    if (Number(found[2]) > 12) monthFirst = true
  }
  return dayFirst === monthFirst ? 'undecided' : dayFirst ? 'day-first' : 'month-first'
}

function byNumbers(first: string, second: string, year: string, order: DayOrder): DateRead {
  const asDayFirst = day(year, second, first)
  const asMonthFirst = day(year, first, second)
  const only = asDayFirst === asMonthFirst || !asMonthFirst ? asDayFirst : !asDayFirst ? asMonthFirst : null
  if (only) return { ok: true, date: only, asWritten: false }
  if (!asDayFirst || !asMonthFirst) return { ok: false, code: 'not-a-date' }
  if (order === 'undecided')
    return { ok: false, code: 'ambiguous-date', suggestion: `${asDayFirst} or ${asMonthFirst}` }
  return { ok: true, date: order === 'day-first' ? asDayFirst : asMonthFirst, asWritten: false }
}

/** A day in the order its column has settled on; two readings are never chosen between without it. */
export function readDate(written: string, order: DayOrder): DateRead {
  const exact = isoDate(written)
  if (exact) return { ok: true, date: exact, asWritten: true }
  const text = fold(written).replace(/\s+/g, ' ')
  const last = yearLast.exec(text)
  if (last) return byNumbers(last[1]!, last[2]!, last[3]!, order)
  const first = yearFirst.exec(text)
  const timed = withTime.exec(written)
  const dayName = dayMonthName.exec(text)
  const nameDay = monthNameDay.exec(text)
  const date = timed
    ? isoDate(timed[1]!)
    : first
      ? day(first[1]!, first[2]!, first[3]!)
      : dayName
        ? day(dayName[3]!, monthOf(dayName[2]!), dayName[1]!)
        : nameDay
          ? day(nameDay[3]!, monthOf(nameDay[1]!), nameDay[2]!)
          : null
  if (date) return { ok: true, date, asWritten: timed !== null && /[T ]00:00/.test(written) }
  // Spreadsheets count days from the end of 1899; the number alone is not taken for a day.
  const serial = /^[2-5]\d{4}$/.test(text)
    ? { suggestion: addDays('1899-12-30' as IsoDate, Number(text)) }
    : {}
  return { ok: false, code: 'not-a-date', ...serial }
}
