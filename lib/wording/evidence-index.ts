import { folded } from '../base/fold.ts'
import type { Matter } from '../knowledge/evidence.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { capital } from './capital.ts'
import { codeLabel, fieldLabel, valueLabel } from './fact.ts'

/** Matters under what raises them, as somebody who has seen it would look for it. */
export interface RaisedBy {
  /** Name of the field: "Traces seen". */
  readonly field: string
  readonly seen: readonly { readonly label: string; readonly matters: readonly Matter[] }[]
}

const text = (matter: Matter, label: string, knowledge: Knowledge) =>
  folded([label, matter.asks, ...matter.rivals.map(({ id }) => codeLabel(id, knowledge))].join(' '))

/** Every word of the search stands in what is seen, in the question, or in an explanation. */
function found(matter: Matter, label: string, search: string, knowledge: Knowledge): boolean {
  const where = text(matter, label, knowledge)
  return folded(search)
    .split(/\s+/)
    .every((word) => where.includes(word))
}

export function mattersBySight(knowledge: Knowledge, search: string): readonly RaisedBy[] {
  const sights = Object.values(knowledge.matters).flatMap((matter) =>
    matter.about.map(({ field, value }) => ({
      field,
      label: capital(valueLabel(field, value, knowledge)),
      matter,
    })),
  )
  const wanted = sights.filter(({ matter, label }) => found(matter, label, search, knowledge))
  return (['evidence', 'seen'] as const)
    .map((field) => {
      const here = Map.groupBy(
        wanted.filter((sight) => sight.field === field),
        ({ label }) => label,
      )
      const seen = [...here].map(([label, all]) => ({ label, matters: all.map(({ matter }) => matter) }))
      return {
        field: fieldLabel(field, knowledge),
        seen: seen.toSorted((a, b) => a.label.localeCompare(b.label, 'en')),
      }
    })
    .filter(({ seen }) => seen.length > 0)
}
