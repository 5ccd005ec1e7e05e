import { useCallback, useMemo } from 'react'
import type { ReadRow } from '../../../lib/field/rows.ts'
import type { Knowledge } from '../../../lib/knowledge/knowledge.ts'
import { fields, type FieldName } from '../../../lib/record/fields.ts'
import { problemAdvice } from '../../../lib/wording/problems.ts'
import { fieldLabel } from '../../../lib/wording/fact.ts'

/** Words for the grid: headings, cells shown by label, and what is wrong with a cell. */
export function useWords(knowledge: Knowledge, read: ReadonlyMap<string, ReadRow>) {
  const labels = useMemo(() => labelsByField(knowledge), [knowledge])
  const flaws = useMemo(() => new WeakMap<ReadRow, ReadonlyMap<FieldName, string> | null>(), [])

  const labelOf = useCallback((field: FieldName) => fieldLabel(field, knowledge), [knowledge])

  const show = useCallback(
    (field: FieldName, text: string) => {
      const words = labels.get(field)
      if (words === undefined || text === '') return text
      return text
        .split(';')
        .map((item) => words.get(item.trim()) ?? item.trim())
        .join('; ')
    },
    [labels],
  )

  const flawsOf = useCallback(
    ({ id }: { readonly id: string }) => {
      const row = read.get(id)
      if (row === undefined) return null
      const known = flaws.get(row)
      if (known !== undefined) return known
      const found = flawsIn(row)
      flaws.set(row, found)
      return found
    },
    [read, flaws],
  )
  return { labelOf, show, flawsOf }
}

function flawsIn({ problems }: ReadRow): ReadonlyMap<FieldName, string> | null {
  const found = new Map<FieldName, string>()
  for (const problem of problems) {
    if (problem.severity !== 'problem' || problem.field === null || !Object.hasOwn(fields, problem.field))
      continue
    const field = problem.field as FieldName
    found.set(field, [found.get(field), problemAdvice(problem)].filter(Boolean).join(' '))
  }
  return found.size === 0 ? null : found
}

/** `How does the white skin end? A rim that lifts`: the answer alone would not say to what. */
function labelsOfLooks({ questions }: Knowledge): ReadonlyMap<string, string> {
  return new Map(
    Object.values(questions).flatMap(({ id, asks, answers }) => [
      [`${id}:none`, `${asks} None of these`] as const,
      [`${id}:unknown`, `${asks} Could not tell`] as const,
      ...answers.map((answer) => [`${id}:${answer.id}`, `${asks} ${answer.label}`] as const),
    ]),
  )
}

function labelsByField(knowledge: Knowledge): ReadonlyMap<FieldName, ReadonlyMap<string, string>> {
  const labels = new Map<FieldName, ReadonlyMap<string, string>>(
    Object.values(knowledge.vocabulary.fields)
      .filter(({ values }) => values.length > 0)
      .map(({ id, values }) => [
        id as FieldName,
        new Map([
          ['unknown', 'could not tell'],
          ['none', 'none seen'],
          ...values.map((value) => [value.id, value.label] as const),
        ]),
      ]),
  )
  return labels.set('looked', labelsOfLooks(knowledge))
}
