import type { Quantiles, Range } from '../base/range.ts'
import { timeConstantDays } from './enclosure.ts'
import { gelKgForSpan, seasonalGelKgForSpan } from './gel-mass.ts'
import { seasonalDaysToLimit } from './seasonal.ts'
import { quantilesOf, type Uncertain } from './uncertain.ts'

/** A closed box in its room, as well as it is known. */
export interface UncertainBox {
  readonly volumeL: number
  readonly gelKg: number
  readonly reservoirGPerKgPercent: Range
  readonly airChangesPerDay: Range
  readonly wallGPerDayKPa?: number
  readonly temperatureC: number
  readonly startRhPercent: Range
  /** The day it begins, counted as `highestOnDay` counts. */
  readonly startDay: number
  readonly room: {
    readonly meanRhPercent: Range
    /** 0 for a room that stays as it is. */
    readonly swingRhPercent: number
    readonly highestOnDay: number
  }
}

const quantitiesOf = (box: UncertainBox): readonly Uncertain[] => [
  { range: box.airChangesPerDay, spreads: 'size' },
  { range: box.reservoirGPerKgPercent, spreads: 'size' },
  { range: box.room.meanRhPercent, spreads: 'percent' },
  { range: box.startRhPercent, spreads: 'percent' },
]

function drawn(box: UncertainBox, values: readonly number[]) {
  const [airChangesPerDay, reservoirGPerKgPercent, meanRhPercent, startRhPercent] = values as [
    number,
    number,
    number,
    number,
  ]
  return {
    enclosure: { ...box, airChangesPerDay, reservoirGPerKgPercent },
    season: { ...box.room, meanRhPercent },
    startRhPercent,
  }
}

const nominalOf = (box: UncertainBox) =>
  drawn(
    box,
    quantitiesOf(box).map(({ range }) => range.nominal),
  )

type Drawn = ReturnType<typeof drawn>

const daysFor = (
  box: UncertainBox,
  { enclosure, season, startRhPercent }: Drawn,
  limitRhPercent: number,
): number =>
  seasonalDaysToLimit(timeConstantDays(enclosure), season, startRhPercent, box.startDay, limitRhPercent) ??
  Infinity

function kgFor(
  box: UncertainBox,
  { enclosure, season, startRhPercent }: Drawn,
  limitRhPercent: number,
  days: number,
) {
  const kg =
    season.swingRhPercent === 0
      ? gelKgForSpan(enclosure, season.meanRhPercent, startRhPercent, limitRhPercent, days)
      : seasonalGelKgForSpan(enclosure, season, startRhPercent, box.startDay, limitRhPercent, days)
  return kg ?? Infinity
}

/**
 * Days until a box reaches its limit, as well as they can be told [d]; Infinity where it never does.
 * @param box [UncertainBox] in its room
 * @param limitRhPercent [%] the highest its contents bear
 * @source seasonalDaysToLimit over the ranges, by quantilesOf
 * @valid as seasonalDaysToLimit; air exchange and reservoir spread as sizes, humidities as percentages, all independent
 * @agrees 2 % with the exact quantiles
 */
export function daysToLimitSpread(
  box: UncertainBox,
  limitRhPercent: number,
): Quantiles & { readonly nominal: number } {
  const spread = quantilesOf(quantitiesOf(box), (values) => daysFor(box, drawn(box, values), limitRhPercent))
  return { ...spread, nominal: daysFor(box, nominalOf(box), limitRhPercent) }
}

/**
 * Dry gel that keeps a box at or below its limit for a span, as well as it can be told [kg]; Infinity where no amount does.
 * @param box [UncertainBox] in its room; whatever gel it has is left out of account
 * @param limitRhPercent [%] the highest its contents bear
 * @param days [d] how long it is to hold
 * @source gelKgForSpan and seasonalGelKgForSpan over the ranges, by quantilesOf
 * @valid as daysToLimitSpread
 * @agrees 2 % with the exact quantiles
 */
export function gelKgSpread(
  box: UncertainBox,
  limitRhPercent: number,
  days: number,
): Quantiles & { readonly nominal: number } {
  const spread = quantilesOf(quantitiesOf(box), (values) =>
    kgFor(box, drawn(box, values), limitRhPercent, days),
  )
  return { ...spread, nominal: kgFor(box, nominalOf(box), limitRhPercent, days) }
}
