import type { Band, Urgency } from '../engine/plan.ts'
import type { Standing } from './standing.ts'
import { urgencies } from '../wording/marks.ts'

/** Which finds of a project, in which order, from where on. Whatever is left out does not narrow. */
export interface FindQuery {
  readonly projectId: string
  readonly order: 'urgency' | 'number'
  readonly urgency?: readonly Urgency[]
  /** A key of `byBand`. */
  readonly band?: string
  readonly boxes?: readonly string[]
  /** Every word must be found, in any order. */
  readonly search?: string
  readonly stopsOnly?: boolean
  readonly findIds?: readonly string[]
  readonly after?: Place
  readonly limit: number
}

/** Where a page ended: the next begins after it, whatever has been added meanwhile. */
export interface Place {
  readonly urgency: number
  readonly dueOn: string
  readonly sortKey: string
  readonly findId: string
}

/** Sorts after every day; a column that is sorted by may not be empty, because engines disagree where to put that. */
export const noDay = '9999-12-31'

export const urgencyRank = (urgency: Urgency): number => urgencies.indexOf(urgency)

export const urgencyOfRank = (rank: number): Urgency => urgencies[rank]!

export function placeOf({ line, sortKey, findId }: Standing): Place {
  return { urgency: urgencyRank(line.urgency), dueOn: line.dueOn ?? noDay, sortKey, findId }
}

export interface UrgencyCount {
  readonly urgency: Urgency
  readonly finds: number
  readonly stops: number
}

export interface BandCount {
  /** The key of `bandKey`. */
  readonly band: string
  readonly rhPercent: Band | null
  readonly finds: number
  readonly mostPressing: Urgency
}
