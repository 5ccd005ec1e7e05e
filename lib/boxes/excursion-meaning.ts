import type { Act, ComponentBand, Plan, Statement } from '../engine/plan.ts'
import type { Excursion } from '../logger/excursions.ts'
import { chanceOver, chanceUnder, type SensorError } from '../logger/sensor-error.ts'

/** What an excursion asks of a person, mildest first. */
export const meaningAnswers = ['none', 'noted', 'look-soon', 'look-now'] as const
export type MeaningAnswer = (typeof meaningAnswers)[number]

export type MeaningBecause =
  /** A level was passed at which the plan wants somebody. */
  | 'act'
  /** It was passed for longer than the plan gives to act. */
  | 'act-overdue'
  /** It was not read as passed, and with the error of the sensor it may have been. */
  | 'act-perhaps'
  /** The limit of a part was passed, and no level of the plan says when to act. */
  | 'limit-without-act'
  /** The limit was passed, and no level of the plan. */
  | 'limit'
  /** The same, for longer than the find is left between two looks. */
  | 'limit-long'
  | 'limit-perhaps'
  /** It left the band in which the find waits for a conservator. */
  | 'holding-band'
  | 'holding-band-perhaps'
  /** Within the limits, and outside of what would be better. */
  | 'preference'
  /** Within the limits, which are known from memory alone: that passes nothing. */
  | 'only-from-memory'
  /** Nothing is known of what a part bears. */
  | 'no-limit-known'
  /** Kept in water: dry air may have reached it. */
  | 'kept-wet'

export interface MeaningReason {
  readonly because: MeaningBecause
  readonly answer: MeaningAnswer
  /** The level [%] it is about; null where there is none. */
  readonly levelRhPercent: number | null
  /** Chance that the level was really passed; null where it is about none. */
  readonly chance: number | null
  readonly withinDays: number | null
  /** Parts of the find; empty: the whole of it. */
  readonly components: readonly string[]
  /** What it rests on, each with rule and sources. */
  readonly says: readonly Statement[]
}

export interface ExcursionMeaning {
  readonly find: string
  readonly answer: MeaningAnswer
  /** Days from when it began within which somebody should be there; null where no level says. */
  readonly withinDays: number | null
  /** Gravest first; empty: it stayed within what the find bears. */
  readonly reasons: readonly MeaningReason[]
  readonly decidedBy: Plan['storage']['decidedBy']
  /** A stop stands: nobody goes to the box before it is cleared. */
  readonly stopped: boolean
}

export interface MeaningOptions {
  readonly error: SensorError
  /** A level not read as passed counts as perhaps passed from this chance on [one]. */
  readonly perhapsChance: number
  /** Hours beyond a level during the excursion; left out: all of it, which is the careful side. */
  readonly hoursBeyond?: (levelRhPercent: number) => number
}

/** How a level fared: read as passed, perhaps passed, or not. */
interface Fared {
  readonly passed: boolean
  readonly chance: number
  readonly days: number
}

const rank = (answer: MeaningAnswer) => meaningAnswers.indexOf(answer)
const milder = (answer: MeaningAnswer): MeaningAnswer => meaningAnswers[Math.max(0, rank(answer) - 1)]!

/**
 * What an excursion meant for one find. Only the worst level, how long it lasted and how sure it is can raise the answer; a short
 * one is not excused, for nothing published says how short is harmless.
 */
export function excursionMeaning(
  plan: Plan,
  excursion: Excursion,
  options: MeaningOptions,
): ExcursionMeaning {
  const { storage } = plan
  const fared = (level: number): Fared => {
    const { kind, worstRhPercent } = excursion
    const hours = options.hoursBeyond?.(level) ?? (excursion.toMs - excursion.fromMs) / 3_600_000
    return {
      passed: kind === 'above' ? worstRhPercent > level : worstRhPercent < level,
      chance: (kind === 'above' ? chanceOver : chanceUnder)(worstRhPercent, level, options.error),
      days: hours / 24,
    }
  }
  const perhaps = ({ passed, chance }: Fared) => !passed && chance >= options.perhapsChance
  const side: Side = { kind: excursion.kind, fared, perhaps }
  const reasons = (
    storage.keep === 'wet'
      ? ofWet(side)
      : [...ofActs(plan, side), ...ofHolding(plan, side), ...ofLimits(plan, side), ...ofBand(plan, side)]
  ).toSorted((a, b) => rank(b.answer) - rank(a.answer))
  const told = reasons.length > 0 || storage.keep === 'wet' ? reasons : notReassured(plan)
  const days = told.flatMap(({ withinDays }) => withinDays ?? [])
  return {
    find: plan.find,
    answer: told[0]?.answer ?? 'none',
    withinDays: days.length === 0 ? null : Math.min(...days),
    reasons: told,
    decidedBy: storage.decidedBy,
    stopped: plan.cautions.some(({ level }) => level === 'stop'),
  }
}

/** One direction of leaving a band. */
interface Side {
  readonly kind: Excursion['kind']
  readonly fared: (levelRhPercent: number) => Fared
  readonly perhaps: (fared: Fared) => boolean
}

