import { fields, type FieldName } from './fields.ts'
import type { ConditionRecord } from './record.ts'

export interface FreeText {
  readonly field: string
  readonly text: string
}

const worded: readonly string[] = ['text', 'texts', 'open-choice']
const freeFields = (Object.keys(fields) as FieldName[]).filter((name) => worded.includes(fields[name].kind))

/** Every piece of text within a value of unknown shape. */
export function textsWithin(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value]
  if (Array.isArray(value)) return value.flatMap(textsWithin)
  if (value !== null && typeof value === 'object') return Object.values(value).flatMap(textsWithin)
  return []
}

function textsOf(holder: Readonly<Record<string, unknown>>): readonly FreeText[] {
  const named = freeFields.flatMap((field) => textsWithin(holder[field]).map((text) => ({ field, text })))
  const kept = [holder['extra'], holder['unread']].flatMap((bag) =>
    Object.entries(bag ?? {}).flatMap(([field, value]) =>
      textsWithin(value).map((text) => ({ field, text })),
    ),
  )
  return [...named, ...kept]
}

/**
 * Everything in a record that a person wrote in words, with the field it stands in: a hazard may be named in any of it.
 * Understood choices are left out, because an id such as `shell` has its one meaning there.
 */
export function freeTexts(record: ConditionRecord): readonly FreeText[] {
  const treatments = textsWithin(record.treatments).map((text) => ({ field: 'treatments', text }))
  return [
    ...textsOf(record as unknown as Readonly<Record<string, unknown>>),
    ...treatments,
    ...record.components.flatMap((component) =>
      textsOf(component as unknown as Readonly<Record<string, unknown>>),
    ),
  ]
}
