import { fields, type FieldName } from './fields.ts'
import { closest, nameKey } from './likeness.ts'
import type { Names } from './names.ts'
import { shortNames, unknownWords } from './short-names.ts'

export type ChoiceRead =
  | { readonly ok: true; readonly id: string; readonly guessed: boolean }
  | { readonly ok: false; readonly suggestion: string | null }

interface Named {
  readonly key: string
  readonly id: string
  readonly guessed: boolean
}

interface Lookup {
  readonly byKey: ReadonlyMap<string, Named>
  readonly all: readonly Named[]
  readonly read: Map<string, ChoiceRead>
}

const lookups = new WeakMap<Names, Map<FieldName, Lookup>>()
const mostRemembered = 5_000

function lookupOf(field: FieldName, names: Names): Lookup {
  let ofNames = lookups.get(names)
  if (!ofNames) lookups.set(names, (ofNames = new Map()))
  const known = ofNames.get(field)
  if (known) return known
  const entry = fields[field]
  const ids: readonly string[] = 'ids' in entry ? entry.ids : []
  const byKey = new Map<string, Named>()
  const put = (word: string, id: string, guessed: boolean) => {
    const key = nameKey(word)
    if (key !== '' && !byKey.has(key)) byKey.set(key, { key, id, guessed })
  }
  // In a list `none` says that somebody looked for all of these and saw none; a single value says that by its own id.
  const words = entry.kind === 'choices' ? ['unknown', 'none'] : ['unknown']
  for (const id of [...ids, ...words]) put(id, id, false)
  for (const id of ids) for (const label of names.values[field]?.[id] ?? []) put(label, id, false)
  for (const id of ids) for (const short of shortNames[field]?.[id] ?? []) put(short, id, true)
  for (const word of unknownWords) put(word, 'unknown', true)
  const lookup: Lookup = { byKey, all: [...byKey.values()], read: new Map() }
  ofNames.set(field, lookup)
  return lookup
}

function look(text: string, lookup: Lookup): ChoiceRead {
  if (/^\?+$/.test(text)) return { ok: true, id: 'unknown', guessed: true }
  const key = nameKey(text)
  const found = lookup.byKey.get(key)
  if (found) return { ok: true, id: found.id, guessed: found.guessed || text.includes('?') }
  const likely = closest(key, lookup.all)
  if (likely) return { ok: false, suggestion: likely.id }
  // `iron nail` for a material: the longest name that stands in it as a whole word.
  const within = lookup.all.filter((name) => `-${key}-`.includes(`-${name.key}-`))
  const longest = within.toSorted((a, b) => b.key.length - a.key.length)[0]
  return { ok: false, suggestion: longest?.id ?? null }
}

/** One value of a closed choice: by id, label or habit; otherwise what it was probably meant to be. */
export function readChoice(field: FieldName, text: string, names: Names): ChoiceRead {
  const lookup = lookupOf(field, names)
  const known = lookup.read.get(text)
  if (known) return known
  const read = look(text, lookup)
  if (lookup.read.size < mostRemembered) lookup.read.set(text, read)
  return read
}
