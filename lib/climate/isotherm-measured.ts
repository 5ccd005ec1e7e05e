import { potentialTheoryC, samePotentialRhPercent } from './isotherm-equations.ts'
import type { Isotherm } from './isotherm.ts'
import { saturationOverWaterPa } from './saturation.ts'

/** One branch of a measured isotherm, as printed: pressure of the vapour [Pa] and water [g per kg of dry gel], rising. */
export interface MeasuredBranch {
  readonly id: string
  readonly work: string
  readonly temperatureC: number
  readonly points: readonly (readonly [pressurePa: number, waterGPerKg: number])[]
}

/** Slopes at the points by which a curve through rising points rises everywhere: weighted harmonic means of the chords. */
function slopesAt(x: readonly number[], y: readonly number[]): number[] {
  const widths = x.slice(1).map((to, at) => to - x[at]!)
  const chords = widths.map((width, at) => (y[at + 1]! - y[at]!) / width)
  return x.map((_, at) => {
    const [before, after] = [chords[at - 1], chords[at]]
    if (before === undefined) return after!
    if (after === undefined) return before
    if (before * after <= 0) return 0
    const [first, second] = [2 * widths[at]! + widths[at - 1]!, widths[at]! + 2 * widths[at - 1]!]
    return (first + second) / (first / before + second / after)
  })
}

/** The monotone cubic of Fritsch and Carlson through rising points; NaN outside them. */
function curveThrough(x: readonly number[], y: readonly number[]): (at: number) => number {
  const slopes = slopesAt(x, y)
  return (at) => {
    if (!(at >= x[0]! && at <= x.at(-1)!)) return Number.NaN
    const right = Math.max(
      1,
      x.findIndex((end) => end >= at),
    )
    const left = right - 1
    const width = x[right]! - x[left]!
    const t = (at - x[left]!) / width
    const [t2, t3] = [t * t, t * t * t]
    return (
      (2 * t3 - 3 * t2 + 1) * y[left]! +
      (t3 - 2 * t2 + t) * width * slopes[left]! +
      (3 * t2 - 2 * t3) * y[right]! +
      (t3 - t2) * width * slopes[right]!
    )
  }
}

/**
 * A measured branch as an isotherm [Isotherm]: through its points and rising everywhere between them.
 * @param branch [MeasuredBranch] points as printed
 * @source monotone cubic interpolation (Fritsch & Carlson 1980); other temperatures by samePotentialRhPercent
 * @valid between the first and the last point, 5 to 40 °C; NaN outside
 * @agrees exact at the points
 */
export function measuredIsotherm(branch: MeasuredBranch): Isotherm {
  const { id, work, temperatureC: measuredAt } = branch
  const movable = measuredAt >= potentialTheoryC.from && measuredAt <= potentialTheoryC.to
  const saturation = saturationOverWaterPa(measuredAt)
  const humidities = branch.points.map(([pressurePa]) => (100 * pressurePa) / saturation)
  const [first, last] = [humidities[0]!, humidities.at(-1)!]
  const curve = curveThrough(
    humidities,
    branch.points.map(([, water]) => water),
  )
  const here = (rhPercent: number, temperatureC: number) =>
    temperatureC === measuredAt ? rhPercent : samePotentialRhPercent(rhPercent, temperatureC, measuredAt)
  return {
    id,
    work,
    temperatureC: movable ? potentialTheoryC : { from: measuredAt, to: measuredAt },
    rhPercent: (temperatureC) => {
      if (temperatureC === measuredAt) return { from: first, to: last }
      const [from, to] = [first, last].map((rh) => samePotentialRhPercent(rh, measuredAt, temperatureC))
      return Number.isNaN(from) ? null : { from: from!, to: to! }
    },
    contentGPerKg: (rhPercent, temperatureC) => curve(here(rhPercent, temperatureC)),
  }
}
