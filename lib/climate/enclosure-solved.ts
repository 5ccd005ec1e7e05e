import { heldGPerPercent, passedGPerDayPercent, type Enclosure } from './enclosure.ts'
import { slopeGPerKgPercent, type Isotherm, type Span } from './isotherm.ts'
import { Solver } from './solver.mjs'

/** What a gel holds at a humidity and how fast that grows, at one temperature. */
export interface Sorption {
  /** Relative humidity [%] within which it is known; null where nowhere. */
  readonly known: Span | null
  readonly contentGPerKg: (rhPercent: number) => number
  readonly slopeGPerKgPercent: (rhPercent: number) => number
}

export interface Run {
  /** at-limit: it got there. at-end: it did not within the days given. beyond: it left what is known of the gel. */
  readonly ended: 'at-limit' | 'at-end' | 'beyond'
  readonly days: number
  readonly rhPercent: number
  /** Water that came in through gaps and walls until then [g]. */
  readonly cameInG: number
}

/**
 * Sorption of a gel with the same reservoir everywhere [Sorption].
 * @param reservoirGPerKgPercent [g/(kg·%)] of the gel
 * @source Thomson 1977
 * @valid spans over which the isotherm is straight
 * @agrees exact, by definition
 */
export function straightSorption(reservoirGPerKgPercent: number): Sorption {
  return {
    known: { from: -Infinity, to: Infinity },
    contentGPerKg: (rhPercent) => reservoirGPerKgPercent * rhPercent,
    slopeGPerKgPercent: () => reservoirGPerKgPercent,
  }
}

/**
 * Sorption of a gel by an isotherm at one temperature [Sorption].
 * @param isotherm [Isotherm] of the gel
 * @param temperatureC [°C] of the box
 * @source the isotherm
 * @valid where the isotherm is; one branch only
 * @agrees exact with the isotherm
 */
export function sorptionOf(isotherm: Isotherm, temperatureC: number): Sorption {
  return {
    known: isotherm.rhPercent(temperatureC),
    contentGPerKg: (rhPercent) => isotherm.contentGPerKg(rhPercent, temperatureC),
    slopeGPerKgPercent: (rhPercent) => slopeGPerKgPercent(isotherm, rhPercent, temperatureC),
  }
}

/** Short beside a season, so that no crossing of the limit hides within a step for longer than an afternoon. */
const longestStepDays = 8
const looksAStep = 16

/**
 * How a box fares with gel whose isotherm is bent, until it first reaches its limit [Run].
 * @param box [Enclosure] the closed box; its reservoir is left out of account
 * @param sorption [Sorption] of its gel
 * @param outsideRhPercent [%] relative humidity of the room by the day since the beginning
 * @param startRhPercent [%] inside, at the beginning
 * @param limitRhPercent [%] where to stop
 * @param days [d] where to stop at the latest
 * @source balance of water of air and gel, integrated by extrapolation (Hairer, Nørsett & Wanner, ODEX)
 * @valid one temperature, gel well mixed and much faster than the leak, one branch of the isotherm
 * @agrees 0.1 % with the closed solutions where the isotherm is straight
 * @differs a limit reached for less than half a day may be passed over
 */
export function solveEnclosure(
  box: Enclosure,
  sorption: Sorption,
  outsideRhPercent: (day: number) => number,
  startRhPercent: number,
  limitRhPercent: number,
  days: number,
): Run {
  const stop = (ended: Run['ended'], at: number, rhPercent: number, cameInG: number): Run => ({
    ended,
    days: at,
    rhPercent,
    cameInG,
  })
  const { known } = sorption
  if (known === null || !(startRhPercent >= known.from && startRhPercent <= known.to))
    return stop('beyond', 0, startRhPercent, 0)
  if (startRhPercent >= limitRhPercent) return stop('at-limit', 0, startRhPercent, 0)

  const airGPerPercent = heldGPerPercent({ ...box, gelKg: 0 })
  const passed = passedGPerDayPercent(box)
  const top = Math.min(limitRhPercent, known.to)
  let run = stop('at-end', 0, startRhPercent, 0)
  const solver = new Solver(2)
  solver.denseOutput = true
  solver.relativeTolerance = 1e-9
  solver.absoluteTolerance = 1e-9
  solver.maxStepSize = longestStepDays
  solver.maxSteps = Number.MAX_SAFE_INTEGER
  solver.solve(
    (day, [rh]) => {
      const inflow = passed * (outsideRhPercent(day) - rh!)
      // The solver tries steps past the end of what is known; those that end there are thrown away below.
      const slope = sorption.slopeGPerKgPercent(Math.min(Math.max(rh!, known.from), known.to))
      return [inflow / (airGPerPercent + box.gelKg * slope), inflow]
    },
    0,
    [startRhPercent, 0],
    days,
    (count, before, day, [rh, cameIn], within) => {
      if (count === 1) return true
      const up = crossing(before, day, (at) => within(0, at) - top)
      const down = crossing(before, day, (at) => known.from - within(0, at))
      if (up === null && down === null) run = stop('at-end', day, rh!, cameIn!)
      else {
        const at = Math.min(up ?? Infinity, down ?? Infinity)
        const ended = at === up && top === limitRhPercent ? 'at-limit' : 'beyond'
        run = stop(ended, at, within(0, at), within(1, at))
      }
      return run.ended === 'at-end'
    },
  )
  return run
}

/** Where a function first comes up to zero between two days; null where it stays below. */
function crossing(from: number, to: number, above: (at: number) => number): number | null {
  for (let look = 1; look <= looksAStep; look += 1) {
    let [low, high] = [
      from + ((to - from) * (look - 1)) / looksAStep,
      from + ((to - from) * look) / looksAStep,
    ]
    if (above(high) < 0) continue
    while (high - low > 1e-9 * (1 + high)) {
      const middle = (low + high) / 2
      if (above(middle) < 0) low = middle
      else high = middle
    }
    return high
  }
  return null
}
