import { fields, type FieldName } from './fields.ts'
import { hazardOfColumn } from './hazard-words.ts'
import type { ConditionRecord } from './record.ts'

export interface FreeText {
  readonly field: string
  readonly text: string
}

const worded: readonly string[] = ['text', 'texts', 'open-choice', 'treatments']
const freeFields = (Object.keys(fields) as FieldName[]).filter((name) => worded.includes(fields[name].kind))

/** Every piece of text within a value of unknown shape. */
export function textsWithin(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value]
  if (Array.isArray(value)) return value.flatMap(textsWithin)
  if (value !== null && typeof value === 'object') return Object.values(value).flatMap(textsWithin)
  return []
}

type Bag = Readonly<Record<string, unknown>>

/** Gathers into `found`: this runs for every record of a store and at every key that is struck. */
function gather(holder: Bag, found: FreeText[]): void {
  for (const field of freeFields) {
    const value = holder[field]
    if (typeof value === 'string') found.push({ field, text: value })
    else if (value !== undefined) for (const text of textsWithin(value)) found.push({ field, text })
  }
  for (const name of ['extra', 'unread']) {
    for (const [field, value] of Object.entries((holder[name] ?? {}) as Bag)) {
      for (const text of textsWithin(value)) found.push({ field, text })
      if (name === 'extra')
        for (const { hazard } of hazardOfColumn(field, value)) found.push({ field, text: hazard })
    }
  }
}

/**
 * Everything in a record that a person wrote in words, with the field it stands in: a hazard may be named in any of it.
 * Understood choices are left out, because an id such as `shell` has its one meaning there.
 */
export function freeTexts(record: ConditionRecord): readonly FreeText[] {
  const found: FreeText[] = []
  gather(record as unknown as Bag, found)
  for (const component of record.components) gather(component as unknown as Bag, found)
  return found
}
