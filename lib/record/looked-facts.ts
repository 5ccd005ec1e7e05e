import { couldNotTell, stated, type Fact } from './fact.ts'
import { splitList } from './list-cell.ts'
import { questionOf, readLook } from './look.ts'
import { looks as known, type Looks } from './looks.ts'
import type { Component } from './record.ts'

/**
 * Each answered question as a fact `looked.QUESTION`. Two different answers to one question count as none, and so does an
 * answer beside one that could not be read: nobody can say which of them was meant.
 */
export function lookedFacts(
  { looked = [], unread }: Pick<Component, 'looked' | 'unread'>,
  looks: Looks = known,
): Record<string, Fact> {
  const answers = new Map<string, Set<string>>()
  for (const text of looked) {
    const read = readLook(text, looks)
    if (!read.ok) continue
    const { question, answer } = read.look
    answers.set(question, (answers.get(question) ?? new Set()).add(answer))
  }
  for (const text of splitList(unread?.['looked'] ?? '')) {
    const question = questionOf(text, looks)
    if (question !== null) answers.get(question)?.add(text)
  }
  return Object.fromEntries(
    [...answers].flatMap(([question, [answer, ...others]]) =>
      others.length > 0
        ? []
        : [[`looked.${question}`, answer === 'unknown' ? couldNotTell : stated(answer!)]],
    ),
  )
}
