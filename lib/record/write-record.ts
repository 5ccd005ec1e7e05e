import { cleanText } from './clean-text.ts'
import { findColumn, partColumn, writeExtra } from './extra-cell.ts'
import { fields, isList as isListKind, type FieldName } from './fields.ts'
import { joinList, splitList } from './list-cell.ts'
import type { ConditionRecord, Treatment } from './record.ts'
import { writeTreatment } from './treatment-text.ts'

/** Cells by heading; a heading that is missing is an empty cell. */
export type WrittenRow = ReadonlyMap<string, string>

type Bag = Readonly<Record<string, unknown>>

const names = Object.keys(fields) as FieldName[]
export const isList = (field: FieldName) => isListKind(fields[field].kind)

/** Told again on every row, so that each row says which record it belongs to. */
const keys: readonly FieldName[] = ['site_code', 'find_number', 'recorded_on']

const textOf = (item: unknown): string =>
  typeof item === 'object' && item !== null ? writeTreatment(item as Treatment) : String(item)

/**
 * What one field needs: its cell on the first row, and values that contradict it on rows of their own. What was not
 * understood goes back to where it stood.
 */
function cellsOf(field: FieldName, holder: Bag): readonly string[] {
  const unread = (holder['unread'] as Readonly<Record<string, string>> | undefined)?.[field]
  const kept = unread === undefined ? [] : splitList(unread)
  const value = holder[field]
  if (isList(field)) {
    const items = [...((value ?? []) as readonly unknown[]).map(textOf), ...kept]
    return items.length === 0 ? [] : [joinList(items)]
  }
  // The stand-in for a material that could not be read is not what was written.
  if (field === 'material' && kept.length > 0) return kept
  return value === undefined ? kept : [String(value), ...kept]
}

function fieldsOf(level: 'find' | 'component', holder: Bag): ReadonlyMap<string, readonly string[]> {
  return new Map(
    names.filter((name) => fields[name].level === level).map((name) => [name, cellsOf(name, holder)]),
  )
}

/** `isField`: whether a heading would be taken for a field of the record; such a one needs its level said. */
export type IsField = (heading: string) => boolean

const extrasOf = (holder: Bag) => Object.entries((holder['extra'] ?? {}) as Bag)

/** A key that no reader can take for anything else. */
const isClear = (key: string, isField: IsField) =>
  key !== '' &&
  key === cleanText(key) &&
  key !== 'components' &&
  !key.startsWith(findColumn) &&
  !key.startsWith(partColumn) &&
  !isField(key)

/** One row a component, find-level cells on the first; further rows only for values that contradict each other. */
export function rowsOf(record: ConditionRecord, isField: IsField): readonly WrittenRow[] {
  const holder = record as unknown as Bag
  const own = fieldsOf('find', holder)
  const depth = Math.max(record.components.length, ...[...own.values()].map((cells) => cells.length))
  return Array.from({ length: depth }, (_, at) => {
    const component = record.components[at] as unknown as Bag | undefined
    const row = new Map<string, string>()
    for (const [field, cells] of own) {
      const cell = keys.includes(field as FieldName) ? cells[0] : cells[at]
      if (cell !== undefined) row.set(field, cell)
    }
    if (at === 0)
      for (const [key, value] of extrasOf(holder)) row.set(`${findColumn}${key}`, writeExtra(value))
    if (component) {
      for (const [field, cells] of fieldsOf('component', component))
        if (cells[0] !== undefined) row.set(field, cells[0])
      for (const [key, value] of extrasOf(component))
        row.set(isClear(key, isField) ? key : `${partColumn}${key}`, writeExtra(value))
    }
    return row
  })
}

const always: readonly string[] = ['find_number', 'component', 'material']

/** The headings that these rows need: fields in the order of the contract, then kept columns as they first come. */
export function headingsOf(rows: Iterable<WrittenRow>): readonly string[] {
  const used = new Set(always)
  for (const row of rows) for (const heading of row.keys()) used.add(heading)
  const known: readonly string[] = names
  return [
    ...known.filter((name) => used.has(name)),
    ...[...used].filter((heading) => !known.includes(heading)),
  ]
}

/** Unread values back in their fields and kept keys beside them: the contract's own form, which reads to the same record. */
function plain(holder: Bag, level: 'find' | 'component', isField: IsField): Bag {
  const out = new Map<string, unknown>()
  for (const field of names.filter((name) => fields[name].level === level)) {
    const value = holder[field]
    const unread = (holder['unread'] as Readonly<Record<string, string>> | undefined)?.[field]
    const kept = unread === undefined ? [] : splitList(unread)
    if (isList(field)) {
      if (value !== undefined || kept.length > 0)
        out.set(field, [...((value ?? []) as readonly unknown[]), ...kept])
    } else if (field === 'material' && kept.length > 0) out.set(field, kept[0])
    else if (value !== undefined) out.set(field, value)
    else if (kept.length > 0) out.set(field, kept[0])
  }
  const mark = level === 'find' ? findColumn : partColumn
  for (const [key, value] of extrasOf(holder)) out.set(isClear(key, isField) ? key : `${mark}${key}`, value)
  return Object.fromEntries(out)
}

/** One object a record, and further ones only for values that contradict each other. */
export function objectsOf(record: ConditionRecord, isField: IsField): readonly Bag[] {
  const holder = record as unknown as Bag
  const components = record.components.map((one) => plain(one as unknown as Bag, 'component', isField))
  const main = { ...plain(holder, 'find', isField), components }
  const own = fieldsOf('find', holder)
  const contradicted = [...own].filter(([field, cells]) => cells.length > 1 && !isList(field as FieldName))
  const depth = Math.max(1, ...contradicted.map(([, cells]) => cells.length))
  const key = Object.fromEntries(
    keys.flatMap((field) => (own.get(field)?.[0] === undefined ? [] : [[field, own.get(field)![0]!]])),
  )
  const more = Array.from({ length: depth - 1 }, (_, at) => ({
    ...key,
    ...Object.fromEntries(
      contradicted.flatMap(([field, cells]) => (cells[at + 1] === undefined ? [] : [[field, cells[at + 1]]])),
    ),
  }))
  return [main, ...more]
}
