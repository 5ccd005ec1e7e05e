import type { Effect } from '../knowledge/knowledge.ts'
import type { Band, ComponentBand, Conflict } from './plan.ts'
import type { Spoken } from './statement.ts'

/** Humidity bands [% RH], reconciled in the open: limits are joined first, then as many preferences as still fit. */
export const anyHumidity: Band = { min: 0, max: 100 }

/** Narrowest band [% RH] a preference may leave: ours, for no box and no indicator holds a single figure. */
const leastRoom = 5
const leavesRoom = (band: Band) => band.max - band.min >= leastRoom
const join = (a: Band, b: Band): Band => ({ min: Math.max(a.min, b.min), max: Math.min(a.max, b.max) })

function bandOf(then: Effect): Band {
  return then.kind === 'band' ? { min: then.from ?? 0, max: then.to ?? 100 } : anyHumidity
}

const strengths = { must: 0, should: 1, consider: 2 } as const

/** What holds one part in, and what it would rather have: every limit joined, the preferences that fit them. */
export interface PartBand {
  readonly component: string
  readonly limit: Band
  readonly preference: Band | null
  readonly said: readonly Spoken[]
}

const heed = (limit: Band, wishes: readonly Band[]) =>
  wishes.reduce((kept, wish) => (leavesRoom(join(kept, wish)) ? join(kept, wish) : kept), limit)

export function partBand(component: string, said: readonly Spoken[]): PartBand {
  const limits = said.filter(({ rule }) => rule.level === 'limit')
  const limit = limits.map(({ rule }) => bandOf(rule.then)).reduce(join, anyHumidity)
  const wishes = preferences(said)
  return { component, limit, preference: wishes.length === 0 ? null : heed(limit, wishes), said }
}

/** The same as the plan shows it, with the statements it rests on. */
export function componentBand({ component, limit, preference, said }: PartBand): ComponentBand {
  return { component, limit, preference, basis: said.map(({ statement }) => statement) }
}

/** Preferences, strongest first; among equals the wider first, so that more of them fit. */
function preferences(said: readonly Spoken[]): readonly Band[] {
  return said
    .filter(({ rule }) => rule.level === 'preference')
    .map(({ rule }) => ({ strength: strengths[rule.strength], band: bandOf(rule.then) }))
    .sort(
      (a, b) =>
        a.strength - b.strength ||
        b.band.max - b.band.min - (a.band.max - a.band.min) ||
        a.band.min - b.band.min,
    )
    .map(({ band }) => band)
}

export interface Reconciled {
  /** The band all parts share; null where their limits do not meet. */
  readonly band: Band | null
  readonly conflict: Omit<Conflict, 'waysOut'> | null
}

/**
 * The band the whole find can be kept in, or who disagrees and by how much. Limits that only touch leave no humidity that a
 * box can hold, so they conflict too, with no gap. No number is issued for a conflict.
 */
export function reconcile(parts: readonly PartBand[]): Reconciled {
  const limit = parts.map((part) => part.limit).reduce(join, anyHumidity)
  if (limit.min < limit.max) {
    return { band: heed(limit, preferences(parts.flatMap(({ said }) => said))), conflict: null }
  }
  const between = parts.filter(({ limit: { min, max } }) =>
    parts.some((other) => min >= other.limit.max || max <= other.limit.min),
  )
  const gapPercent = Math.round((limit.min - limit.max) * 100) / 100
  return { band: null, conflict: { between: between.map((part) => part.component), gapPercent } }
}
