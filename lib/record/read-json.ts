import { z } from 'zod'
import { cleanText } from './clean-text.ts'
import { findColumn, mendColumn, partColumn } from './extra-cell.ts'
import { fields, type FieldName } from './fields.ts'
import type { GivenCell, GivenRow } from './given.ts'
import { problem, type Problem } from './problem.ts'
import { writeTreatment } from './treatment-text.ts'

/** Which field a key means; forgiving spelling is the caller's. */
export type FieldOfKey = (key: string) => FieldName | null

export interface JsonGiven {
  readonly rows: readonly GivenRow[]
  readonly problems: readonly Problem[]
}

const object = z.record(z.string(), z.unknown())
const withComponents = z.looseObject({ components: z.union([z.array(z.unknown()), object]).optional() })
const plain = z.union([z.string(), z.number(), z.boolean(), z.bigint()])
const treatment = z.looseObject({
  what: z.string(),
  on: z.union([z.string(), z.number()]).optional(),
  by: z.string().optional(),
  medium: z.string().optional(),
})

interface Place {
  readonly row: number
  readonly line: number
}

interface Sorted {
  readonly cells: Map<FieldName, GivenCell>
  readonly findExtra: Map<string, unknown>
  readonly partExtra: Map<string, unknown>
}

const empty = (): Sorted => ({ cells: new Map(), findExtra: new Map(), partExtra: new Map() })

/** A treatment object as the text of the contract; keys beyond it are kept beside the record. */
function treatmentText(value: unknown, keep: (key: string, value: unknown) => void, at: number): string {
  const read = treatment.safeParse(value)
  if (!read.success) return JSON.stringify(value)
  const { what, on, by, medium, ...more } = read.data
  for (const [key, rest] of Object.entries(more)) keep(`treatments ${at + 1} ${key}`, rest)
  const texts = Object.entries({ on, by, medium }).flatMap(([key, text]) => {
    const clean = text === undefined ? '' : cleanText(String(text))
    return clean === '' ? [] : [[key, clean] as const]
  })
  return writeTreatment({ what: cleanText(what), ...Object.fromEntries(texts) })
}

/** A value as the text, or the list of texts, that a cell would hold; null and empty lists are absent. */
function textOf(
  field: FieldName,
  value: unknown,
  keep: (key: string, value: unknown) => void,
): string | readonly string[] | null {
  if (value === null || value === undefined || value === '') return null
  if (Array.isArray(value)) {
    const items = value.flatMap((item, at) => {
      if (item === null || item === undefined || item === '') return []
      if (plain.safeParse(item).success) return [String(item)]
      return [fields[field].kind === 'treatments' ? treatmentText(item, keep, at) : JSON.stringify(item)]
    })
    return items.length === 0 ? null : items
  }
  if (plain.safeParse(value).success) return String(value)
  return fields[field].kind === 'treatments' ? [treatmentText(value, keep, 0)] : JSON.stringify(value)
}

function sort(
  holder: Readonly<Record<string, unknown>>,
  level: 'find' | 'component',
  fieldOf: FieldOfKey,
  place: Place,
  into: Sorted,
): readonly Problem[] {
  const problems: Problem[] = []
  const own = level === 'find' ? into.findExtra : into.partExtra
  for (const [key, value] of Object.entries(holder)) {
    if (key === mendColumn || (level === 'find' && key === 'components')) continue
    const field = fieldOf(key)
    if (key.startsWith(findColumn)) into.findExtra.set(key.slice(findColumn.length), value)
    else if (key.startsWith(partColumn)) into.partExtra.set(key.slice(partColumn.length), value)
    else if (field === null || into.cells.has(field)) {
      own.set(key, value)
      if (field !== null)
        problems.push(problem('duplicate-heading', { ...place, column: key, field }, key, field))
    } else {
      const text = textOf(field, value, (extra, kept) => into.findExtra.set(extra, kept))
      if (text !== null) into.cells.set(field, { column: key, value: text })
      if (
        typeof value === 'object' &&
        value !== null &&
        !Array.isArray(value) &&
        fields[field].kind !== 'treatments'
      ) {
        problems.push(
          problem('not-text', { ...place, column: key, field }, JSON.stringify(value).slice(0, 200)),
        )
      }
    }
  }
  return problems
}

const given = (place: Place, { cells, findExtra, partExtra }: Sorted): GivenRow => ({
  ...place,
  cells,
  findExtra: Object.fromEntries(findExtra),
  partExtra: Object.fromEntries(partExtra),
})

/** One object of a JSON file as rows: one for the find, one for each component, as a table would have them. */
export function givenOfJson(value: unknown, row: number, line: number, fieldOf: FieldOfKey): JsonGiven {
  const place = { row, line }
  const read = withComponents.safeParse(value)
  if (!read.success || Array.isArray(value)) {
    return {
      rows: [],
      problems: [problem('not-an-object', place, JSON.stringify(value)?.slice(0, 200) ?? '')],
    }
  }
  const find = empty()
  const problems = [...sort(read.data, 'find', fieldOf, place, find)]
  const components = read.data.components
  if (components === undefined) return { rows: [given(place, find)], problems }
  const keys = (['site_code', 'find_number', 'recorded_on'] as const).flatMap((key) => {
    const cell = find.cells.get(key)
    return cell ? [[key, cell] as const] : []
  })
  const rows = (Array.isArray(components) ? components : [components]).flatMap((component, at) => {
    const part = object.safeParse(typeof component === 'string' ? { material: component } : component)
    if (!part.success) {
      problems.push(
        problem('not-text', { ...place, column: 'components' }, JSON.stringify(component).slice(0, 200)),
      )
      find.findExtra.set(`components ${at + 1}`, component)
      return []
    }
    const sorted = empty()
    problems.push(...sort(part.data, 'component', fieldOf, place, sorted))
    for (const [key, cell] of keys) if (!sorted.cells.has(key)) sorted.cells.set(key, cell)
    return [given(place, sorted)]
  })
  return { rows: [given(place, find), ...rows], problems }
}
