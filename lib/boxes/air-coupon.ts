import { given, type Outcome } from '../base/outcome.ts'
import type { Range } from '../base/range.ts'
import {
  couponRate,
  silverLossOfGainMgPerM2Year,
  thicknessNmPerYear,
  type Coupon,
  type CouponRate,
  type CouponRefusal,
} from '../climate/coupon.ts'
import { classesOf, type Classes, type ClassLimit } from '../climate/corrosivity-class.ts'
import { figureValue, type Figures } from './figure-value.ts'

export const indoorClasses = ['IC1', 'IC2', 'IC3', 'IC4', 'IC5'] as const
export type IndoorClass = (typeof indoorClasses)[number]

export interface CouponVerdict extends CouponRate {
  readonly coupon: Coupon
  /** Null where no limit is known to us, as for lead: that is said aloud, and no class guessed. */
  readonly classes: Classes<IndoorClass> | null
  /** Metal eaten [nm/a]; null where the gain does not say how much metal it took. */
  readonly thicknessNmPerYear: Range | null
  /** What the thickness takes for granted. */
  readonly assumes: 'silver-sulphide' | null
  /** Ids of the figures it rests on: each says how it is known. */
  readonly figures: readonly string[]
}

const methodFigure = 'coupon-method-uncertainty'
const each = (range: Range, change: (value: number) => number): Range => ({
  low: change(range.low),
  nominal: change(range.nominal),
  high: change(range.high),
})

const limitId = ({ metal, weighed }: Pick<Coupon, 'metal' | 'weighed'>, name: IndoorClass) =>
  `iso-11844-1-${metal}-${weighed}-${name.toLowerCase()}`

/** Upper limit of a class [mg/(m²·a)], with the figure that says how it is known. */
export interface IndoorLimit extends ClassLimit<IndoorClass> {
  readonly figure: string
}

/** The limits for this metal weighed this way; empty where the knowledge has none. */
export function indoorLimits(
  coupon: Pick<Coupon, 'metal' | 'weighed'>,
  knowledge: Figures,
): readonly IndoorLimit[] {
  const named = indoorClasses.map((name) => ({ name, figure: limitId(coupon, name) }))
  const known = named.filter(({ figure }) => knowledge.figures[figure] !== undefined)
  return known.map((limit) => ({ ...limit, to: figureValue(knowledge, limit.figure) }))
}

function thickness(
  { metal, weighed }: Coupon,
  rate: Range,
  knowledge: Figures,
): Pick<CouponVerdict, 'thicknessNmPerYear' | 'assumes'> {
  const density = figureValue(knowledge, `density-${metal}`)
  if (weighed === 'loss')
    return { thicknessNmPerYear: each(rate, (loss) => thicknessNmPerYear(loss, density)), assumes: null }
  if (metal !== 'silver') return { thicknessNmPerYear: null, assumes: null }
  return {
    thicknessNmPerYear: each(rate, (gain) => thicknessNmPerYear(silverLossOfGainMgPerM2Year(gain), density)),
    assumes: 'silver-sulphide',
  }
}

/** What a coupon says of the air it hung in: its yearly rate with a range, every class it may lie in, the metal eaten. */
export function judgeCoupon(
  coupon: Coupon,
  knowledge: Figures,
): Outcome<CouponVerdict, readonly CouponRefusal[]> {
  const found = couponRate(coupon, figureValue(knowledge, methodFigure))
  if (!found.ok) return found
  const { rate } = found.value
  const limits = indoorLimits(coupon, knowledge)
  return given({
    ...found.value,
    coupon,
    classes: limits.length < indoorClasses.length ? null : classesOf(rate, limits),
    ...thickness(coupon, rate, knowledge),
    figures: [
      methodFigure,
      ...(limits.length < indoorClasses.length ? [] : limits.map(({ figure }) => figure)),
      `density-${coupon.metal}`,
    ],
  })
}
