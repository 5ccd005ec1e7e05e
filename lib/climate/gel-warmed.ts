import { samePotentialRhPercent, toth } from './isotherm-equations.ts'
import { rhAtOtherTemperaturePercent } from './isotherm.ts'

/** What published laws say, lowest and highest [%]. */
export interface BetweenLaws {
  readonly lowPercent: number
  readonly highPercent: number
  /** How many of the two laws reach there. */
  readonly laws: number
}

/**
 * Relative humidity in a closed box with plenty of dry gel after it was warmed or cooled [%]: by both laws, which disagree
 * about the way it goes; null where neither holds.
 * @param rhPercent [%] in the box before, air and gel at rest with each other
 * @param fromC [°C] temperature before
 * @param toC [°C] temperature after
 * @source potential theory as in samePotentialRhPercent, and the Tóth equation of Wang & LeVan 2009, content unchanged
 * @valid 5 to 40 °C, or where Tóth holds; up to 40 %, where water sits in the small pores; so much gel that its air counts for nothing
 * @agrees exact with the two laws; 14.0 and 15.7 % for 15 % taken from 20 to 10 °C
 */
export function rhOverWarmedGelPercent(rhPercent: number, fromC: number, toC: number): BetweenLaws | null {
  if (!(rhPercent >= 0 && rhPercent <= 40)) return null
  const told = [
    samePotentialRhPercent(rhPercent, fromC, toC),
    rhAtOtherTemperaturePercent(toth, rhPercent, fromC, toC),
  ].filter((percent) => !Number.isNaN(percent))
  return told.length === 0
    ? null
    : { lowPercent: Math.min(...told), highPercent: Math.max(...told), laws: told.length }
}
