import { trapezoidDose } from './dose.ts'
import { excursionsCounted } from './excursions.ts'
import type { FlatFloor } from './flat-floor.ts'
import { above, below, stoodMs, type Profile } from './profile.ts'
import type { SensorError } from './sensor-error.ts'
import type { Series } from './series.ts'
import type { Stretch } from './stretches.ts'

/** `rectangle`: each reading stands till the next. `trapezoid`: a straight line from one reading to the next, cut at the limit. */
export type DoseMethod = 'rectangle' | 'trapezoid'

export const doseMethods = ['rectangle', 'trapezoid'] as const satisfies DoseMethod[]

/** What readings are held against. */
export interface Against {
  /** What the finds bear [%]; null where nothing limits them. A reading at a limit is within it. */
  readonly band: { readonly minRhPercent: number | null; readonly maxRhPercent: number | null }
  readonly error: SensorError
  readonly doseMethod?: DoseMethod
  /** Readings at a flat floor are "at or below"; left out or null: there are none. */
  readonly floor?: FlatFloor | null
}

/** What lay beyond one end of the band. */
export interface Beyond {
  readonly limitRhPercent: number
  readonly hours: number
  readonly percentOfTime: number
  /** [% h], by the dose method. */
  readonly doseRhPercentHours: number
  /** How far beyond on the average while beyond, each reading standing till the next [%]; null where it never was. */
  readonly meanBeyondRhPercent: number | null
  readonly excursions: number
  readonly longest: { readonly fromMs: number; readonly toMs: number; readonly hours: number } | null
  /** Hours beyond if the sensor read its whole error on the one side all the time, and on the other. */
  readonly hoursWithError: { readonly least: number; readonly most: number }
  /** Hours at the floor of the logger, where the limit lies below that floor: nobody can tell. */
  readonly hoursCannotTell: number
}

const hourMs = 3_600_000
/** Readings are told apart by hundredths: below the next one is at or below this one. [%] */
const oneHundredth = 0.01

/** Time within the band and beyond either end of it. */
export function againstBand(
  read: Series,
  stretches: readonly Stretch[],
  profile: Profile,
  against: Against,
): {
  readonly readMs: number
  readonly inMs: number
  readonly over: Beyond | null
  readonly under: Beyond | null
} {
  const readMs = stoodMs(profile)
  const over = beyond('above', read, stretches, profile, readMs, against)
  const under = beyond('below', read, stretches, profile, readMs, against)
  return {
    readMs,
    inMs: readMs - (over?.notInMs ?? 0) - (under?.notInMs ?? 0),
    over: over?.told ?? null,
    under: under?.told ?? null,
  }
}

function beyond(
  side: 'above' | 'below',
  read: Series,
  stretches: readonly Stretch[],
  profile: Profile,
  readMs: number,
  { band, error, floor = null, doseMethod = 'rectangle' }: Against,
): { readonly told: Beyond; readonly notInMs: number } | null {
  const limit = side === 'above' ? band.maxRhPercent : band.minRhPercent
  if (limit === null) return null
  const lies = floor?.atRhPercent
  const part = (line: number) => (side === 'above' ? above(profile, line, lies) : below(profile, line))
  const { ms, dose } = part(limit)
  // Where the floor lies beyond the limit, what was read between the two may be on either side of the limit.
  const cannotTellMs =
    lies === undefined || lies < limit
      ? 0
      : side === 'above'
        ? above(profile, limit).ms - ms
        : below(profile, lies + oneHundredth).ms - ms
  const { count, longest } = excursionsCounted(read, stretches, side, limit, lies)
  const nearer = side === 'above' ? error.rhPercent : -error.rhPercent
  const told: Beyond = {
    limitRhPercent: limit,
    hours: ms / hourMs,
    percentOfTime: readMs === 0 ? 0 : (100 * ms) / readMs,
    doseRhPercentHours:
      doseMethod === 'rectangle' ? dose / hourMs : trapezoidDose(read, stretches, limit, side),
    meanBeyondRhPercent: ms === 0 ? null : dose / ms,
    excursions: count,
    longest: longest && { ...longest, hours: (longest.toMs - longest.fromMs) / hourMs },
    hoursWithError: { least: part(limit + nearer).ms / hourMs, most: part(limit - nearer).ms / hourMs },
    hoursCannotTell: cannotTellMs / hourMs,
  }
  return { told, notInMs: ms + cannotTellMs }
}
