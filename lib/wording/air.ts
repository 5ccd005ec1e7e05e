import type { CouponVerdict, IndoorClass } from '../boxes/air-coupon.ts'
import type { OutdoorClass, OutdoorVerdict } from '../boxes/air-outdoors.ts'
import type { Range } from '../base/range.ts'
import type { CouponRefusal } from '../climate/coupon.ts'
import type { Classes } from '../climate/corrosivity-class.ts'
import type { OutdoorRefusal } from '../climate/corrosivity-outdoor.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { countWords, listWords } from './list.ts'

const indoorWords: Readonly<Record<IndoorClass, string>> = {
  IC1: 'very low',
  IC2: 'low',
  IC3: 'medium',
  IC4: 'high',
  IC5: 'very high',
}
const outdoorWords: Readonly<Record<OutdoorClass, string>> = {
  C1: 'very low',
  C2: 'low',
  C3: 'medium',
  C4: 'high',
  C5: 'very high',
  CX: 'extreme',
}

/** A rate is known to three digits at best. */
const rateShown = (value: number) => value.toLocaleString('en-GB', { maximumSignificantDigits: 3 })

const rangeWords = ({ low, nominal, high }: Range, unit: string) =>
  `${rateShown(nominal)} ${unit} (between ${rateShown(low)} and ${rateShown(high)})`

function classWords<Name extends string>(
  { all }: Classes<Name>,
  words: Readonly<Record<Name, string>>,
  above: string,
): string {
  const named = all.map((name) => (name === 'beyond' ? above : `${name} (${words[name]})`))
  return listWords(named, 'or')
}

const fromMemory = (ids: readonly string[], { figures }: Pick<Knowledge, 'figures'>) =>
  ids.some((id) => figures[id]?.known === 'memory')

/** A result in a line, and what has to be said with it: every line belongs to the result and none is folded away. */
export interface AirWords {
  readonly headline: string
  readonly lines: readonly string[]
}

function eaten({ thicknessNmPerYear, assumes }: CouponVerdict): readonly string[] {
  if (thicknessNmPerYear === null)
    return ['How much metal that took is not told by a gain: it hangs on what the metal turned into.']
  const taken = assumes === 'silver-sulphide' ? ', taking the tarnish for silver sulphide' : ''
  return [`That is ${rangeWords(thicknessNmPerYear, 'nanometres of metal a year')}${taken}.`]
}

/** What a coupon says of the air it hung in. */
export function couponWords(verdict: CouponVerdict, knowledge: Pick<Knowledge, 'figures'>): AirWords {
  const { coupon, classes, rate } = verdict
  const headline =
    classes === null
      ? `No class for ${coupon.metal}: the standard has limits for it, and we do not know them. We do not guess.`
      : classes.all.length === 1
        ? `Class ${classWords(classes, indoorWords, 'above IC5')} by the ${coupon.metal} coupon.`
        : `Class ${classWords(classes, indoorWords, 'above IC5')} by the ${coupon.metal} coupon: too near a limit to say which.`
  const way = coupon.weighed === 'gain' ? 'heavier' : 'lighter'
  return {
    headline,
    lines: [
      `It became ${way} by ${rangeWords(rate, 'mg/m² a year')}.`,
      ...eaten(verdict),
      ...(verdict.withinWeighingError
        ? ['The balance cannot tell this change from none: weigh a larger coupon, or leave it longer.']
        : []),
      ...(verdict.notAYear
        ? [
            `It hung for ${countWords(Math.round(coupon.days), 'day')}, and the classes are for a year: metals mostly corrode faster at first.`,
          ]
        : []),
      ...(classes !== null && fromMemory(verdict.figures, knowledge)
        ? [
            'The limits of the classes are from memory. Check them against the standard before anything rests on them.',
          ]
        : []),
    ],
  }
}

export function couponRefusalWords(refusal: CouponRefusal): string {
  switch (refusal.code) {
    case 'not-positive':
      return refusal.quantity === 'areaM2'
        ? 'The area of the coupon must be more than nothing: count every face that the air reached.'
        : 'The days it hung must be more than none.'
    case 'not-a-number':
      return refusal.quantity === 'changeMg'
        ? 'The change of mass is no number.'
        : 'The error of the weighing must be a number, none or more.'
    case 'changed-the-other-way':
      return 'It changed the other way by more than the balance errs: flakes may have fallen off, or it was touched. Hang a new one.'
  }
}

const outdoorUnit = {
  'micrometre-per-year': 'µm in the first year',
  'gram-per-square-metre-year': 'g/m² in the first year',
} as const

/** What a year of outdoor air does to one bare metal. */
export function outdoorVerdictWords(
  { metal, unit, loss, classes, figures }: OutdoorVerdict,
  knowledge: Pick<Knowledge, 'figures'>,
): AirWords {
  const mildest =
    metal === 'aluminium' && classes.from === 'C2'
      ? ' Milder than that the standard does not tell apart.'
      : ''
  return {
    headline: `Outdoors, bare ${metal}: class ${classWords(classes, outdoorWords, 'above CX')}.${mildest}`,
    lines: [
      `Estimated ${rangeWords(loss, outdoorUnit[unit])}.`,
      ...(fromMemory(figures, knowledge)
        ? [
            'Some of these limits are from memory. Check them against the standard before anything rests on them.',
          ]
        : []),
    ],
  }
}

const outdoorQuantities: Readonly<Record<string, string>> = {
  temperatureC: 'mean temperature [°C]',
  rhPercent: 'mean relative humidity [%]',
  so2MgPerM2Day: 'sulphur dioxide settling [mg/m² a day]',
  chlorideMgPerM2Day: 'chloride settling [mg/m² a day]',
}

export function outdoorRefusalWords(refusal: OutdoorRefusal): string {
  if (refusal.code === 'not-outdoors')
    return 'These equations are for rain, sun and wind. Of a store, a case or a dry box they say nothing: hang coupons there.'
  const name = outdoorQuantities[refusal.quantity] ?? refusal.quantity
  return `The ${name} is ${refusal.value}; the equations were fitted from ${refusal.from} to ${refusal.to} and say nothing beyond.`
}
