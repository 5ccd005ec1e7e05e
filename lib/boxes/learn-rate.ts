import { heldGPerPercent, passedGPerDayPercent } from '../climate/enclosure.ts'
import type { ClosedBox, Range } from './box.ts'
import { equalValues, logDensity, logSpreadOf, momentsOf, spreadOf, type Spread } from './learn-spread.ts'
import type { Character } from './learn-state.ts'

/** The pace of a box and its air exchange: sightings tell the pace, the reservoir of the gel stands between the two. */
export interface Paces {
  readonly airChanges: Spread
  /** Air changes a day for a pace of 1/d, one for each value the reservoir may have. */
  readonly perRate: readonly number[]
  readonly slowest: number
  readonly fastest: number
}

/** So far out a rate is still looked for: five standard deviations. */
const outermost = 5
/** Nothing is written more exactly than this, in parts of itself. */
const leastSpread = 0.02

/** Reservoirs are measured from dry to where gel is spent, and are right about here [%]. */
const reservoirAtPercent = 10

export function pacesOf(box: ClosedBox, airChangesPerDay: Range, { bendPerTenPercent }: Character): Paces {
  const written = logSpreadOf(airChangesPerDay)
  const airChanges = {
    nominal: written.nominal,
    below: Math.max(leastSpread, written.below),
    above: Math.max(leastSpread, written.above),
  }
  const drier = Math.max(0, reservoirAtPercent - momentsOf(spreadOf(box.startRhPercent)).mean) / 10
  const atStart = 1 + momentsOf(spreadOf(bendPerTenPercent)).mean * drier
  const perRate = equalValues(logSpreadOf(box.reservoirGPerKgPercent)).map((log) => {
    const enclosure = { ...box, reservoirGPerKgPercent: Math.exp(log) * atStart, airChangesPerDay: 1 }
    return heldGPerPercent(enclosure) / passedGPerDayPercent(enclosure)
  })
  return {
    airChanges,
    perRate,
    slowest: Math.exp(airChanges.nominal - outermost * airChanges.below) / Math.max(...perRate),
    fastest: Math.exp(airChanges.nominal + outermost * airChanges.above) / Math.min(...perRate),
  }
}

/** How likely the logarithm of a rate is beforehand, up to a constant: all values of the reservoir together. */
export function priorOfRate({ airChanges, perRate }: Paces, logRate: number): number {
  return Math.log(
    perRate.reduce((sum, per) => sum + Math.exp(logDensity(airChanges, logRate + Math.log(per))), 0),
  )
}

/** The air exchanges that go with a rate, and how likely each is. */
export function airChangesAt(
  { airChanges, perRate }: Paces,
  ratePerDay: number,
): readonly (readonly [number, number])[] {
  const values = perRate.map((per): readonly [number, number] => {
    const value = ratePerDay * per
    return [value, Math.exp(logDensity(airChanges, Math.log(value)))]
  })
  const total = values.reduce((sum, [, weight]) => sum + weight, 0)
  return total > 0
    ? values.map(([value, weight]) => [value, weight / total])
    : values.map(([value]) => [value, 1 / values.length])
}
