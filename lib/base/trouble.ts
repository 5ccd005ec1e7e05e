import type { Outcome } from './outcome.ts'

/** What can go wrong outside, through nobody's mistake in the input. Sentences for it are made in lib/wording. */
export type Trouble =
  | { readonly kind: 'missing'; readonly what: Thing; readonly id: string }
  /** Somebody else wrote it since it was read: read it again and decide anew. */
  | { readonly kind: 'changed-meanwhile'; readonly what: Thing; readonly id: string }
  /** The database cannot be reached or written; nothing was kept. */
  | { readonly kind: 'unavailable'; readonly because: string }
  /** What was given cannot be kept: the field and what is wrong with it. */
  | {
      readonly kind: 'not-accepted'
      readonly field: string
      readonly because: 'empty' | 'too-long' | 'unknown' | 'taken'
    }

export type Thing =
  | 'project'
  | 'site'
  | 'contact'
  | 'find'
  | 'record'
  | 'import'
  | 'room'
  | 'box'
  | 'person'
  | 'logger'
  | 'log file'
  | 'store setting'

export type Answer<Value> = Promise<Outcome<Value, Trouble>>

export const missing = (what: Thing, id: string): Trouble => ({ kind: 'missing', what, id })
