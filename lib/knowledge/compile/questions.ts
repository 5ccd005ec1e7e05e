import type { Question } from '../evidence.ts'
import type { Entry } from './entries.ts'
import type * as forms from './evidence-shapes.ts'
import { fillSentence } from './sentence.ts'
import type { Written } from './shapes.ts'
import { checkId, type Shelf } from './shelf.ts'

export type WrittenQuestion = Entry<Written<typeof forms.question>>

/** Answers of every question; no question writes them itself. */
export const standingAnswers: readonly string[] = ['none', 'unknown']

export function linkQuestion({ written, place }: WrittenQuestion, shelf: Shelf): Question {
  const fill = (text: string, ...path: (string | number)[]): string =>
    fillSentence(text, path.join('.'), place(...path), shelf, new Set())
  checkBy(written.by, ['eye'], place('by'), shelf)
  const seen = new Map<string, number>()
  written.answers.forEach(({ id }, index) => {
    const at = place('answers', index, 'id')
    if (standingAnswers.includes(id)) shelf.report.add('standing-answer', at, { answer: id })
    const first = seen.get(id)
    if (first === undefined) seen.set(id, index)
    else {
      const { file, line } = place('answers', first, 'id')
      shelf.report.add('duplicate', at, { kind: 'question-answer', id, first: `${file}:${line}` })
    }
  })
  return {
    id: written.id,
    asks: fill(written.asks, 'asks'),
    tell: fill(written.tell, 'tell'),
    why: fill(written.why, 'why'),
    by: written.by,
    answers: written.answers.map(({ id, label, tell }, index) => ({
      id,
      label: fill(label, 'answers', index, 'label'),
      tell: fill(tell, 'answers', index, 'tell'),
    })),
  }
}

/** A method of content/methods, or one of the words that stand for none. */
export function checkBy(
  by: string,
  words: readonly string[],
  place: { readonly file: string; readonly line: number },
  shelf: Shelf,
): void {
  if (!words.includes(by)) checkId('method', by, place, shelf)
}
