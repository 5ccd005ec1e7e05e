import { addDays } from '../base/calendar.ts'
import { given, refused } from '../base/outcome.ts'
import { missing, type Answer } from '../base/trouble.ts'
import { couponMetals, couponMethods, type Coupon } from '../record/store-diary.ts'
import {
  boxNamed,
  enterOnce,
  notAccepted,
  told,
  wrongDay,
  wrongNumber,
  type Happened,
} from './enter-diary.ts'
import type { Actor } from './kept.ts'
import type { World } from './ports.ts'

export interface CouponTaken extends Happened, Omit<Coupon, 'hung_on'> {
  readonly projectId: string
  /** Where it hung: in a box, or in a room. */
  readonly box?: string
  readonly room?: string
}

/** A metal strip taken down and weighed. */
export async function keepCoupon(
  world: World,
  { projectId, box, room, on, atMs = null, note, ...strip }: CouponTaken,
  by: Actor,
): Answer<{ readonly entered: boolean }> {
  const { metal, method, area_cm2, days, mass_change_mg, weighing_error_mg } = strip
  const wrong =
    wrongDay(world, on) ??
    wrongNumber([
      ['area_cm2', area_cm2, 0.01, 10_000],
      ['days', days, 1, 10_000],
      ['mass_change_mg', mass_change_mg, -100_000, 100_000],
      ['weighing_error_mg', weighing_error_mg, 0, 1000],
    ])
  if (wrong) return wrong
  if (!couponMetals.includes(metal)) return notAccepted('metal', 'unknown')
  if (!couponMethods.includes(method)) return notAccepted('method', 'unknown')
  if ((box ?? '') === '' && (room ?? '') === '') return notAccepted('room', 'empty')
  return world.store.write('keep-coupon', by, async (writes) => {
    let hungIn = room === '' ? undefined : room
    if (box !== undefined && box !== '') {
      const listed = await boxNamed(writes, projectId, box)
      if (!listed.ok) return listed
      // The box may move; the air was that of the room it stood in.
      hungIn ??= listed.value.given.room
    } else if (!(await writes.rooms.ofProject(projectId)).some((one) => one.given.room === room))
      return refused(missing('room', room ?? ''))
    const entered = await enterOnce(writes, projectId, {
      kind: 'coupon',
      box: box === undefined || box === '' ? null : box,
      room: hungIn ?? null,
      findId: null,
      on,
      atMs,
      given: { ...strip, hung_on: addDays(on, -Math.round(days)), ...told({ note }) },
    })
    return given({ entered })
  })
}
