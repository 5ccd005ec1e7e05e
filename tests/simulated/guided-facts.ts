import type { Fills, Knowledge } from '../../lib/knowledge/knowledge.ts'
import { fields, type FieldName } from '../../lib/record/fields.ts'
import type { Component, ConditionRecord } from '../../lib/record/record.ts'

/**
 * What a question can ask of a find, and how its answer gets into a record. A fact of the find is named by its field, one
 * of a part by the part's name before it, an answered question as `body.looked:skin-edge`: as the plan names what it asks.
 */
type Loose = Readonly<Record<string, unknown>>

const pressing: readonly Fills[] = ['storage.rh', 'storage.keep', 'urgency', 'cautions', 'objections']

/** Fields that somebody can look at and that any decision reads on the way to how a find is kept, how soon, and what stops it. */
export function askableFields({ decisions, vocabulary }: Knowledge): readonly FieldName[] {
  const wanted = new Set<string>()
  for (const { id, fills, facts } of decisions.toReversed()) {
    if (!wanted.has(id) && !(fills !== null && pressing.includes(fills))) continue
    for (const fact of facts) wanted.add(fact)
  }
  return (Object.keys(fields) as FieldName[]).filter((name) => {
    const words = vocabulary.fields[name]
    return words?.lookable === true && words.values.length > 0 && wanted.has(name)
  })
}

const question = /^looked:(.*)$/

function splitFact(fact: string): { readonly part: string | null; readonly what: string } {
  const at = fact.lastIndexOf('.')
  return { part: at < 0 ? null : fact.slice(0, at), what: fact.slice(at + 1) }
}

/** What a record answers; undefined where nobody looked, or looked in vain. */
export function answerIn(record: ConditionRecord, fact: string): unknown {
  const { part, what } = splitFact(fact)
  const holder = part === null ? record : record.components.find(({ component }) => component === part)!
  const asked = question.exec(what)?.[1]
  const answer =
    asked === undefined
      ? (holder as unknown as Loose)[what]
      : (holder as Component).looked?.find((look) => look.startsWith(`${asked}:`))
  return answer === 'unknown' || (Array.isArray(answer) && answer.includes('unknown')) ? undefined : answer
}

/** What somebody writes who looked and could not tell. */
export function couldNotTell(fact: string): unknown {
  const { part, what } = splitFact(fact)
  const asked = question.exec(what)?.[1]
  if (what === 'magnet') return `${part}/magnet:unknown`
  if (asked !== undefined) return `${asked}:unknown`
  return fields[what as FieldName].kind === 'choices' ? ['unknown'] : 'unknown'
}

export function withAnswer(record: ConditionRecord, fact: string, answer: unknown): ConditionRecord {
  const { part, what } = splitFact(fact)
  if (part === null) return { ...record, [what]: answer }
  // A magnet's pull stands among the tests, which nothing is taken out of.
  if (what === 'magnet') return { ...record, tests: [...(record.tests ?? []), answer as string] }
  const components = record.components.map((one): Component => {
    if (one.component !== part) return one
    return question.test(what)
      ? { ...one, looked: [...(one.looked ?? []), answer as string] }
      : { ...one, [what]: answer }
  })
  return { ...record, components }
}

/** The record with all that questions can ask taken out of it, but for what stands in `kept`. */
export function onlyKept(
  record: ConditionRecord,
  askable: readonly FieldName[],
  kept: readonly FieldName[],
): ConditionRecord {
  const gone = new Set<string>(['looked', ...askable].filter((name) => !kept.includes(name as FieldName)))
  const without = <Holder extends object>(holder: Holder) =>
    Object.fromEntries(Object.entries(holder).filter(([name]) => !gone.has(name))) as Holder
  return { ...without(record), components: record.components.map(without) }
}

/** Every fact of a record that a question can ask for, by name. */
export function answeredFacts(record: ConditionRecord, askable: readonly FieldName[]): readonly string[] {
  const named = askable.flatMap((field) =>
    fields[field].level === 'find'
      ? [field]
      : record.components.map(({ component }) => `${component}.${field}`),
  )
  const looked = record.components.flatMap(({ component, looked: looks = [] }) =>
    looks.map((look) => `${component}.looked:${look.split(':')[0]}`),
  )
  return [...named, ...looked].filter((fact) => answerIn(record, fact) !== undefined)
}
