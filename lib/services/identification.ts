import { createHash } from 'node:crypto'
import type { IsoDate } from '../base/calendar.ts'
import { canonical } from '../base/canonical.ts'
import type { Thought } from '../field/thought.ts'
import type { Actor, Kept } from './kept.ts'

/** What a surface was found to be, by whom and how. Never changed: who knows better enters a new one. */
export interface IdentificationGiven {
  readonly component: string
  readonly matter: string
  /** An explanation of the matter, or `none-of-these`. */
  readonly interpretation: string
  /** The method that showed it; empty where it was judged from all that is known. */
  readonly method: string
  readonly on: IsoDate
  /** Who identified it, in words: a name, a laboratory. */
  readonly byWhom: string
  /** Number or place of the report. */
  readonly reference: string
  readonly words: string
}

export interface NewIdentification {
  readonly projectId: string
  readonly findId: string
  /** The condition record it was thought of. */
  readonly recordId: string
  readonly knowledge: string
  readonly given: IdentificationGiven
  /** What was thought before, kept so that the tool can be held to it. */
  readonly thought: Thought
}

export interface Identification extends Kept, NewIdentification {
  readonly by: Actor
}

/** The same said twice of the same find is one identification. */
export const identificationHash = ({ findId, given }: NewIdentification): string =>
  createHash('sha256').update(canonical({ findId, given })).digest('hex')

/** Somebody found out that it was nothing that the matter has among its explanations. */
export const noneOfThese = 'none-of-these'
