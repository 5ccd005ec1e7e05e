import type { Cell } from '../knowledge/knowledge.ts'
import { lookedFact } from '../knowledge/domains.ts'
import type { Finding } from '../knowledge/flaw.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Looks } from '../record/looks.ts'
import type { Base, Check } from './base.ts'
import { eachMatter, statesOf } from './evidence-parts.ts'

/** The cells of evidence and rules that read the answer to a question. */
function cellsOf(knowledge: Knowledge): readonly Cell[] {
  const matters = eachMatter(knowledge).flatMap((matter) => [
    ...matter.where,
    ...matter.rivals.flatMap(({ priors }) => priors.flatMap(({ when }) => when)),
    ...statesOf(matter).flatMap(({ state }) => state?.when ?? []),
    ...matter.groups.flatMap(({ failures }) => failures.flatMap(({ when }) => when)),
  ])
  const rules = knowledge.decisions.flatMap((decision) => decision.rules.flatMap(({ when }) => when))
  return [...matters, ...rules]
}

/** A question is asked because something reads its answers, and each answer is read by something. */
export function questionsUnused({ knowledge }: Base): Finding[] {
  const cells = cellsOf(knowledge)
  return Object.values(knowledge.questions).flatMap(({ id, answers }): Finding[] => {
    const readers = cells.filter(({ fact }) => fact === lookedFact(id))
    if (readers.length === 0) {
      return [{ code: 'question-unused', severity: 'error', at: `question ${id}`, about: { question: id } }]
    }
    const read = new Set(
      readers.flatMap((cell) => ('any' in cell ? cell.any : 'none' in cell ? cell.none : [])),
    )
    return answers
      .filter((answer) => !read.has(answer.id))
      .map((answer): Finding => ({
        code: 'answer-unread',
        severity: 'warning',
        at: `question ${id}`,
        about: { question: id, answer: answer.id },
      }))
  })
}

/**
 * The content's questions and answers are those that the record takes, no fewer and no more. Content without any evidence
 * base has nothing to compare.
 */
export function looksAgree(looks: Looks): Check {
  return ({ knowledge: { questions, matters } }) => {
    if (Object.keys(questions).length === 0 && Object.keys(matters).length === 0) return []
    const differs = (question: string, answer: string | null, missing: 'record' | 'content'): Finding => ({
      code: 'looks-differ',
      severity: 'error',
      at: `question ${question}`,
      about: { question, answer, missing },
    })
    const ids = [...new Set([...Object.keys(questions), ...Object.keys(looks)])].toSorted()
    return ids.flatMap((id) => {
      const worded = questions[id]?.answers.map((answer) => answer.id)
      const taken = Object.hasOwn(looks, id) ? looks[id] : undefined
      if (worded === undefined) return [differs(id, null, 'content')]
      if (taken === undefined) return [differs(id, null, 'record')]
      return [
        ...worded.filter((answer) => !taken.includes(answer)).map((answer) => differs(id, answer, 'record')),
        ...taken.filter((answer) => !worded.includes(answer)).map((answer) => differs(id, answer, 'content')),
      ]
    })
  }
}
