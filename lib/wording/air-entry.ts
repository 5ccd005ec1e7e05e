import type { IsoDate } from '../base/calendar.ts'
import type { Coupon } from '../record/store-diary.ts'
import { capital } from './capital.ts'
import { dayWords } from './day.ts'
import { countWords } from './list.ts'

const plain = (value: number) => value.toLocaleString('en-GB', { maximumFractionDigits: 4 })

/** What was hung and weighed, as it was written down. */
export function couponEntryWords(given: Coupon, takenDown: IsoDate, by: string): string {
  const way = given.method === 'mass-gain' ? 'heavier as it came down' : 'lighter once its corrosion was off'
  const error = given.weighing_error_mg === undefined ? '' : ` ± ${plain(given.weighing_error_mg)}`
  return `${capital(given.metal)}, ${plain(given.area_cm2)} cm² of faces, hung ${countWords(Math.round(given.days), 'day')} and taken down on ${dayWords(takenDown)}; ${plain(Math.abs(given.mass_change_mg))}${error} mg ${given.mass_change_mg < 0 && given.method === 'mass-gain' ? 'lighter as it came down' : way}. Written down by ${by}.`
}

/** What had to be taken where the entry does not say. */
export function takenWords(
  { errorTaken, signTurned }: { readonly errorTaken: boolean; readonly signTurned: boolean },
  weighingErrorMg: number,
): readonly string[] {
  return [
    ...(errorTaken
      ? [
          `Nobody wrote how far the balance errs. ± ${plain(weighingErrorMg)} mg is taken for both weighings together.`,
        ]
      : []),
    ...(signTurned ? ['Written with a minus, as a change of mass has it; taken as so much lighter.'] : []),
  ]
}

export const placeOfCouponWords = (box: string | null): string =>
  box === null ? 'In the room itself' : `In box ${box}`

export const airLead = (coupons: number, rooms: number): string =>
  coupons === 0
    ? 'No coupon has been written down yet.'
    : `${countWords(coupons, 'coupon')} from ${countWords(rooms, 'room')}, the newest of each place first.`
