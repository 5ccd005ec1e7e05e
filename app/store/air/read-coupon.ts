import { daysBetween, type IsoDate } from '../../../lib/base/calendar.ts'
import { couponMetals, couponMethods } from '../../../lib/record/store-diary.ts'
import type { CouponTaken } from '../../../lib/services/keep-coupon.ts'
import type { FormReader } from '../_forms/read-form.ts'

/** Written both ways, the days may differ by how one counts the first and the last. */
const countedApart = 1

/** How long it hung, from the day or from the days; what does not fit together is left in the reader. */
function daysHung(form: FormReader, takenDown: IsoDate): number {
  const hungOn = form.dayOrNone('hung_on')
  const days = form.number('days', { from: 1, to: 10_000 })
  if (hungOn === undefined) {
    if (days === undefined && form.wrong['hung_on'] === undefined && form.wrong['days'] === undefined)
      form.wrong['days'] = 'Write how many days it hung, or the day it was hung.'
    return days ?? 1
  }
  const between = daysBetween(hungOn, takenDown)
  if (between < 1) form.wrong['hung_on'] = 'It must have been hung before the day it was taken down.'
  else if (days !== undefined && Math.abs(days - between) > countedApart)
    form.wrong['days'] = `From one day to the other are ${between} days, not ${days}. Mend one of the three.`
  return days ?? Math.max(1, between)
}

/** A coupon as it was filled in; every fault of it is left in the reader. */
export function couponRead(form: FormReader, today: IsoDate): CouponTaken {
  const on = form.day('on', today)
  const days = daysHung(form, on)
  const metal = couponMetals.find((one) => one === form.text('metal'))
  const method = couponMethods.find((one) => one === form.text('method'))
  if (metal === undefined) form.wrong['metal'] = 'Choose the metal.'
  if (method === undefined) form.wrong['method'] = 'Choose how it was weighed.'
  const [box, room, note] = [form.words('box'), form.words('room'), form.words('note')]
  if (box === undefined && room === undefined)
    form.wrong['room'] = 'Say in which box it hung, or in which room.'
  const weighing_error_mg = form.number('weighing_error_mg', { from: 0, to: 1000 })
  return {
    projectId: form.text('project'),
    on,
    metal: metal ?? 'silver',
    method: method ?? 'mass-gain',
    area_cm2: form.neededNumber('area_cm2', { from: 0.01, to: 10_000 }),
    days,
    mass_change_mg: form.neededNumber('mass_change_mg', { from: -100_000, to: 100_000 }),
    ...(box === undefined ? {} : { box }),
    ...(room === undefined ? {} : { room }),
    ...(note === undefined ? {} : { note }),
    ...(weighing_error_mg === undefined ? {} : { weighing_error_mg }),
  }
}
