import { given, refused, type Outcome } from '../base/outcome.ts'
import { fixedPoint, type Salt } from './fixed-points.ts'

/** What a logger read after it had stood over a salt long enough to settle. */
export interface SaltReading {
  readonly salt: Salt
  readonly temperatureC: number
  readonly readRhPercent: number
}

/** What a logger read, and what the salt under it stood for. */
export interface SaltPoint {
  readonly salt: string
  readonly trueRhPercent: number
  readonly readRhPercent: number
}

/** True relative humidity = offset + slope · read. One salt gives the offset alone, two give both. */
export interface Correction {
  readonly offsetRhPercent: number
  readonly slope: number
  /** Where the logger was held against a salt, as it read [%]: beyond it the line is a guess. */
  readonly fromRhPercent: number
  readonly toRhPercent: number
}

export type CorrectionRefusal =
  | { readonly code: 'no-readings' }
  | { readonly code: 'too-many-readings'; readonly count: number }
  | { readonly code: 'not-a-humidity'; readonly salt: string; readonly rhPercent: number }
  /** No source says what the salt holds at that temperature. */
  | { readonly code: 'salt-out-of-range'; readonly salt: Salt; readonly temperatureC: number }
  | { readonly code: 'points-too-close'; readonly apartPercent: number; readonly leastPercent: number }
  /** The damper salt read as the drier one: names swapped, or jars. */
  | { readonly code: 'wrong-order'; readonly drier: string; readonly damper: string }
  | {
      readonly code: 'slope-beyond-belief'
      readonly slope: number
      readonly from: number
      readonly to: number
    }

type Answer = Outcome<Correction, readonly CorrectionRefusal[]>

/** Our own caution: closer salts make the slope out of the sensor's own unrest [percentage points]. */
const leastApartPercent = 10
/** Our own caution: a sensor beyond this is broken rather than out of true. */
const believable = { from: 0.5, to: 2 } as const

const noHumidity = (value: number) => !(value >= 0 && value <= 100)

function faults(points: readonly SaltPoint[]): readonly CorrectionRefusal[] {
  const count = points.length
  const counted: readonly CorrectionRefusal[] =
    count === 0 ? [{ code: 'no-readings' }] : count > 2 ? [{ code: 'too-many-readings', count }] : []
  return [
    ...counted,
    ...points.flatMap(({ salt, trueRhPercent, readRhPercent }) =>
      [trueRhPercent, readRhPercent]
        .filter(noHumidity)
        .map((rhPercent) => ({ code: 'not-a-humidity', salt, rhPercent }) as const),
    ),
  ]
}

/**
 * The line that takes what a logger reads to what is [%], through one known humidity or two, or why there is none.
 * @param points [%] what the logger read, and what it should have read
 * @source straight line through two fixed points; through one, a shift
 * @valid two points at least 10 apart, read in the right order, with a slope of 0.5 to 2; one point: near that point
 * @agrees 0.000001 with slope 1.046154 and offset -3.126923 for 13.8 read over 11.31 and 34.6 over 33.07
 */
export function correctionThrough(points: readonly SaltPoint[]): Answer {
  const wrong = faults(points)
  const [low, high] = points.toSorted((a, b) => a.trueRhPercent - b.trueRhPercent)
  if (wrong.length > 0 || low === undefined) return refused(wrong)
  if (high === undefined) {
    const { readRhPercent: read, trueRhPercent } = low
    return given({ offsetRhPercent: trueRhPercent - read, slope: 1, fromRhPercent: read, toRhPercent: read })
  }
  const apartPercent = high.trueRhPercent - low.trueRhPercent
  if (apartPercent < leastApartPercent)
    return refused([{ code: 'points-too-close', apartPercent, leastPercent: leastApartPercent }])
  if (high.readRhPercent <= low.readRhPercent)
    return refused([{ code: 'wrong-order', drier: low.salt, damper: high.salt }])
  const slope = apartPercent / (high.readRhPercent - low.readRhPercent)
  if (!(slope >= believable.from && slope <= believable.to))
    return refused([{ code: 'slope-beyond-belief', slope, ...believable }])
  return given({
    offsetRhPercent: low.trueRhPercent - slope * low.readRhPercent,
    slope,
    fromRhPercent: low.readRhPercent,
    toRhPercent: high.readRhPercent,
  })
}

/**
 * The same from the salts themselves [%]: what each holds at its temperature is looked up.
 * @param readings [°C, %] one or two salts with their temperature and what the logger read over them
 * @source correctionThrough, with fixedPoint for what the salts hold
 * @valid as correctionThrough, at temperatures where a source says what the salt holds
 * @agrees exact with correctionThrough
 */
export function correctionOverSalts(readings: readonly SaltReading[]): Answer {
  const wrong: CorrectionRefusal[] = []
  const points = readings.map(({ salt, temperatureC, readRhPercent }) => {
    const point = fixedPoint(salt, temperatureC)
    if (point === null) wrong.push({ code: 'salt-out-of-range', salt, temperatureC })
    return { salt, trueRhPercent: point?.rhPercent ?? 0, readRhPercent }
  })
  return wrong.length > 0 ? refused([...wrong, ...faults(points)]) : correctionThrough(points)
}

/**
 * True relative humidity behind a reading [%]. Below 0 or above 100 it says that the correction does not reach there.
 * @param correction [%, 1] from correctionThrough or correctionOverSalts
 * @param readRhPercent [%] what the logger read
 * @source straight line, offset + slope · read
 * @valid between the readings over the salts; beyond them a guess that grows with the distance
 * @agrees 0.001 points with 17.796 for 20 read, in the example of correctionThrough
 */
export function correctedRhPercent(correction: Correction, readRhPercent: number): number {
  return correction.offsetRhPercent + correction.slope * readRhPercent
}

/**
 * How far a reading lies beyond those held against a salt [percentage points]; 0 between them.
 * @param correction [%, 1] from correctionThrough or correctionOverSalts
 * @param readRhPercent [%] what the logger read
 * @source a comparison of ours
 * @valid any reading
 * @agrees exact
 */
export function beyondPointsPercent(correction: Correction, readRhPercent: number): number {
  return Math.max(0, correction.fromRhPercent - readRhPercent, readRhPercent - correction.toRhPercent)
}
