import type { IsoDate } from '../base/calendar.ts'
import { fields, type FieldName } from '../record/fields.ts'
import * as ids from '../record/ids.ts'
import { joinList, splitList } from '../record/list-cell.ts'
import { questionOf, readLook } from '../record/look.ts'
import type { Component, ConditionRecord } from '../record/record.ts'
import { readTest, type ChoiceTest } from '../record/tests.ts'

/** What a question of the plan is about: `body.core` a part's field, `burial` one of the find, `body.looked:skin-edge` a look. */
export interface AskedOf {
  readonly part: string | null
  readonly field: FieldName
  /** Id of the question of a closer look; null for a field of the record. */
  readonly question: string | null
  /** Name of the test that anybody can do, whose result stands among the tests: `magnet`. */
  readonly test: ChoiceTest | null
}

/** Tests that take no laboratory. */
const handTests = { magnet: ids.magnet } as const satisfies Partial<Record<ChoiceTest, readonly string[]>>
const handTest = (name: string): keyof typeof handTests | null =>
  Object.hasOwn(handTests, name) ? (name as keyof typeof handTests) : null

export function askedOf(fact: string): AskedOf | null {
  const at = fact.lastIndexOf('.')
  const part = at < 0 ? null : fact.slice(0, at)
  const [field, question = null] = fact.slice(at + 1).split(':') as [string, string?]
  const test = handTest(field)
  if (test !== null && part !== null) return { part, field: 'tests', question: null, test }
  if (!Object.hasOwn(fields, field) || (field === 'looked') !== (question !== null)) return null
  return { part, field: field as FieldName, question, test: null }
}

/** Answers to closer looks in one cell, with a new one in the place of an earlier one to the same question. */
export function withLook(cell: string, look: string): string {
  const question = questionOf(look)
  const others = splitList(cell).filter((one) => questionOf(one) !== question)
  return [...others, look].map((one) => joinList([one])).join('; ')
}

/** Results of tests in one cell, with a new one in the place of an earlier one of the same test of the same part. */
export const withTest = (cell: string, result: string): string =>
  testsWith(splitList(cell), result)
    .map((one) => joinList([one]))
    .join('; ')

function testsWith(tests: readonly string[], result: string): readonly string[] {
  const of = (text: string) => {
    const read = readTest(text)
    return read.ok ? `${read.test.part} ${read.test.name}` : text
  }
  return [...tests.filter((one) => of(one) !== of(result)), result]
}

/** Whether a record can hold these answers as they are: nothing is kept that was not offered. */
function holds({ field, question, test }: AskedOf, answers: readonly string[]): boolean {
  if (answers.length === 0) return false
  if (test !== null) return answers.length === 1 && readTest(`${test}:${answers[0]}`).ok
  if (question !== null) return answers.length === 1 && readLook(`${question}:${answers[0]}`).ok
  const { kind, ids = [] } = fields[field] as { kind: string; ids?: readonly string[] }
  if (answers.length === 1 && answers[0] === 'unknown') return kind.includes('choice')
  if (kind === 'choices')
    return answers.every((one) => ids.includes(one)) || (answers.length === 1 && answers[0] === 'none')
  return (kind === 'choice' || kind === 'open-choice') && answers.length === 1 && ids.includes(answers[0]!)
}

function answeredPart(part: Component, { field, question }: AskedOf, answers: readonly string[]): Component {
  if (question === null) return { ...part, [field]: valueOf(field, answers) }
  const before = (part.looked ?? []).filter((one) => questionOf(one) !== question)
  return { ...part, looked: [...before, `${question}:${answers[0]}`] }
}

const valueOf = (field: FieldName, answers: readonly string[]) =>
  fields[field].kind === 'choices' ? answers : answers[0]

export interface Answered {
  readonly on: IsoDate
  /** Who looked. */
  readonly by: string
  /** Where the find lies that day; null: nowhere that is known. */
  readonly box: string | null
}

/**
 * The record of a look: all that the one before says, of the day on which more was known, with the answer. Null where the
 * answer cannot be one of that question, or there is no such part.
 */
export function recordOfLook(
  before: ConditionRecord,
  fact: string,
  answers: readonly string[],
  { on, by, box }: Answered,
): ConditionRecord | null {
  const asked = askedOf(fact)
  if (asked === null || !holds(asked, answers)) return null
  const { part, test } = asked
  if (test === null && (part === null) !== (fields[asked.field].level === 'find')) return null
  if (part !== null && !before.components.some(({ component }) => component === part)) return null
  const { box: _before, ...rest } = before
  const tests = test === null ? null : testsWith(before.tests ?? [], `${part}/${test}:${answers[0]}`)
  const later = before.recorded_on !== undefined && before.recorded_on > on ? before.recorded_on : on
  return {
    ...rest,
    ...(box === null ? {} : { box }),
    ...(part === null ? { [asked.field]: valueOf(asked.field, answers) } : {}),
    ...(tests === null ? {} : { tests }),
    recorded_by: by,
    recorded_on: later,
    components: before.components.map((one) =>
      one.component === part && test === null ? answeredPart(one, asked, answers) : one,
    ),
  }
}
