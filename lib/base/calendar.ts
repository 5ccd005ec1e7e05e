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

/** The day `days` [d] after `date`; negative days go back. */
export function addDays(date: IsoDate, days: number): IsoDate {
  return Temporal.PlainDate.from(date).add({ days }).toString() as IsoDate
}

/** Whole days [d] from `from` to `to`; negative when `to` lies before. */
export function daysBetween(from: IsoDate, to: IsoDate): number {
  return Temporal.PlainDate.from(from).until(to, { largestUnit: 'days' }).days
}
