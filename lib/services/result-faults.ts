import { isoDate } from '../base/calendar.ts'
import type { Trouble } from '../base/trouble.ts'
import { thoughtBefore } from '../field/thought.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { methodFacts } from '../knowledge/method-facts.ts'
import { readLook } from '../record/look.ts'
import type { ConditionRecord } from '../record/record.ts'
import { readTest } from '../record/tests.ts'
import type { ResultGiven } from './enter-result.ts'
import { noneOfThese } from './identification.ts'
import type { World } from './ports.ts'

type Because = (Trouble & { readonly kind: 'not-accepted' })['because']

const longest = { byWhom: 120, reference: 120, words: 2000 } as const

/** What a line of a report is about: the test or the question. Null where it cannot be read, or the method does not tell it. */
export function toldOf(text: string, method: string, { questions }: Knowledge): string | null {
  const test = readTest(text)
  if (test.ok && test.test.part === null) {
    const { name } = test.test
    return methodFacts[method]?.includes(name.replaceAll('-', '_')) === true ? name : null
  }
  const look = readLook(text)
  return look.ok && questions[look.look.question]?.by === method ? look.look.question : null
}

/** Everything that is wrong with a result, by field; lines of the report as `report.xrf`, `report.skin-section`. */
export function resultFaults(
  asked: ResultGiven,
  record: ConditionRecord,
  { knowledge, today }: Pick<World, 'knowledge' | 'today'>,
): readonly Trouble[] {
  const faults: Trouble[] = []
  const fault = (field: string, because: Because) => faults.push({ kind: 'not-accepted', field, because })
  const { component, method, on, report, found } = asked
  const part = record.components.some((one) => one.component === component)
  if (!part) fault('component', 'unknown')
  if (method !== '' && !knowledge.methods[method]) fault('method', 'unknown')
  if (method === '' && report.length > 0) fault('method', 'empty')
  if (on === '') fault('on', 'empty')
  else if (isoDate(on) === null || on > today()) fault('on', 'unknown')
  if (asked.byWhom === '') fault('byWhom', 'empty')
  for (const name of ['byWhom', 'reference', 'words'] as const)
    if (asked[name].length > longest[name]) fault(name, 'too-long')
  if (report.length === 0 && found === null && (asked.words === '' || method === '')) fault('report', 'empty')
  const questions = new Set<string>()
  for (const text of method === '' ? [] : report) {
    const told = toldOf(text, method, knowledge)
    if (told === null) fault(`report.${text.split(/[:=]/)[0]!.trim()}`, 'unknown')
    else if (readLook(text).ok && questions.has(told)) fault(`report.${told}`, 'taken')
    else questions.add(told)
  }
  if (found !== null) {
    const rivals = knowledge.matters[found.matter]?.rivals
    const known = found.interpretation === noneOfThese || rivals?.some(({ id }) => id === found.interpretation)
    if (!rivals) fault('matter', 'unknown')
    else if (!known) fault('interpretation', 'unknown')
    else if (part && thoughtBefore(record, { ...found, component, method }, knowledge, today()) === null)
      fault('matter', 'unknown')
  }
  return faults
}
