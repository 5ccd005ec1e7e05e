import type { Plan } from '../engine/plan.ts'
import { excursionsOf, type Excursion } from '../logger/excursions.ts'
import type { FlatFloor } from '../logger/flat-floor.ts'
import { nearestWithin } from '../logger/near-limit.ts'
import { chanceOver, chanceUnder, type SensorError } from '../logger/sensor-error.ts'
import type { Series } from '../logger/series.ts'
import { between } from '../logger/stretches.ts'
import {
  excursionMeaning,
  meaningAnswers,
  type ExcursionMeaning,
  type MeaningAnswer,
} from './excursion-meaning.ts'

/** A reading that stayed within a limit and may have lain beyond it. */
export interface NearMiss {
  readonly kind: Excursion['kind']
  readonly readRhPercent: number
  readonly limitRhPercent: number
  readonly chance: number
}

/** What readings meant for one find in the box, held against what that find bears and not against what the box was set to. */
export interface FindMeaning {
  readonly find: string
  /** The gravest of all. */
  readonly answer: MeaningAnswer
  readonly excursions: readonly { readonly excursion: Excursion; readonly meaning: ExcursionMeaning }[]
  /** Where nothing was read beyond a limit: the reading nearest to it, where it may have been. */
  readonly nearMisses: readonly NearMiss[]
  /** Readings at the floor of the logger, which lies above what the find bears: nobody can tell. */
  readonly belowRange: boolean
}

export interface FindMeaningOptions {
  readonly error: SensorError
  readonly perhapsChance: number
  readonly floor?: FlatFloor | null
}

const hourMs = 3_600_000

/** The ends between which the find is to be kept [%]; null where it is open. */
export function boundsOf({ storage }: Plan): {
  readonly aboveRhPercent: number | null
  readonly belowRhPercent: number | null
} {
  const parts = storage.components.map(({ limit }) => limit)
  const band = storage.rhPercent ??
    storage.interim?.rhPercent ?? {
      min: storage.keep === 'wet' ? 0 : Math.max(0, ...parts.map(({ min }) => min)),
      max: storage.keep === 'wet' ? 100 : Math.min(100, ...parts.map(({ max }) => max)),
    }
  return {
    aboveRhPercent: band.max < 100 ? band.max : null,
    belowRhPercent: band.min > 0 ? band.min : null,
  }
}

export function findMeaning(plan: Plan, series: Series, options: FindMeaningOptions): FindMeaning {
  const { error, perhapsChance, floor = null } = options
  const bounds = boundsOf(plan)
  const { aboveRhPercent, belowRhPercent } = bounds
  const limits = {
    error,
    ...(floor === null ? {} : { floorRhPercent: floor.atRhPercent }),
    ...(aboveRhPercent === null ? {} : { aboveRhPercent }),
    ...(belowRhPercent === null ? {} : { belowRhPercent }),
  }
  const excursions = excursionsOf(series, limits).map((excursion) => {
    // With the reading that was back within the limit: the last one beyond it stands till then.
    const part = between(series, excursion.fromMs, excursion.toMs + 1)
    const hoursBeyond = (level: number) =>
      excursionsOf(part, {
        error,
        ...(excursion.kind === 'above' ? { aboveRhPercent: level } : { belowRhPercent: level }),
      }).reduce((hours, { fromMs, toMs }) => hours + (toMs - fromMs) / hourMs, 0)
    return { excursion, meaning: excursionMeaning(plan, excursion, { error, perhapsChance, hoursBeyond }) }
  })
  const nearMisses = nearMissesOf(series, bounds, excursions, options)
  const belowRange = floor !== null && aboveRhPercent !== null && floor.atRhPercent > aboveRhPercent
  const answers = excursions.map(({ meaning }) => rank(meaning.answer))
  const least = nearMisses.length > 0 || belowRange ? 1 : 0
  return {
    find: plan.find,
    answer: meaningAnswers[Math.max(least, ...answers)]!,
    excursions,
    nearMisses,
    belowRange,
  }
}

const rank = (answer: MeaningAnswer) => meaningAnswers.indexOf(answer)

function nearMissesOf(
  series: Series,
  { aboveRhPercent, belowRhPercent }: ReturnType<typeof boundsOf>,
  found: FindMeaning['excursions'],
  { error, perhapsChance, floor }: FindMeaningOptions,
): readonly NearMiss[] {
  const miss = (kind: Excursion['kind'], limit: number | null): readonly NearMiss[] => {
    if (limit === null || found.some(({ excursion }) => excursion.kind === kind)) return []
    const read = nearestWithin(series, limit, kind, floor?.atRhPercent)
    if (read === null) return []
    const chance = (kind === 'above' ? chanceOver : chanceUnder)(read, limit, error)
    return chance >= perhapsChance ? [{ kind, readRhPercent: read, limitRhPercent: limit, chance }] : []
  }
  return [...miss('above', aboveRhPercent), ...miss('below', belowRhPercent)]
}
