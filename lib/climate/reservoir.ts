import type { Isotherm, Span } from './isotherm.ts'

/**
 * Specific moisture reservoir of a gel over a span of humidity [g/(kg·%)]; NaN where the isotherm does not hold.
 * @param isotherm [Isotherm] of the gel, on the branch it will go
 * @param fromRhPercent [%] one end
 * @param toRhPercent [%] the other end
 * @param temperatureC [°C] of the gel
 * @source Thomson 1977: water taken up per kilogram and percent of relative humidity
 * @valid where the isotherm is; one branch only, so that it holds for gel that goes one way
 * @agrees exact with the isotherm at both ends
 */
export function reservoirGPerKgPercent(
  isotherm: Isotherm,
  fromRhPercent: number,
  toRhPercent: number,
  temperatureC: number,
): number {
  const taken =
    isotherm.contentGPerKg(toRhPercent, temperatureC) - isotherm.contentGPerKg(fromRhPercent, temperatureC)
  return taken / (toRhPercent - fromRhPercent)
}

/**
 * Whether a span of humidity touches the loop where gel that dries holds more than gel that dampens [code]: 'hysteresis', or
 * null. There a box that goes to and fro has less of a reservoir than the branch says.
 * @param fromRhPercent [%] one end of the span
 * @param toRhPercent [%] the other end
 * @param loopRhPercent [%] where the loop lies
 * @source Pöllmann 2022 for where it lies
 * @valid regular-density silica gel
 * @agrees exact, by definition
 */
export function hysteresisCaution(
  fromRhPercent: number,
  toRhPercent: number,
  loopRhPercent: Span,
): 'hysteresis' | null {
  const [low, high] = [Math.min(fromRhPercent, toRhPercent), Math.max(fromRhPercent, toRhPercent)]
  return low < loopRhPercent.to && high > loopRhPercent.from ? 'hysteresis' : null
}
