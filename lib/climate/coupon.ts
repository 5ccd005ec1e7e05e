import { given, refused, type Outcome } from '../base/outcome.ts'
import type { Range } from '../base/range.ts'

export const couponMetals = ['steel', 'zinc', 'copper', 'silver', 'lead'] as const
export type CouponMetal = (typeof couponMetals)[number]

/** Weighed with its corrosion on it, or after that was taken off. */
export type Weighed = 'gain' | 'loss'

/** A small clean plate of metal, weighed, hung in the air of a store, and weighed again. */
export interface Coupon {
  readonly metal: CouponMetal
  readonly weighed: Weighed
  /** How much heavier, or for a loss how much lighter, it has become [mg]. */
  readonly changeMg: number
  /** ± of that difference, both weighings together [mg]. */
  readonly weighingErrorMg: number
  /** All faces that the air reached [m²]. */
  readonly areaM2: number
  readonly days: number
}

export type CouponRefusal =
  | { readonly code: 'not-positive'; readonly quantity: 'areaM2' | 'days'; readonly value: number }
  | {
      readonly code: 'not-a-number'
      readonly quantity: 'changeMg' | 'weighingErrorMg'
      readonly value: number
    }
  /** It changed the other way by more than the balance errs: flakes fell off, or it was touched. */
  | { readonly code: 'changed-the-other-way'; readonly changeMg: number; readonly weighingErrorMg: number }

export interface CouponRate {
  /** [mg/(m²·a)], with the weighing error and the uncertainty of the method. */
  readonly rate: Range
  /** The balance cannot tell the change from none. */
  readonly withinWeighingError: boolean
  /** Hung for so much less or more than a year that the yearly rate is a guess. */
  readonly notAYear: boolean
}

/** Rates are for the first year, which counts 365 days. */
const yearDays = 365
/** Our own caution: within a month of a year is a year. */
const aboutAYearDays = 30

/**
 * Yearly change of mass of a square metre of metal [mg/(m²·a)].
 * @param changeMg [mg] gain or loss of the coupon
 * @param areaM2 [m²] all faces that the air reached
 * @param days [d] how long it hung there
 * @source definition of the rate of corrosion, change over area and time
 * @valid about a year: in shorter times most metals corrode faster at first; NaN for no area or no time
 * @agrees exact with 93.75 for 0.30 mg on 0.0032 m² in 365 days
 */
export function couponRateMgPerM2Year(changeMg: number, areaM2: number, days: number): number {
  return areaM2 > 0 && days > 0 ? (changeMg / areaM2) * (yearDays / days) : Number.NaN
}

/**
 * Thickness of metal that a loss of mass stands for [nm/a].
 * @param lossMgPerM2Year [mg/(m²·a)] loss, corrosion taken off
 * @param densityGPerCm3 [g/cm³] of the metal
 * @source loss over density
 * @valid even corrosion: pits go deeper; NaN for no density
 * @agrees 0.1 % with 5.58 nm/a for 50 mg/(m²·a) of copper
 */
export function thicknessNmPerYear(lossMgPerM2Year: number, densityGPerCm3: number): number {
  return densityGPerCm3 > 0 ? lossMgPerM2Year / densityGPerCm3 : Number.NaN
}

/** Masses of a mole [g/mol], conventional values of 2021. */
const silverGPerMol = 107.8682
const sulphurGPerMol = 32.06

/**
 * Loss of silver that a gain stands for where the tarnish is silver sulphide [mg/(m²·a)].
 * @param gainMgPerM2Year [mg/(m²·a)] gain of a silver coupon
 * @source stoichiometry of Ag₂S: the sulphur taken up is 0.1486 of the silver lost
 * @valid tarnish of silver sulphide alone; with chloride in it the loss is less
 * @agrees 0.0001 % with the fraction 0.148607; 1 % with gain over loss of the remembered limits of ISO 11844-1
 */
export function silverLossOfGainMgPerM2Year(gainMgPerM2Year: number): number {
  return (gainMgPerM2Year * 2 * silverGPerMol) / sulphurGPerMol
}

function faults(coupon: Coupon): readonly CouponRefusal[] {
  const { changeMg, weighingErrorMg, areaM2, days } = coupon
  const wrong: CouponRefusal[] = []
  if (!(areaM2 > 0)) wrong.push({ code: 'not-positive', quantity: 'areaM2', value: areaM2 })
  if (!(days > 0)) wrong.push({ code: 'not-positive', quantity: 'days', value: days })
  if (!Number.isFinite(changeMg)) wrong.push({ code: 'not-a-number', quantity: 'changeMg', value: changeMg })
  if (!(weighingErrorMg >= 0))
    wrong.push({ code: 'not-a-number', quantity: 'weighingErrorMg', value: weighingErrorMg })
  if (changeMg < -weighingErrorMg) wrong.push({ code: 'changed-the-other-way', changeMg, weighingErrorMg })
  return wrong
}

/**
 * Yearly rate of a coupon with the range it may lie in [mg/(m²·a)], or every reason why there is none.
 * @param coupon [mg, m², d] what was hung and weighed
 * @param methodPercent [%] ± of the method itself, beside the balance
 * @source couponRateMgPerM2Year, both errors at their worst; nothing corrodes backwards, so the range ends at 0
 * @valid any coupon whose change points the way it was weighed for
 * @agrees exact with couponRateMgPerM2Year in the middle
 */
export function couponRate(
  coupon: Coupon,
  methodPercent: number,
): Outcome<CouponRate, readonly CouponRefusal[]> {
  const wrong = faults(coupon)
  if (wrong.length > 0) return refused(wrong)
  const { changeMg, weighingErrorMg, areaM2, days } = coupon
  const rateOf = (mg: number) => Math.max(0, couponRateMgPerM2Year(mg, areaM2, days))
  return given({
    rate: {
      low: rateOf(changeMg - weighingErrorMg) * (1 - methodPercent / 100),
      nominal: rateOf(changeMg),
      high: rateOf(changeMg + weighingErrorMg) * (1 + methodPercent / 100),
    },
    withinWeighingError: changeMg <= weighingErrorMg,
    notAYear: Math.abs(days - yearDays) > aboutAYearDays,
  })
}
