import { joinList } from './list-cell.ts'
import type { ProblemCode } from './problem.ts'
import type { Treatment } from './record.ts'

export type FieldValue = string | number | readonly string[] | readonly Treatment[]

export interface CellProblem {
  readonly code: ProblemCode
  readonly found: string
  readonly suggestion?: string
}

/** What a cell says: the part that was understood, the part that was not (as written, parted by `;`), and why. */
export interface CellRead {
  readonly value?: FieldValue
  readonly unread?: string
  readonly problems: readonly CellProblem[]
}

export const flaw = (code: ProblemCode, found: string, suggestion?: string | null): CellProblem => ({
  code,
  found,
  ...(suggestion === undefined || suggestion === null ? {} : { suggestion }),
})

export const refused = (found: string, code: ProblemCode, suggestion?: string | null): CellRead => ({
  unread: joinList([found]),
  problems: [flaw(code, found, suggestion)],
})
