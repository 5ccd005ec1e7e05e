import { Temporal } from 'temporal-polyfill'

/** A calendar day as ISO 8601 prints it: `2026-11-25`. */
export type IsoDate = string & { readonly __brand: 'IsoDate' }

/** The day, or null where the text is no day that exists (`2026-02-30`). */
export function isoDate(text: string): IsoDate | null {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return null
  try {
    return Temporal.PlainDate.from(text, { overflow: 'reject' }).toString() as IsoDate
  } catch {
    return null
  }
}

/** Days already counted from one date: a queue of thousands asks for the same few over and over. */
const counted = { from: '', after: new Map<number, IsoDate>() }

/** The day `days` [d] after `date`; negative days go back. */
export function addDays(date: IsoDate, days: number): IsoDate {
  if (counted.from !== date) {
    counted.from = date
    counted.after = new Map()
  }
  const known = counted.after.get(days)
  if (known) return known
  const day = Temporal.PlainDate.from(date).add({ days }).toString() as IsoDate
  counted.after.set(days, day)
  return day
}

/** Whole days [d] from `from` to `to`; negative when `to` lies before. */
export function daysBetween(from: IsoDate, to: IsoDate): number {
  return Temporal.PlainDate.from(from).until(to, { largestUnit: 'days' }).days
}
