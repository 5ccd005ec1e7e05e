export interface Span {
  readonly from: number
  readonly to: number
}

/** The same span, ends drawn in by less than any instrument reads, so that converting to and fro does not step outside. */
const drawnIn = ({ from, to }: Span): Span => ({ from: from * (1 + 1e-12), to: to * (1 - 1e-12) })

/** How much water a gel holds at rest with air of a humidity; published, and no further than it was published for. */
export interface Isotherm {
  readonly id: string
  /** The work it stands in. */
  readonly work: string
  readonly temperatureC: Span
  /** Relative humidity [%] it holds for at a temperature; null where it holds for none. */
  readonly rhPercent: (temperatureC: number) => Span | null
  /** Water [g per kg of dry gel]; NaN where it does not hold. */
  readonly contentGPerKg: (rhPercent: number, temperatureC: number) => number
}

/**
 * Relative humidity over a gel that holds so much water [%]; NaN where the isotherm does not reach that far.
 * @param isotherm [Isotherm] of the gel
 * @param contentGPerKg [g/kg] water per kg of dry gel
 * @param temperatureC [°C] of the gel
 * @source the isotherm read backwards
 * @valid where the isotherm is
 * @agrees 0.000001 % with the isotherm read forwards
 */
export function rhOfContentPercent(isotherm: Isotherm, contentGPerKg: number, temperatureC: number): number {
  const span = isotherm.rhPercent(temperatureC)
  if (span === null) return Number.NaN
  let { from, to } = drawnIn(span)
  const holds = (rh: number) => isotherm.contentGPerKg(rh, temperatureC)
  if (!(contentGPerKg >= holds(from) * (1 - 1e-9) && contentGPerKg <= holds(to) * (1 + 1e-9)))
    return Number.NaN
  for (let halvings = 0; halvings < 60; halvings += 1) {
    const middle = (from + to) / 2
    if (holds(middle) < contentGPerKg) from = middle
    else to = middle
  }
  return (from + to) / 2
}

/**
 * How much more a gel takes up for a little more humidity [g/(kg·%)]; NaN where the isotherm does not hold.
 * @param isotherm [Isotherm] of the gel
 * @param rhPercent [%] relative humidity of the air
 * @param temperatureC [°C] of the gel
 * @source slope of the isotherm, by differences
 * @valid where the isotherm is
 * @agrees 0.001 % with the slope of the equation
 */
export function slopeGPerKgPercent(isotherm: Isotherm, rhPercent: number, temperatureC: number): number {
  const span = isotherm.rhPercent(temperatureC)
  if (span === null || !(rhPercent >= span.from && rhPercent <= span.to)) return Number.NaN
  const { from, to } = drawnIn(span)
  const below = Math.max(from, rhPercent - 1e-3)
  const above = Math.min(to, rhPercent + 1e-3)
  const taken = isotherm.contentGPerKg(above, temperatureC) - isotherm.contentGPerKg(below, temperatureC)
  return taken / (above - below)
}

/**
 * Relative humidity over gel that is warmed or cooled and keeps its water [%]; NaN where the isotherm does not hold.
 * @param isotherm [Isotherm] of the gel
 * @param rhPercent [%] before
 * @param temperatureC [°C] before
 * @param toTemperatureC [°C] after
 * @source the isotherm at both temperatures, content unchanged
 * @valid where the isotherm is, at both temperatures; a closed box with so much gel that its air counts for nothing
 * @agrees 2 % of relative humidity between the equations for 10 °C of change at 15 %
 */
export function rhAtOtherTemperaturePercent(
  isotherm: Isotherm,
  rhPercent: number,
  temperatureC: number,
  toTemperatureC: number,
): number {
  return rhOfContentPercent(isotherm, isotherm.contentGPerKg(rhPercent, temperatureC), toTemperatureC)
}
