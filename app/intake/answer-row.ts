import type { Planned } from '../../lib/field/bag.ts'
import { withLook, withTest } from '../../lib/field/look-answer.ts'
import type { ReadRow } from '../../lib/field/rows.ts'
import type { FieldName } from '../../lib/record/fields.ts'
import type { Rows } from './_sheet/sheet.ts'

/** The row an answer belongs in: of the part asked about, or the find's first for what concerns the whole find. */
export function rowToAnswer(
  rows: Rows,
  read: ReadonlyMap<string, ReadRow>,
  { record }: Planned,
  part: string | null,
): string | null {
  const own = rows.filter(({ id }) => read.get(id)?.record === record)
  const at = part === null ? 0 : record.components.findIndex(({ component }) => component === part)
  const named = own.find(({ cells }) => cells.component?.trim() === part)
  // An unnamed part has the name it was given when it was read: rows stand in the order of their parts.
  return (named ?? own[at])?.id ?? null
}

/** What the cell then holds: an answer stands for itself, one of many closer looks or tests beside the others. */
export function cellAfter(rows: Rows, rowId: string, field: FieldName, answer: string): string {
  const before = (name: 'looked' | 'tests') => rows.find(({ id }) => id === rowId)?.cells[name] ?? ''
  if (field === 'tests') return withTest(before('tests'), answer)
  return field === 'looked' ? withLook(before('looked'), answer) : answer
}
