import { closest, nameKey } from './likeness.ts'
import { looks as known, type Looks } from './looks.ts'

/** The answer to one question, as `question:answer` in the field `looked`. */
export interface Look {
  readonly question: string
  readonly answer: string
  readonly written: string
}

export type LookRead =
  | { readonly ok: true; readonly look: Look; readonly asWritten: boolean }
  | {
      readonly ok: false
      readonly code: 'unknown-look' | 'unknown-look-answer'
      readonly suggestion?: string
    }

/** None of the answers fits; or somebody looked and could not tell. */
export const standingAnswers = ['none', 'unknown'] as const

const named = (ids: readonly string[]) => ids.map((key) => ({ key }))

export function readLook(text: string, looks: Looks = known): LookRead {
  const colon = text.search(/[:=]/)
  const question = nameKey(colon === -1 ? text : text.slice(0, colon))
  const answer = colon === -1 ? '' : nameKey(text.slice(colon + 1))
  if (!Object.hasOwn(looks, question)) {
    const likely = closest(question, named(Object.keys(looks)))
    return { ok: false, code: 'unknown-look', ...(likely ? { suggestion: `${likely.key}:${answer}` } : {}) }
  }
  const answers = [...looks[question]!, ...standingAnswers]
  if (!answers.includes(answer)) {
    const likely = closest(answer, named(answers))
    return {
      ok: false,
      code: 'unknown-look-answer',
      suggestion: `${question}:${likely?.key ?? answers.join(' | ')}`,
    }
  }
  const written = `${question}:${answer}`
  return { ok: true, look: { question, answer, written }, asWritten: written === text.trim() }
}

/** The question that a text is about, though its answer may not be readable; null where none is known. */
export function questionOf(text: string, looks: Looks = known): string | null {
  const question = nameKey(text.split(/[:=]/)[0] ?? '')
  return Object.hasOwn(looks, question) ? question : null
}
