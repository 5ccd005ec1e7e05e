import type { FieldName } from '../../../lib/record/fields.ts'
import type { Cells, SheetRow } from './sheet.ts'

/** What a bag has in common is typed once: it goes on to the next row. */
const carried = [
  'site_code',
  'context',
  'recorded_by',
  'recorded_on',
  'lifted_on',
  'burial',
  'state_now',
  'packed_in',
  'stored_rh_percent',
] as const satisfies readonly FieldName[]

/** The number after this one: `TW-0412` → `TW-0413`, `SF9` → `SF10`; null where it ends in no number. */
export function nextNumber(number: string): string | null {
  const digits = /\d+$/.exec(number.trim())?.[0]
  if (digits === undefined || digits.length > 15) return null
  const next = String(Number(digits) + 1).padStart(digits.length, '0')
  return number.trim().slice(0, -digits.length) + next
}

export function nextRow(above: SheetRow | undefined, id: string): SheetRow {
  if (above === undefined) return { id, cells: {} }
  const cells: Partial<Record<FieldName, string>> = {}
  for (const field of carried) {
    const text = above.cells[field]
    if (text !== undefined) cells[field] = text
  }
  const number = nextNumber(above.cells.find_number ?? '')
  return { id, cells: number === null ? cells : { find_number: number, ...cells } }
}

/** Another part of the same find: number and what identifies the record, nothing else. */
export function nextPart(above: SheetRow, id: string): SheetRow {
  const same = ['site_code', 'find_number', 'recorded_on'] as const
  const cells: Cells = Object.fromEntries(
    same.flatMap((field) => (above.cells[field] === undefined ? [] : [[field, above.cells[field]]])),
  )
  return { id, cells }
}
