import type { Knowledge } from '../knowledge/knowledge.ts'
import { fields, type FieldName } from '../record/fields.ts'
import type { Component, ConditionRecord, Treatment } from '../record/record.ts'
import { fieldLabel, valueLabel } from './fact.ts'
import { listWords } from './list.ts'

/** One thing a record says, in words. */
export interface Said {
  readonly part: string | null
  readonly field: FieldName
  readonly label: string
  readonly value: string
}

type Loose = Readonly<Record<string, unknown>>

/** Everything a record states, in the order of the contract; what was not understood as it was written. */
export function recordWords(record: ConditionRecord, knowledge: Knowledge): readonly Said[] {
  return [
    ...saidBy(record as unknown as Loose, 'find', null, knowledge),
    ...record.components.flatMap((part) =>
      saidBy(part as unknown as Loose, 'component', part.component, knowledge),
    ),
  ]
}

function saidBy(
  holder: Loose,
  level: 'find' | 'component',
  part: string | null,
  knowledge: Knowledge,
): readonly Said[] {
  const unread = (holder['unread'] ?? {}) as Component['unread'] & object
  return (Object.keys(fields) as FieldName[]).flatMap((field) => {
    if (fields[field].level !== level || field === 'component' || field === 'find_number') return []
    const read = holder[field] === undefined ? [] : [valueWords(field, holder[field], knowledge)]
    const raw = unread[field] === undefined ? [] : [`“${unread[field]}” (not understood)`]
    const value = [...read, ...raw].join('; ')
    return value === '' ? [] : [{ part, field, label: fieldLabel(field, knowledge), value }]
  })
}

function valueWords(field: FieldName, value: unknown, knowledge: Knowledge): string {
  if (Array.isArray(value)) {
    if (value.length === 0) return 'none seen'
    return listWords(value.map((item: unknown) => itemWords(field, item, knowledge)))
  }
  return itemWords(field, value, knowledge)
}

function itemWords(field: FieldName, item: unknown, knowledge: Knowledge): string {
  if (typeof item === 'object' && item !== null) {
    const { what, on, by, medium } = item as Treatment
    return [valueLabel('done_already', what, knowledge), on, by, medium]
      .filter((text) => text !== undefined)
      .join(', ')
  }
  const words = String(item)
  return 'ids' in fields[field] || words === 'unknown' ? valueLabel(field, words, knowledge) : words
}

export interface Changed {
  readonly part: string | null
  readonly label: string
  readonly from: string | null
  readonly to: string | null
}

/** What a later record says otherwise than the one before it. */
export function changeWords(
  before: ConditionRecord,
  after: ConditionRecord,
  knowledge: Knowledge,
): readonly Changed[] {
  const key = ({ part, field }: Said) => `${part ?? ''}/${field}`
  const older = new Map(recordWords(before, knowledge).map((said) => [key(said), said]))
  const newer = new Map(recordWords(after, knowledge).map((said) => [key(said), said]))
  return [...new Set([...older.keys(), ...newer.keys()])].flatMap((at) => {
    const from = older.get(at)
    const to = newer.get(at)
    const said = to ?? from
    if (said === undefined || from?.value === to?.value || said.field === 'recorded_on') return []
    return [{ part: said.part, label: said.label, from: from?.value ?? null, to: to?.value ?? null }]
  })
}
