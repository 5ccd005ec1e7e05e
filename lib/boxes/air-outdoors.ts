import { given, type Outcome } from '../base/outcome.ts'
import type { Range } from '../base/range.ts'
import { classesOf, type Classes, type ClassLimit } from '../climate/corrosivity-class.ts'
import {
  outdoorLoss,
  outdoorMetals,
  type FitRanges,
  type OutdoorAir,
  type OutdoorMetal,
  type OutdoorRefusal,
} from '../climate/corrosivity-outdoor.ts'
import { figureValue, type Figures } from './figure-value.ts'

export const outdoorClasses = ['C1', 'C2', 'C3', 'C4', 'C5', 'CX'] as const
export type OutdoorClass = (typeof outdoorClasses)[number]

export interface OutdoorVerdict {
  readonly metal: OutdoorMetal
  /** For aluminium, which is eaten in pits, as mass [g/(m²·a)]; for the others as thickness [µm/a]. */
  readonly unit: 'micrometre-per-year' | 'gram-per-square-metre-year'
  readonly loss: Range
  readonly classes: Classes<OutdoorClass>
  readonly figures: readonly string[]
}

const rangeIds = {
  temperatureC: 'temperature',
  rhPercent: 'rh',
  so2MgPerM2Day: 'so2',
  chlorideMgPerM2Day: 'chloride',
} as const satisfies Record<keyof OutdoorAir, string>

function fitRanges(knowledge: Figures): FitRanges {
  const ends = (name: string) => ({
    from: figureValue(knowledge, `iso-9223-${name}-low`),
    to: figureValue(knowledge, `iso-9223-${name}-high`),
  })
  return {
    temperatureC: ends(rangeIds.temperatureC),
    rhPercent: ends(rangeIds.rhPercent),
    so2MgPerM2Day: ends(rangeIds.so2MgPerM2Day),
    chlorideMgPerM2Day: ends(rangeIds.chlorideMgPerM2Day),
  }
}

const limitId = (metal: OutdoorMetal, name: OutdoorClass) => `iso-9223-${metal}-${name.toLowerCase()}`
/** Aluminium has no figure for the mildest class, only "negligible", and no end to the fiercest. */
const limited = (metal: OutdoorMetal) => (metal === 'aluminium' ? outdoorClasses.slice(1, 5) : outdoorClasses)

function limitsOf(metal: OutdoorMetal, knowledge: Figures): readonly ClassLimit<OutdoorClass>[] {
  const limits = limited(metal).map((name) => ({ name, to: figureValue(knowledge, limitId(metal, name)) }))
  return metal === 'aluminium' ? [...limits, { name: 'CX', to: Number.POSITIVE_INFINITY }] : limits
}

function judgeMetal(
  metal: OutdoorMetal,
  air: OutdoorAir,
  place: 'outdoors' | 'indoors',
  knowledge: Figures,
): Outcome<OutdoorVerdict, readonly OutdoorRefusal[]> {
  const group = metal === 'aluminium' ? 'aluminium' : 'metals'
  const spreadIds = [`iso-9223-${group}-below`, `iso-9223-${group}-above`] as const
  const spread = {
    belowPercent: figureValue(knowledge, spreadIds[0]),
    abovePercent: figureValue(knowledge, spreadIds[1]),
  }
  const found = outdoorLoss(metal, air, place, fitRanges(knowledge), spread)
  if (!found.ok) return found
  return given({
    metal,
    unit: metal === 'aluminium' ? 'gram-per-square-metre-year' : 'micrometre-per-year',
    loss: found.value,
    classes: classesOf(found.value, limitsOf(metal, knowledge))!,
    figures: [...spreadIds, ...limited(metal).map((name) => limitId(metal, name))],
  })
}

/** What a year of outdoor air does to bare steel, zinc, copper and aluminium, or why the standard does not say. */
export function judgeOutdoors(
  air: OutdoorAir,
  place: 'outdoors' | 'indoors',
  knowledge: Figures,
): Outcome<readonly OutdoorVerdict[], readonly OutdoorRefusal[]> {
  const verdicts: OutdoorVerdict[] = []
  for (const metal of outdoorMetals) {
    const judged = judgeMetal(metal, air, place, knowledge)
    if (!judged.ok) return judged
    verdicts.push(judged.value)
  }
  return given(verdicts)
}
