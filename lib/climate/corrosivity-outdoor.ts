import { given, refused, type Outcome } from '../base/outcome.ts'
import type { Range } from '../base/range.ts'
import { outside, type OutOfValidity } from './out-of-validity.ts'

export const outdoorMetals = ['steel', 'zinc', 'copper', 'aluminium'] as const
export type OutdoorMetal = (typeof outdoorMetals)[number]

/** A year of outdoor air: means, and what settles on a surface. */
export interface OutdoorAir {
  readonly temperatureC: number
  readonly rhPercent: number
  readonly so2MgPerM2Day: number
  readonly chlorideMgPerM2Day: number
}

/** Where the functions were fitted, quantity by quantity. */
export type FitRanges = Readonly<Record<keyof OutdoorAir, { readonly from: number; readonly to: number }>>

interface DoseResponse {
  readonly so2: readonly [factor: number, power: number, ofRh: number]
  /** Slope over temperature up to 10 °C, and above. */
  readonly slopes: readonly [cool: number, warm: number]
  readonly chloride: readonly [factor: number, power: number, ofRh: number, ofTemperature: number]
}

const responses: Readonly<Record<OutdoorMetal, DoseResponse>> = {
  steel: { so2: [1.77, 0.52, 0.02], slopes: [0.15, -0.054], chloride: [0.102, 0.62, 0.033, 0.04] },
  zinc: { so2: [0.0129, 0.44, 0.046], slopes: [0.038, -0.071], chloride: [0.0175, 0.57, 0.008, 0.085] },
  copper: { so2: [0.0053, 0.26, 0.059], slopes: [0.126, -0.08], chloride: [0.01025, 0.27, 0.036, 0.049] },
  aluminium: { so2: [0.0042, 0.73, 0.025], slopes: [0.009, -0.043], chloride: [0.0018, 0.6, 0.02, 0.094] },
}

/**
 * Corrosion of bare metal in its first year outdoors [µm/a; for aluminium g/(m²·a)].
 * @param metal [name] the metal
 * @param air [°C, %, mg/(m²·d)] yearly means of temperature and humidity, deposition of sulphur dioxide and chloride
 * @source ISO 9223:2012, dose-response functions, as transcribed in public code
 * @valid outdoors within the ranges of outdoorLoss; the bare formula does not ask
 * @agrees 0.01 % with 31.1714 µm/a for steel at 10 °C, 75 %, 10 and 5 mg/(m²·d), computed apart
 */
export function outdoorLossPerYear(metal: OutdoorMetal, air: OutdoorAir): number {
  const { so2, slopes, chloride } = responses[metal]
  const { temperatureC, rhPercent, so2MgPerM2Day, chlorideMgPerM2Day } = air
  const ofTemperature = slopes[temperatureC <= 10 ? 0 : 1] * (temperatureC - 10)
  return (
    so2[0] * so2MgPerM2Day ** so2[1] * Math.exp(so2[2] * rhPercent + ofTemperature) +
    chloride[0] *
      chlorideMgPerM2Day ** chloride[1] *
      Math.exp(chloride[2] * rhPercent + chloride[3] * temperatureC)
  )
}

export type OutdoorRefusal =
  /** The functions were made for rain, sun and wind: of a store they say nothing. */
  { readonly code: 'not-outdoors' } | ({ readonly code: 'out-of-range' } & OutOfValidity)

/** Share by which the truth may lie below and above the estimate [%]. */
export interface Spread {
  readonly belowPercent: number
  readonly abovePercent: number
}

/**
 * The same with its range [µm/a; for aluminium g/(m²·a)], or every reason why the standard does not answer.
 * @param metal [name] the metal
 * @param air [°C, %, mg/(m²·d)] a year of outdoor air
 * @param place [outdoors | indoors] where the air is
 * @param ranges [°C, %, mg/(m²·d)] where the functions were fitted
 * @param spread [%] how far the truth may lie off
 * @source ISO 9223:2012, dose-response functions and their level of uncertainty
 * @valid outdoors, within the ranges handed in: never a store, a case or a dry box
 * @agrees exact with outdoorLossPerYear in the middle
 */
export function outdoorLoss(
  metal: OutdoorMetal,
  air: OutdoorAir,
  place: 'outdoors' | 'indoors',
  ranges: FitRanges,
  spread: Spread,
): Outcome<Range, readonly OutdoorRefusal[]> {
  if (place === 'indoors') return refused([{ code: 'not-outdoors' }])
  const names = ['temperatureC', 'rhPercent', 'so2MgPerM2Day', 'chlorideMgPerM2Day'] as const
  const asked = names.map((quantity) => ({
    quantity,
    value: air[quantity],
    ...ranges[quantity],
    source: 'iso-9223-2012',
  }))
  const beyond = outside(asked)
  if (beyond.length > 0) return refused(beyond.map((one) => ({ code: 'out-of-range', ...one }) as const))
  const nominal = outdoorLossPerYear(metal, air)
  return given({
    low: nominal * (1 - spread.belowPercent / 100),
    nominal,
    high: nominal * (1 + spread.abovePercent / 100),
  })
}
