import type { Summary } from './summary.ts'

/** One line of a running import: how far it is, or how it ended. */
export type ImportLine =
  | { readonly done: number; readonly total: number }
  | { readonly summary: Summary }
  | { readonly says: string }
