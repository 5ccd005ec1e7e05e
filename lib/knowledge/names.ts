import type { Names } from '../record/names.ts'
import type { Vocabulary } from './knowledge.ts'

const made = new WeakMap<Vocabulary, Names>()

/** What fields and values are called beside their ids, as the record's readers take it; made once a vocabulary. */
export function namesOf(vocabulary: Vocabulary): Names {
  const known = made.get(vocabulary)
  if (known !== undefined) return known
  const all = Object.values(vocabulary.fields)
  const names: Names = {
    fields: Object.fromEntries(all.map((field) => [field.id, [field.label, ...field.alsoCalled]])),
    values: Object.fromEntries(
      all.map((field) => [field.id, Object.fromEntries(field.values.map((value) => [value.id, [value.label]]))]),
    ),
  }
  made.set(vocabulary, names)
  return names
}