/** The end of a band on a side; null where it is open there. */
function endOf({ min, max }: { readonly min: number; readonly max: number }, { kind }: Side): number | null {
  if (kind === 'above') return max < 100 ? max : null
  return min > 0 ? min : null
}

const levelOf = (act: Act, { kind }: Side) => (kind === 'above' ? act.aboveRhPercent : act.belowRhPercent)

function ofActs({ storage }: Plan, side: Side): readonly MeaningReason[] {
  return storage.act.flatMap((act): readonly MeaningReason[] => {
    const level = levelOf(act, side)
    if (level === undefined) return []
    const fared = side.fared(level)
    const wanted: MeaningAnswer = act.withinDays <= 1 ? 'look-now' : 'look-soon'
    const overdue = fared.days > act.withinDays
    const of = {
      levelRhPercent: level,
      chance: fared.chance,
      withinDays: act.withinDays,
      components: act.says.components,
      says: [act.says],
    }
    if (fared.passed)
      return [{ because: overdue ? 'act-overdue' : 'act', answer: overdue ? 'look-now' : wanted, ...of }]
    return side.perhaps(fared)
      ? [{ because: 'act-perhaps', answer: milder(wanted), ...of, withinDays: null }]
      : []
  })
}

/** A find whose parts disagree waits in a band of its own, and that one counts. */
function ofHolding({ storage: { interim } }: Plan, side: Side): readonly MeaningReason[] {
  const level = interim && endOf(interim.rhPercent, side)
  if (!interim || level === null) return []
  const fared = side.fared(level)
  const of = { levelRhPercent: level, chance: fared.chance, components: [], says: [interim.says] }
  if (fared.passed)
    return [{ because: 'holding-band', answer: 'look-soon', withinDays: interim.checkEveryDays, ...of }]
  return side.perhaps(fared)
    ? [{ because: 'holding-band-perhaps', answer: 'noted', withinDays: null, ...of }]
    : []
}

function ofLimits(plan: Plan, side: Side): readonly MeaningReason[] {
  const { storage } = plan
  const acts = storage.act.some((act) => levelOf(act, side) !== undefined)
  return storage.components.flatMap((part): readonly MeaningReason[] => {
    const level = endOf(part.limit, side)
    if (level === null || heldBeyond(plan, level, side)) return []
    const fared = side.fared(level)
    const of = {
      levelRhPercent: level,
      chance: fared.chance,
      withinDays: null,
      components: [part.component],
      says: part.basis,
    }
    if (!fared.passed)
      return side.perhaps(fared) ? [{ because: 'limit-perhaps', answer: 'noted', ...of }] : []
    if (!acts && !storage.interim) return [{ because: 'limit-without-act', answer: 'look-soon', ...of }]
    const long = fared.days > plan.inspection.everyDays
    return [{ because: long ? 'limit-long' : 'limit', answer: long ? 'look-soon' : 'noted', ...of }]
  })
}

/** The band it waits in lies beyond this part's limit anyway: that is the conservator's matter, not the excursion's. */
function heldBeyond({ storage: { interim } }: Plan, level: number, { kind }: Side): boolean {
  if (!interim) return false
  return kind === 'above' ? interim.rhPercent.max > level : interim.rhPercent.min < level
}

/** What would be better than the limits. */
function ofBand({ storage }: Plan, side: Side): readonly MeaningReason[] {
  const level = storage.rhPercent && endOf(storage.rhPercent, side)
  if (level === null) return []
  if (storage.components.some(({ limit }) => endOf(limit, side) === level)) return []
  const fared = side.fared(level)
  if (!fared.passed) return []
  return [
    {
      because: 'preference',
      answer: 'noted',
      levelRhPercent: level,
      chance: fared.chance,
      withinDays: null,
      components: [],
      says: storage.components.flatMap(({ basis }) => basis),
    },
  ]
}

/** Damp air does no harm to what lies in water; dry air says that the water may be gone. */
function ofWet({ kind }: Side): readonly MeaningReason[] {
  if (kind === 'above') return []
  return [
    {
      because: 'kept-wet',
      answer: 'look-soon',
      levelRhPercent: null,
      chance: null,
      withinDays: null,
      components: [],
      says: [],
    },
  ]
}

/** Nothing was passed; but what is known from memory alone, or not at all, lets nobody rest. */
function notReassured({ storage }: Plan): readonly MeaningReason[] {
  return storage.components.flatMap((part): readonly MeaningReason[] => {
    const because = unsure(part)
    if (because === null) return []
    const of = { levelRhPercent: null, chance: null, withinDays: null, components: [part.component] }
    return [{ because, answer: 'noted', says: part.basis, ...of }]
  })
}

function unsure({ limit, basis }: ComponentBand): MeaningBecause | null {
  if (limit.min <= 0 && limit.max >= 100) return 'no-limit-known'
  const remembered = basis.every(({ sources }) => sources.every(({ known }) => known === 'memory'))
  return remembered ? 'only-from-memory' : null
}
