import type { Grade } from './evidence.ts'
import type { Known } from './knowledge.ts'

/** One row of a review table as it came back: texts, nothing understood yet. */
export interface CorrectionRow {
  /** As a spreadsheet shows it, from 1. */
  readonly row: number
  readonly matter: string
  readonly group: string
  readonly state: string
  readonly rival: string
  readonly grade: string
  /** The grade as it was printed, so that a row left alone changes nothing; null where the table has no such column. */
  readonly gradeBefore: string | null
  readonly because: string
  readonly work: string
  readonly place: string
  readonly known: string
  readonly by: string
  readonly on: string
}

/** A row that changes a grade, understood. */
export interface Correction {
  readonly row: number
  readonly matter: string
  readonly group: string
  readonly state: string
  readonly rival: string
  readonly from: Grade
  readonly to: Grade
  readonly because: string
  readonly work: string
  readonly place: string | null
  readonly known: Known
  readonly by: string
  readonly on: string
}

/** What is wrong with a row, as data; `lib/wording/corrections.ts` has the sentences. */
export type CorrectionFault = { readonly row: number } & (
  | {
      readonly code: 'no-such'
      readonly column: string
      readonly found: string
      readonly near: string | null
    }
  | { readonly code: 'needed'; readonly column: string }
  | { readonly code: 'not-a-day'; readonly found: string }
  | { readonly code: 'said-otherwise'; readonly first: number }
  | { readonly code: 'changed-meanwhile'; readonly printed: string; readonly now: string }
  | { readonly code: 'not-to-be-written'; readonly file: string }
)
