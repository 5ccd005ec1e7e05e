import { assess } from '../lib/engine/assess.ts'
import type { Plan } from '../lib/engine/plan.ts'
import type { IsoDate } from '../lib/base/calendar.ts'
import type { Component, ConditionRecord } from '../lib/record/record.ts'
import { knowledge } from './knowledge-at-hand.ts'

type Find = Omit<Partial<ConditionRecord>, 'components'>
type Part = Partial<Component> & Pick<Component, 'material'>

/** The day on which the records of these tests are planned for. */
export const today = '2026-11-25' as IsoDate

/** A condition record of which only what matters is written down; parts are named by their role. */
export function record(find: Find, ...parts: readonly Part[]): ConditionRecord {
  const components = parts.map((part, at) => ({
    component: part.role ?? (at === 0 ? 'body' : `body-${at + 1}`),
    ...part,
  }))
  return { find_number: 'TW-0001', ...find, components }
}

/** The plan that the project's own knowledge makes of such a record. */
export const planOf = (find: Find, ...parts: readonly Part[]): Plan =>
  assess(record(find, ...parts), knowledge, { asOf: today, questions: false })
