import { isLookedFact, recordDomains } from '../knowledge/domains.ts'
import type { Finding } from '../knowledge/flaw.ts'
import { fields, type Field } from '../record/fields.ts'
import type { Base } from './base.ts'

/** The vocabulary and the record know the same fields and the same values of them. */
export function vocabularyAgrees({ knowledge }: Base): Finding[] {
  const words = knowledge.vocabulary.fields
  const read = new Set(knowledge.decisions.flatMap(({ facts }) => facts))
  // Facts made from other fields need words once a rule reads them; a question brings its own.
  const known = Object.keys(recordDomains).filter(
    (fact) => (Object.hasOwn(fields, fact) || read.has(fact)) && !isLookedFact(fact),
  )
  const needed = new Set([...Object.keys(fields), ...known])
  const without = [...needed]
    .filter((field) => !Object.hasOwn(words, field))
    .map((field): Finding => ({ code: 'field-without-words', severity: 'error', at: '', about: { field } }))
  const extra = Object.keys(words)
    .filter((field) => !Object.hasOwn(fields, field) && !Object.hasOwn(recordDomains, field))
    .map((field): Finding => ({
      code: 'words-without-field',
      severity: 'error',
      at: `field ${field}`,
      about: { field },
    }))
  return [...without, ...extra, ...Object.keys(words).flatMap((field) => valuesAgree(field, knowledge))]
}

function valuesAgree(field: string, { vocabulary }: Base['knowledge']): Finding[] {
  const known = valuesOf(field)
  if (known === null) return []
  const worded = vocabulary.fields[field]!.values.map(({ id }) => id).filter((id) => id !== 'unknown')
  const without = known
    .filter((value) => !worded.includes(value))
    .map((value): Finding => ({
      code: 'value-without-words',
      severity: 'error',
      at: `field ${field}`,
      about: { field, value },
    }))
  const extra = worded
    .filter((value) => !known.includes(value))
    .map((value): Finding => ({
      code: 'words-without-value',
      severity: 'error',
      at: `value ${field}/${value}`,
      about: { field, value },
    }))
  return [...without, ...extra]
}

/** The values that need words; null for a field that is no fact and none of ours to judge. */
function valuesOf(field: string): readonly string[] | null {
  const own: Field | undefined = Object.hasOwn(fields, field)
    ? fields[field as keyof typeof fields]
    : undefined
  if (own !== undefined) return own.ids ?? []
  const domain = recordDomains[field]
  return domain?.kind === 'values' && !domain.open ? domain.values : null
}
