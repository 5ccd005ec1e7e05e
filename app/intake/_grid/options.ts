import { fields, type FieldName } from '../../../lib/record/fields.ts'
import type { Knowledge, Word } from '../../../lib/knowledge/knowledge.ts'

const separator = ';'

const couldNotTell: Word = {
  id: 'unknown',
  label: 'I can’t tell',
  means: '',
  tell: 'Somebody looked and could not tell.',
}
const none: Word = {
  id: 'none',
  label: 'None',
  means: '',
  tell: 'Somebody looked for all of these and saw none.',
}

/** Several words may stand in the cell, parted by semicolons. */
export const takesSeveral = (field: FieldName): boolean =>
  fields[field].kind === 'choices' || fields[field].kind === 'looks'

/** A question that is chosen waits for its answer behind the colon. */
export const isBegun = (id: string): boolean => id.endsWith(':')

/** Closer looks: first the questions, and once one is chosen, its answers. */
const closerLooks = ({ questions }: Knowledge): readonly Word[] =>
  Object.values(questions).flatMap(({ id, asks, tell, answers }) => [
    { id: `${id}:`, label: asks, means: '', tell },
    ...[...answers, { ...none, label: 'None of these', tell: '' }, couldNotTell].map((answer) => ({
      id: `${id}:${answer.id}`,
      label: answer.label,
      means: '',
      tell: answer.tell,
    })),
  ])

/** What a cell offers: the words of its field, and the two answers that every look may end with. */
export function wordsOf(field: FieldName, knowledge: Knowledge): readonly Word[] {
  if (field === 'looked') return closerLooks(knowledge)
  const words = knowledge.vocabulary.fields[field]?.values ?? []
  if (fields[field].kind === 'choices') return [...words, none, couldNotTell]
  return fields[field].kind === 'choice' ? [...words, couldNotTell] : words
}

/** Words that go with what is being typed: those that begin so first, then those that hold it anywhere. */
export function optionsFor(text: string, words: readonly Word[], several: boolean): readonly Word[] {
  const item = (several ? (text.split(separator).at(-1) ?? '') : text).trim().toLowerCase()
  const taken = several
    ? text
        .split(separator)
        .slice(0, -1)
        .map((one) => one.trim())
    : []
  // Of closer looks the answers are offered behind the colon, and not before.
  const free = words.filter(
    ({ id }) =>
      !taken.some((one) => one === id || (isBegun(id) && one.startsWith(id))) &&
      (isBegun(id) ? !item.includes(':') : offered(id, item)),
  )
  if (item === '') return free
  if (free.some(({ id }) => id === item)) return []
  const names = (word: Word) => [word.id, word.label.toLowerCase()]
  const begins = free.filter((word) => names(word).some((name) => name.startsWith(item)))
  const holds = free.filter(
    (word) => !begins.includes(word) && names(word).some((name) => name.includes(item)),
  )
  return [...begins, ...holds]
}

/** An answer to a closer look only once its question is chosen; any other word always. */
function offered(id: string, item: string): boolean {
  const colon = id.indexOf(':')
  return colon < 0 || item.startsWith(id.slice(0, colon + 1))
}

/** The text after a word is taken: alone in a single cell, as the last item of a list. */
export function acceptOption(text: string, id: string, several: boolean): string {
  if (!several) return id
  const before = text
    .split(separator)
    .slice(0, -1)
    .map((one) => one.trim())
  return [...before, id].join('; ')
}
