import { describe, expect, test } from 'vitest'
import { assess } from '../../lib/engine/assess.ts'
import { fields, type Field, type FieldName } from '../../lib/record/fields.ts'
import { noNames } from '../../lib/record/names.ts'
import { readCell } from '../../lib/record/read-cell.ts'
import type { ConditionRecord } from '../../lib/record/record.ts'
import { knowledge } from '../knowledge-at-hand.ts'
import { record, today } from '../record-at-hand.ts'

const cell = (field: FieldName, value: string) =>
  readCell(field, { column: field, value }, noNames, 'undecided')

const fieldOf = (fact: string): Field | undefined =>
  fields[fact.slice(fact.lastIndexOf('.') + 1) as FieldName]
const questions = (one: ConditionRecord) =>
  assess(one, knowledge, { asOf: today }).lookNext.map(({ fact }) => fact)

describe('none', () => {
  test('in a list says that somebody looked and there was none', () => {
    expect(cell('hazards_noticed', 'none')).toEqual({ value: ['none'], problems: [] })
  })
  test('is no answer where one value is wanted and its list has no such id', () => {
    expect(cell('fragility', 'none').value).toBeUndefined()
    expect(cell('core', 'none').value).toBe('none')
  })
  test('answers the question, which is then not asked again', () => {
    const bare = record({ state_now: 'dry', object_kind: 'knife' }, { material: 'iron' })
    const lists = questions(bare).filter((fact) => fieldOf(fact)?.kind === 'choices')
    const [asked = ''] = lists.filter((fact) => fieldOf(fact)?.level === 'find')
    expect(asked).not.toBe('')
    expect(questions({ ...bare, [asked]: ['none'] })).not.toContain(asked)
  })
})
