import { fields, type FieldName } from './fields.ts'
import { nameKey } from './likeness.ts'
import type { FieldNames } from './names.ts'

/** `findnumber`, `Find No.` and `find_number` are spelled alike once blanks and points are gone. */
const squeezed = (text: string) => nameKey(text).replaceAll('-', '')

const lookups = new WeakMap<FieldNames, ReadonlyMap<string, FieldName>>()
const fieldNames = Object.keys(fields) as FieldName[]

function lookupOf(names: FieldNames): ReadonlyMap<string, FieldName> {
  const known = lookups.get(names)
  if (known) return known
  const lookup = new Map<string, FieldName>()
  const put = (word: string, field: FieldName) => {
    const key = squeezed(word)
    if (key !== '' && !lookup.has(key)) lookup.set(key, field)
  }
  for (const field of fieldNames) put(field, field)
  for (const field of fieldNames) for (const word of names[field] ?? []) put(word, field)
  lookups.set(names, lookup)
  return lookup
}

/** The field a heading means by id, label or habit; spelling of case, blanks and points does not matter. */
export function fieldOfHeading(heading: string, names: FieldNames): FieldName | null {
  return lookupOf(names).get(squeezed(heading)) ?? null
}
