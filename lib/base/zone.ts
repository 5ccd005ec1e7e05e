import { Temporal } from 'temporal-polyfill'
import type { IsoDate } from './calendar.ts'

/** The first moment [ms since 1970-01-01 UTC] of a day on the clock of a time zone. */
export function dayStartMs(day: IsoDate, timeZone: string): number {
  return Temporal.PlainDate.from(day).toZonedDateTime(timeZone).epochMilliseconds
}

/** The day that the clock of a time zone shows at a moment [ms since 1970-01-01 UTC]. */
export function dayAt(ms: number, timeZone: string): IsoDate {
  return Temporal.Instant.fromEpochMilliseconds(Math.floor(ms))
    .toZonedDateTimeISO(timeZone)
    .toPlainDate()
    .toString() as IsoDate
}
