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

/** What a cell offers: the words of its field, and the two answers that every look may end with. */
export function wordsOf(field: FieldName, knowledge: Knowledge): readonly Word[] {
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
  const free = words.filter(({ id }) => !taken.includes(id))
  if (item === '') return free
  if (free.some(({ id }) => id === item)) return []
  const names = (word: Word) => [word.id, word.label.toLowerCase()]
  const begins = free.filter((word) => names(word).some((name) => name.startsWith(item)))
  const holds = free.filter(
    (word) => !begins.includes(word) && names(word).some((name) => name.includes(item)),
  )
  return [...begins, ...holds]
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
