import { given, refused, type Outcome } from '../base/outcome.ts'
import { fixedPoint, type FixedPoint, type Salt } from './fixed-points.ts'

/** What a logger read after it had stood over a salt long enough to settle. */
export interface SaltReading {
  readonly salt: Salt
  readonly temperatureC: number
  readonly readPercent: number
}

/** True relative humidity = offset + slope · read. One salt gives the offset alone, two give both. */
export interface Correction {
  readonly offsetPercent: number
  readonly slope: number
  readonly points: readonly FixedPoint[]
  /** Where the logger was held against a salt, as it read [%]: beyond it the line is a guess. */
  readonly fromReadPercent: number
  readonly toReadPercent: number
}

export type CorrectionRefusal =
  | { readonly code: 'no-readings' }
  | { readonly code: 'too-many-readings'; readonly count: number }
  | { readonly code: 'not-a-humidity'; readonly salt: Salt; readonly readPercent: number }
  /** No source says what the salt holds at that temperature. */
  | { readonly code: 'salt-out-of-range'; readonly salt: Salt; readonly temperatureC: number }
  | { readonly code: 'points-too-close'; readonly apartPercent: number; readonly leastPercent: number }
  /** The damper salt read as the drier one: names swapped, or jars. */
  | { readonly code: 'wrong-order'; readonly drier: Salt; readonly damper: Salt }
  | {
      readonly code: 'slope-beyond-belief'
      readonly slope: number
      readonly from: number
      readonly to: number
    }

/** Our own caution: closer salts make the slope out of the sensor's own unrest [percentage points]. */
const leastApartPercent = 10
/** Our own caution: a sensor beyond this is broken rather than out of true. */
const believable = { from: 0.5, to: 2 } as const

function pointsOf(
  readings: readonly SaltReading[],
): Outcome<readonly FixedPoint[], readonly CorrectionRefusal[]> {
  const wrong: CorrectionRefusal[] = []
  if (readings.length === 0) wrong.push({ code: 'no-readings' })
  if (readings.length > 2) wrong.push({ code: 'too-many-readings', count: readings.length })
  const points = readings.flatMap(({ salt, temperatureC, readPercent }) => {
    if (!(readPercent >= 0 && readPercent <= 100)) wrong.push({ code: 'not-a-humidity', salt, readPercent })
    const point = fixedPoint(salt, temperatureC)
    if (point === null) wrong.push({ code: 'salt-out-of-range', salt, temperatureC })
    return point === null ? [] : [point]
  })
  return wrong.length > 0 ? refused(wrong) : given(points)
}

/**
 * The line that takes what a logger reads to what is [%], from one salt or two, or why there is none.
 * @param readings [°C, %] one or two salts with their temperature and what the logger read over them
 * @source straight line through two fixed points; Greenspan 1977 for what the salts hold
 * @valid two salts at least 10 points apart, read in the right order, with a slope of 0.5 to 2; one salt: near that salt
 * @agrees 0.000001 with slope 1.046154 and offset -3.126923 for 13.8 read over 11.31 and 34.6 over 33.07
 */
export function correctionFrom(
  readings: readonly SaltReading[],
): Outcome<Correction, readonly CorrectionRefusal[]> {
  const found = pointsOf(readings)
  if (!found.ok) return found
  const known = found.value.map((point, at) => ({ point, read: readings[at]!.readPercent }))
  const [low, high] = known.toSorted((a, b) => a.point.rhPercent - b.point.rhPercent)
  const points = found.value
  if (low === undefined) return refused([{ code: 'no-readings' }])
  if (high === undefined) {
    const offsetPercent = low.point.rhPercent - low.read
    return given({ offsetPercent, slope: 1, points, fromReadPercent: low.read, toReadPercent: low.read })
  }
  const apartPercent = high.point.rhPercent - low.point.rhPercent
  if (apartPercent < leastApartPercent)
    return refused([{ code: 'points-too-close', apartPercent, leastPercent: leastApartPercent }])
  if (high.read <= low.read)
    return refused([{ code: 'wrong-order', drier: low.point.salt, damper: high.point.salt }])
  const slope = apartPercent / (high.read - low.read)
  if (!(slope >= believable.from && slope <= believable.to))
    return refused([{ code: 'slope-beyond-belief', slope, ...believable }])
  return given({
    offsetPercent: low.point.rhPercent - slope * low.read,
    slope,
    points,
    fromReadPercent: low.read,
    toReadPercent: high.read,
  })
}

/**
 * True relative humidity behind a reading [%]. Below 0 or above 100 it says that the correction does not reach there.
 * @param correction [%, 1] from correctionFrom
 * @param readPercent [%] what the logger read
 * @source straight line, offset + slope · read
 * @valid between the readings over the salts; beyond them a guess that grows with the distance
 * @agrees 0.001 points with 17.796 for 20 read, in the example of correctionFrom
 */
export function correctedRhPercent(correction: Correction, readPercent: number): number {
  return correction.offsetPercent + correction.slope * readPercent
}

/**
 * How far a reading lies beyond those held against a salt [percentage points]; 0 between them.
 * @param correction [%, 1] from correctionFrom
 * @param readPercent [%] what the logger read
 * @source a comparison of ours
 * @valid any reading
 * @agrees exact
 */
export function beyondPointsPercent(correction: Correction, readPercent: number): number {
  return Math.max(0, correction.fromReadPercent - readPercent, readPercent - correction.toReadPercent)
}
