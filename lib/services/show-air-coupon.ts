import { figureValue, type Figures } from '../boxes/figure-value.ts'
import type { Coupon as Weighed } from '../climate/coupon.ts'
import type { Coupon } from '../record/store-diary.ts'

/** A coupon as the diary has it, put as the formulas take it. */
export interface CouponRead {
  readonly coupon: Weighed
  /** Nobody wrote how far the balance errs: an ordinary one is taken. */
  readonly errorTaken: boolean
  /** A loss written with its minus, as a change of mass has it. */
  readonly signTurned: boolean
}

const weighed = { 'mass-gain': 'gain', 'mass-loss': 'loss' } as const

/**
 * A loss is written either way, "3.2 lighter" or "a change of −3.2". Cleaned of its corrosion a coupon cannot be heavier, so
 * both are the same loss; only within the error of the balance does a sign say nothing, and stays.
 */
export function couponOf(given: Coupon, knowledge: Figures): CouponRead {
  const weighingErrorMg = given.weighing_error_mg ?? figureValue(knowledge, 'coupon-weighing-error')
  const signTurned = given.method === 'mass-loss' && given.mass_change_mg < -weighingErrorMg
  return {
    coupon: {
      metal: given.metal,
      weighed: weighed[given.method],
      changeMg: signTurned ? -given.mass_change_mg : given.mass_change_mg,
      weighingErrorMg,
      areaM2: given.area_cm2 / 10_000,
      days: given.days,
    },
    errorTaken: given.weighing_error_mg === undefined,
    signTurned,
  }
}
