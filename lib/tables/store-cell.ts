import type { PlaceColumn } from '../record/places.ts'
import type { ProblemCode } from '../record/problem.ts'
import { readQuantity } from '../record/quantity.ts'
import { readDate, type DayOrder } from '../record/read-date.ts'
import { readStoreChoice } from '../record/store-choices.ts'
import { storeQuantities } from '../record/store-quantities.ts'
import type { StoreTable } from '../record/store-tables.ts'
import type { StoreCell } from './store-file.ts'

export interface StoreCellRead {
  readonly value?: string | number
  readonly problem?: { readonly code: ProblemCode; readonly suggestion?: string }
}

/** A cell of one column of one table; what is not understood has no value and is kept by who asks. */
export function readStoreCell(
  table: StoreTable,
  column: string,
  kind: PlaceColumn,
  { text, formula }: StoreCell,
  order: DayOrder,
): StoreCellRead {
  if (formula) return { problem: { code: 'formula' } }
  if (/^#(?:N\/A|REF!|VALUE!|DIV\/0!|NUM!|NAME\?|NULL!)/i.test(text))
    return { problem: { code: 'spreadsheet-error' } }
  if (kind === 'text') {
    const choice = readStoreChoice(table, column, text)
    if (choice === null) return { value: text }
    if (choice.ok) return { value: choice.id }
    return { problem: { code: 'unknown-value', ...said(choice.suggestion) } }
  }
  const read = kind === 'date' ? readDate(text, order) : readQuantity(storeQuantities[column]!, text)
  if (!read.ok) return { problem: { code: read.code, ...said(read.suggestion) } }
  return { value: 'date' in read ? read.date : read.value }
}

const said = (suggestion: string | null | undefined) =>
  suggestion === null || suggestion === undefined ? {} : { suggestion }
